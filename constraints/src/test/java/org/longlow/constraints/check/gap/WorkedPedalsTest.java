package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What pedals meet on their way, from corners turned about the hinge by hand. */
class WorkedPedalsTest {

  /** From hinge to pad. */
  private static final double ARM = 150;

  /** A rubber of 20 x 10 mm whose middle is {@code arm} off its hinge. */
  private static TestMachine pedal(
      TestMachine machine, String by, PointMm hinge, PointMm arm, double y, double travel) {
    return machine
        .pin("pedalHinge", hinge.x(), hinge.z())
        .pin("pedalPad", hinge.x() + arm.x(), hinge.z() + arm.z())
        .with(
            "parts",
            "pedal",
            "{'kind': 'lever', 'frame': 'pedalPad', 'outline': {'points': [['-10 mm', '-5 mm'],"
                + " ['10 mm', '-5 mm'], ['10 mm', '5 mm'], ['-10 mm', '5 mm']], 'closed': true},"
                + " 'left': "
                + Boxes.mm(y + 10)
                + ", 'right': "
                + Boxes.mm(10 - y)
                + ", 'mass': '0.1 kg', 'worked': {'by': '"
                + by
                + "', 'pad': 'pedalPad', 'pivot': 'pedalHinge', 'travel': "
                + Boxes.mm(travel)
                + "}}");
  }

  /** Far above the machine, pointing ahead, with a block below it and one above it. */
  private static TestMachine between(String by, double travel, double below, double above) {
    TestMachine machine =
        pedal(TestMachine.runabout(), by, new PointMm(500, 1900), new PointMm(ARM, 0), 0, travel);
    Boxes.add(machine, "floor", Boxes.at(560, 1900 - below - 30, 760, 1900 - below), 50, 50, "");
    return Boxes.add(
        machine, "lid", Boxes.at(560, 1900 + above, 760, 1900 + above + 30), 50, 50, "");
  }

  /** How far its outermost corner goes up or down. */
  private static double reachMm(double travel) {
    double turn = travel / ARM;
    return (ARM + 10) * Math.sin(turn) + 5 * Math.cos(turn);
  }

  @ParameterizedTest
  @CsvSource({
    "sole, 40, 8, PASS",
    "sole, 40, 2.9, FAIL",
    "sole, 40, -4, FAIL",
    "sole, 60, -4, FAIL",
    "toes, 30, 2.9, FAIL"
  })
  void aPressedPedalKeepsItsGap(String by, double travel, double gap, Verdict verdict) {
    Finding f = between(by, travel, reachMm(travel) + gap, 200).finding("gap.floor.pedal").get();
    assertThat(f.value()).isCloseTo(gap, within(1e-6));
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).startsWith("With pedal worked as far as it goes, floor and pedal ");
    assertThat(f.text().contains("or give it less travel")).isEqualTo(verdict == Verdict.FAIL);
  }

  /** A foot presses one that points ahead down; toes lift theirs as far again. */
  @ParameterizedTest
  @CsvSource({"sole, false", "toes, true"})
  void toesLiftTheirPedal(String by, boolean lifts) {
    Optional<Finding> f = between(by, 30, 200, reachMm(30) - 1).finding("gap.lid.pedal");
    assertThat(f.map(Finding::verdict).filter(v -> v == Verdict.FAIL).isPresent()).isEqualTo(lifts);
  }

  /** Nearest where it is drawn, it is not said to be worked. */
  @Test
  void aPedalThatLeavesIsHeldAsDrawn() {
    Finding f = between("sole", 40, 200, 7).finding("gap.lid.pedal").orElseThrow();
    assertThat(f.value()).isCloseTo(2, within(1e-6));
    assertThat(f.text()).startsWith("lid and pedal are 2 mm apart; ");
  }

  /** What is moved as told clears the pedal all the way. */
  @Test
  void theAdviceClearsItsWholeWay() {
    double below = reachMm(40) - 6;
    Finding f = between("sole", 40, below, 200).finding("gap.floor.pedal").orElseThrow();
    assertThat(f.text()).contains("move pedal 9.1 mm up");
    assertThat(between("sole", 40, below + 9.1, 200).finding("gap.floor.pedal").get().verdict())
        .isEqualTo(Verdict.PASS);
  }

  /**
   * A rail from the hinge, that the pedal lies on when it is pressed, is in it beyond the joint.
   */
  @ParameterizedTest
  @CsvSource({"40, true", "5, false"})
  void aPedalIsNotPressedIntoWhatItHangsOn(double travel, boolean fails) {
    TestMachine machine =
        pedal(
                TestMachine.runabout(),
                "sole",
                new PointMm(500, 1900),
                new PointMm(ARM, 0),
                0,
                travel)
            .pin("railEnd", 500 + 300, 1900 - 90)
            .with("parts", "stay", Boxes.rail("pedalHinge", "railEnd", 16, 0, ""));
    Optional<Finding> f =
        machine.findings().stream()
            .filter(g -> g.about().parts().containsAll(List.of("pedal", "stay")))
            .filter(g -> g.verdict() == Verdict.FAIL)
            .findFirst();
    assertThat(f.isPresent()).isEqualTo(fails);
  }

  /**
   * Ahead of the foot turns the front wheel: at the end of its way a pedal meets it, before not.
   */
  @ParameterizedTest
  @CsvSource({"80, true", "5, false"})
  void aPressedPedalIsInTheWayOfTheWheelAtFullLock(double travel, boolean meets) {
    TestMachine machine =
        TestMachine.runabout().lacking("apron", "frontGuard").with("demands", "lock", "'35 deg'");
    PointMm axle = machine.study().standings().get(0).places().pin("frontAxle");
    pedal(machine, "sole", new PointMm(axle.x() - 330, 120), new PointMm(0, ARM), 110, travel);
    List<Finding> found =
        machine.findings().stream()
            .filter(f -> f.kind() == LockFindings.LOCK && f.about().parts().contains("pedal"))
            .filter(f -> f.verdict() == Verdict.FAIL)
            .toList();
    assertThat(found.isEmpty()).isEqualTo(!meets);
    assertThat(found).allSatisfy(f -> assertThat(f.text()).contains("pedal, worked as far"));
  }
}
