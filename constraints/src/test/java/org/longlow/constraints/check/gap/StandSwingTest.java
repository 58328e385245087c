package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** What a leg meets on its way, by the circle that the end of its foot describes. */
class StandSwingTest {

  private static final double LENGTH = 300;
  private static final double THICK = 20;

  /** A leg 200 mm to the left, stowed pointing back, that swings down or, drawn below, up. */
  private static TestMachine leg(String type, boolean down) {
    return TestMachine.runabout()
        .lacking("sideStand")
        .pin("legHinge", 500, 1900)
        .pin("legBack", 500 - LENGTH, 1900)
        .pin("legDown", 500, 1900 - LENGTH)
        .with(
            "parts",
            "leg",
            "{'kind': 'stand', 'type': '"
                + type
                + "', 'pivot': 'legHinge', 'foot': '"
                + (down ? "legDown" : "legBack")
                + "', 'stowed': '"
                + (down ? "legBack" : "legDown")
                + "', 'y': '200 mm', 'diameter': "
                + Boxes.mm(THICK)
                + ", 'mass': '1 kg'}");
  }

  /** A block whose upper, inner corner is so far from the circle, halfway down. */
  private static TestMachine block(TestMachine machine, double off, double y, double halfWide) {
    double r = (LENGTH + THICK / 2 + off) * Math.sqrt(0.5);
    return Boxes.add(
        machine,
        "block",
        Boxes.at(500 - r - 30, 1900 - r - 30, 500 - r, 1900 - r),
        y + halfWide,
        halfWide - y,
        "");
  }

  @ParameterizedTest
  @CsvSource({
    "side, true, 2.5, 200, FAIL",
    "side, true, -4, 200, FAIL",
    "side, false, -4, 200, FAIL",
    "centre, true, -4, 200, FAIL",
    "centre, true, -4, -200, FAIL",
    "pair, true, -4, -200, FAIL"
  })
  void aBlockInItsWayFails(String type, boolean down, double off, double y, Verdict verdict) {
    Finding f = block(leg(type, down), off, y, 40).finding("swung.leg.block").orElseThrow();
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isCloseTo(off, within(0.15));
    assertThat(f.limit()).isEqualTo(3);
    assertThat(f.text()).startsWith("On the leg's way between stowed and parked, leg and block ");
    assertThat(f.where().orElseThrow().x()).isBetween(200.0, 300.0);
  }

  /** Beyond the gap that is asked, on the other side of the machine, or past neither end. */
  @ParameterizedTest
  @CsvSource({"side, 3.2, 200", "side, -4, -200", "side, -4, 0"})
  void whatIsNotInItsWayIsNotTold(String type, double off, double y) {
    assertThat(block(leg(type, true), off, y, 40).finding("swung.leg.block")).isEmpty();
  }

  /** Moved as it is told, the block is clear. */
  @Test
  void theAdviceClearsTheWay() {
    Finding f = block(leg("side", true), -4, 200, 40).finding("swung.leg.block").orElseThrow();
    assertThat(f.text())
        .containsPattern("move block \\S+ mm (back|down)")
        .contains("hinge the leg");
    assertThat(block(leg("side", true), 3.2, 200, 40).finding("swung.leg.block")).isEmpty();
  }

  /** A rail from the hinge halfway to where it is stowed is in its way beyond their joint. */
  @ParameterizedTest
  @CsvSource({"-200, true", "200, false"})
  void whatItHingesOnIsInItsWay(double endX, boolean meets) {
    TestMachine machine =
        leg("side", true)
            .pin("railEnd", 500 + endX, 1900 - 200)
            .with("parts", "hanger", Boxes.rail("legHinge", "railEnd", 30, 200, ""));
    Optional<Finding> f = machine.finding("swung.leg.hanger");
    assertThat(f.map(Finding::verdict))
        .isEqualTo(meets ? Optional.of(Verdict.FAIL) : Optional.empty());
  }
}
