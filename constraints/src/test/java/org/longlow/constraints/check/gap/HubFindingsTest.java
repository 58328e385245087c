package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/**
 * What sits about the axles of the test machine, by hand from its file: in front 110/80-16 between
 * legs of 36 mm at 98 mm, behind 150/60 R17 in an arm 125 mm out on either side.
 */
class HubFindingsTest {

  private static final double FRONT_RIM = 16 * 25.4 / 2 - 25;

  private static String body(String what, double radius, double width, double y) {
    return "{'what': '"
        + what
        + "', 'radius': '"
        + radius
        + " mm', 'width': '"
        + width
        + " mm', 'y': '"
        + y
        + " mm'}";
  }

  private static TestMachine with(String wheel, String... bodies) {
    return TestMachine.tourer().part(wheel, "inside", "[" + String.join(", ", bodies) + "]");
  }

  private static Finding of(TestMachine machine, String id) {
    return machine.finding(id).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"-0.1, CAUTION", "0.1, FAIL"})
  void aDiscReachesNoFartherThanAUsualRim(double past, Verdict verdict) {
    Finding f =
        of(with("frontWheel", body("disc", FRONT_RIM + past, 5, 50)), "hub.frontWheel.disc1");
    assertThat(f.value()).isCloseTo(-past, within(1e-9));
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict); // the usual depth is from memory
    assertThat(f.across().getAsDouble()).isEqualTo(50);
  }

  @ParameterizedTest
  @CsvSource({"179.9, PASS", "180.1, FAIL"})
  void theRimAsTheWheelSaysItDecides(double radius, Verdict verdict) {
    TestMachine machine =
        with("frontWheel", body("disc", radius, 5, 50)).part("frontWheel", "rimInside", "'180 mm'");
    Finding f = of(machine, "hub.frontWheel.disc1");
    assertThat(f.value()).isCloseTo(180 - radius, within(1e-9));
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(machine.finding("hub.frontWheel.rim")).isEmpty();
  }

  /** What turns with the rim may touch it; what stands still needs the gap of 3 mm. */
  @ParameterizedTest
  @CsvSource({"176.9, PASS", "177.1, FAIL"})
  void aCalliperKeepsItsGapToTheRim(double radius, Verdict verdict) {
    Finding f =
        of(
            with("frontWheel", body("calliper", radius, 60, 45))
                .part("frontWheel", "rimInside", "'180 mm'"),
            "hub.frontWheel.calliper1");
    assertThat(f.limit()).isEqualTo(3);
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({"203.1, false", "203.2, true"})
  void aRimHasAWall(double inside, boolean told) {
    TestMachine machine =
        TestMachine.tourer().part("frontWheel", "rimInside", "'" + inside + " mm'");
    assertThat(machine.finding("hub.frontWheel.rim").isPresent()).isEqualTo(told);
  }

  /**
   * The tyre ends at 55 mm and its bead sits at 203.2 mm: what is larger stands beside its wall.
   */
  @ParameterizedTest
  @CsvSource({"204, 62.5, 5, FAIL", "204, -64, 6.5, FAIL", "203, 64, 13.5, CAUTION"})
  void whatReachesPastTheBeadKeepsOffTheTyre(double radius, double y, double mm, Verdict verdict) {
    Finding f =
        of(
            with("frontWheel", body("disc", radius, 5, y))
                .with("demands", "tyreGap", "'7 mm'")
                .lacking("frontGuard"),
            "hub.frontWheel.disc1");
    assertThat(f.value()).isCloseTo(mm, within(1e-9));
    assertThat(f.text().contains("beside the wall of its tyre")).isEqualTo(radius > 203.2);
    assertThat(f.verdict() == Verdict.FAIL).as(f.text()).isEqualTo(verdict == Verdict.FAIL);
  }

  /** The leg begins at 98 - 18 = 80 mm, the tyre ends at 55. */
  @ParameterizedTest
  @CsvSource({"74.4, 3.1, PASS", "74.6, 2.9, FAIL", "-74.4, 3.1, PASS", "-74.6, 2.9, FAIL"})
  void aDiscKeepsOffTheLegsOfTheFork(double y, double gap, Verdict verdict) {
    Finding f = of(with("frontWheel", body("disc", 100, 5, y)), "hub.frontWheel.disc1");
    assertThat(f.value()).isCloseTo(gap, within(1e-9));
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text()).contains((y > 0 ? "left" : "right") + " leg of front");
  }

  /** Outside the legs nothing brakes a wheel that turns between them. */
  @ParameterizedTest
  @CsvSource({"frontWheel, 130", "frontWheel, -130", "rearWheel, 150", "rearWheel, -150"})
  void aDiscLiesBetweenTheLegs(String wheel, double y) {
    Finding f = of(with(wheel, body("disc", 100, 5, y)), "hub." + wheel + ".disc1");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).contains("is outside the " + (y > 0 ? "left" : "right") + " leg");
    assertThat(f.text()).contains("set it between the legs");
  }

  /** What hangs on a leg may touch it; legs from 80 to 116 mm are less than the last one. */
  @ParameterizedTest
  @CsvSource({
    "60, 49.9, 0.1, PASS",
    "60, 50.1, -0.1, FAIL",
    "60, -50.1, -0.1, FAIL",
    "100, 98, -68, FAIL"
  })
  void aCalliperIsNotInALeg(double width, double y, double gap, Verdict verdict) {
    Finding f = of(with("frontWheel", body("calliper", 150, width, y)), "hub.frontWheel.calliper1");
    assertThat(f.value()).isCloseTo(gap, within(1e-9));
    assertThat(f.limit()).isZero();
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text()).contains((y > 0 ? "left" : "right") + " leg of front");
  }

  /** A leg of 15 mm begins at 110 mm. */
  @ParameterizedTest
  @CsvSource({"102.9, 3.1, PASS", "103.1, 2.9, FAIL"})
  void aSprocketKeepsOffTheLegsOfTheArm(double y, double gap, Verdict verdict) {
    Finding f = of(with("rearWheel", body("sprocket", 105, 8, y)), "hub.rearWheel.sprocket1");
    assertThat(f.value()).isCloseTo(gap, within(1e-9));
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
  }

  /** As broad as all the room between the legs: 2 (110 - 3). */
  @ParameterizedTest
  @CsvSource({"213.9, PASS", "214.1, FAIL"})
  void aHubMotorLiesBetweenTheLegs(double width, Verdict verdict) {
    Finding f = of(with("rearWheel", body("motor", 120, width, 0)), "hub.rearWheel.motor1");
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({"62.4, true", "62.6, false"})
  void twoBodiesLieBesideEachOther(double y, boolean told) {
    // a motor of 120 mm ends at 60, a disc of 5 begins 2.5 inside its middle
    TestMachine machine =
        with(
            "frontWheel",
            body("motor", 120, 120, 0),
            body("disc", 130, 5, y),
            body("calliper", 150, 60, y));
    assertThat(machine.finding("hub.frontWheel.motor1.disc2").isPresent()).isEqualTo(told);
    assertThat(machine.finding("hub.frontWheel.disc2.calliper3")).isEmpty();
  }

  @Test
  void aWheelThatSaysNothingIsNotAsked() {
    TestMachine bare =
        TestMachine.tourer().part("frontWheel", "inside", "[]").part("rearWheel", "inside", "[]");
    assertThat(bare.findings()).noneMatch(f -> f.kind() == HubFindings.HUB);
  }

  /**
   * A disc beside the rear tyre that reaches nearer to the road than it: the tyre's radius less the
   * disc's is under it, laden and at full bump alike, for both go with the axle.
   */
  @ParameterizedTest
  @CsvSource({"100.1, PASS", "99.9, FAIL"})
  void whatTurnsKeepsOffTheRoad(double under, Verdict verdict) {
    double radius = 17 * 25.4 / 2 + 0.6 * 150 - under;
    for (int side : new int[] {1, -1}) {
      TestMachine machine = with("rearWheel", body("disc", radius, 5, side * 90));
      Finding laden = of(machine, "clearance.laden");
      assertThat(laden.verdict()).as(laden.text()).isEqualTo(verdict);
      assertThat(laden.value()).isCloseTo(under, within(1e-6));
      assertThat(laden.text()).contains("about the axle of rearWheel");
      assertThat(laden.text().contains("0.1 mm less in radius")).isEqualTo(under < 100);
    }
  }

  /** Far out it touches first as the machine leans to its side, and not to the other. */
  @Test
  void whatTurnsTouchesTheRoadOnItsSide() {
    for (int side : new int[] {1, -1}) {
      TestMachine machine = with("rearWheel", body("disc", 270, 5, side * 160));
      String[] sides = side > 0 ? new String[] {"left", "right"} : new String[] {"right", "left"};
      Finding f = of(machine, "lean." + sides[0] + ".rearWheel");
      // tyre and disc about one axle: outside of the disc, seen from the torus of the tyre
      double roll = Math.toRadians(f.value());
      double free = 17 * 25.4 / 2 + 0.6 * 150;
      double crown = 75;
      double height = crown + (free - crown - 270) * Math.cos(roll) - 162.5 * Math.sin(roll);
      assertThat(height).isCloseTo(0, within(1.5)); // the front tyre is another torus: it pitches
      assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
      assertThat(machine.finding("lean." + sides[1] + ".rearWheel")).isEmpty();
    }
  }

  /** A box beside the disc, clear of it by so much; what goes with the frame meets it in travel. */
  @ParameterizedTest
  @CsvSource({"3.1, PASS, 1", "2.9, FAIL, 1", "2.9, FAIL, -1", "-2, FAIL, -1"})
  void whatTurnsKeepsOffParts(double gap, Verdict verdict, int side) {
    TestMachine machine =
        with("rearWheel", body("disc", 120, 5, side * 150))
            .part("swingarm", "left", "'190 mm'")
            .part("swingarm", "right", "'190 mm'")
            .lacking("silencer");
    var axle = machine.study().placed().places().pin("rearAxle");
    double in = 152.5 + gap;
    machine
        .pin("beside", axle.x() - 20, axle.z() - 60)
        .with(
            "parts",
            "case",
            ("{'kind': 'box', 'frame': 'beside', 'mass': 1, 'outline': {'points': [[0, 0], [40, 0],"
                    + " [40, 100], [0, 100]]}, 'left': %s, 'right': %s}")
                .formatted(side > 0 ? in + 40 : -in, side > 0 ? -in : in + 40));
    Finding f = of(machine, "hub.rearWheel.disc1");
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    if (verdict == Verdict.FAIL) {
      assertThat(f.value()).isCloseTo(gap, within(1e-6));
      assertThat(f.text()).contains(gap < 0 ? "is in case by" : "off case");
    }
    // said to touch the wheel it may
    if (gap < 0) {
      machine.part("case", "touches", "['rearWheel']");
      assertThat(of(machine, "hub.rearWheel.disc1").text()).doesNotContain("case");
    }
  }
}
