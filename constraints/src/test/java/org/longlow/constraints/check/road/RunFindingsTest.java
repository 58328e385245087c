package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What a chain passes at its sides, by hand from the file of the test machine. */
class RunFindingsTest {

  private static final String ACROSS = "\"across\": [\"92 mm\", \"92 mm\"]";

  private static final String DEPTH = "\"depth\": \"55 mm\"";

  /**
   * How far an idler goes, mm: found by halving in another program, with tangents of directed
   * circles, axle on its arc from droop to bump.
   */
  private static final double WAY = 70.3724;

  private static Finding of(String id, String... replaced) {
    return TestMachine.replacing("tourer", replaced).finding(id).orElseThrow();
  }

  private static String across(double one, double other) {
    return "\"across\": [\"" + one + " mm\", \"" + other + " mm\"]";
  }

  @ParameterizedTest
  @CsvSource({"92, 7, PASS", "90.01, 5.01, PASS", "89.99, 4.99, FAIL", "-90.01, 5.01, PASS"})
  void besideATyreItKeepsFiveMillimetres(double y, double gap, Verdict verdict) {
    // a tyre of 150 mm reaches 75 mm out, a chain of 20 mm begins 10 mm inside its middle
    Finding f =
        TestMachine.replacing("tourer", ACROSS, across(y, y))
            .part("rearWheel", "inside", "[]")
            .finding("run.chain")
            .orElseThrow();
    assertThat(f.value()).isCloseTo(gap, within(1e-6));
    assertThat(f.limit()).isEqualTo(5);
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).contains("rearWheel");
  }

  /**
   * A chain of 20 mm about 92 mm, its plates 8 mm under the pitch circle of 40 teeth: a disc of 5
   * mm beside it is off its edge at 102 mm, one in its line off its plates.
   */
  @ParameterizedTest
  @CsvSource({
    "120, 108, 3.5, PASS",
    "120, 107, 2.5, FAIL",
    "90, 92, 3.17, PASS",
    "91, 92, 2.17, FAIL",
    "120, 92, -1, FAIL"
  })
  void aDiscIsNotInTheWayOfTheChain(double radius, double y, double gap, Verdict verdict) {
    String disc =
        "[{'what': 'disc', 'radius': '" + radius + " mm', 'width': '5 mm', 'y': '" + y + " mm'}]";
    Finding f =
        TestMachine.tourer().part("rearWheel", "inside", disc).finding("run.chain").orElseThrow();
    assertThat(f.text()).contains("the disc of rearWheel");
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    if (gap > 0) {
      assertThat(f.value()).isCloseTo(gap, within(0.06));
    } else {
      assertThat(f.text()).contains("runs into");
    }
  }

  @ParameterizedTest
  @CsvSource({"58, PASS", "59.3, PASS", "59.5, FAIL", "70, FAIL"})
  void theArmIsPassedWhereItTurnsAboutTheShaft(double deep, Verdict verdict) {
    Finding f = of("run.chain", DEPTH, "\"depth\": \"" + deep + " mm\"");
    // about the one pin: the pitch radius of 16 teeth, less half a plate and half the arm
    double gap = 15.875 / (2 * Math.sin(Math.PI / 16)) - 8 - deep / 2;
    assertThat(f.text()).contains("swingarm");
    assertThat(f.verdict()).isEqualTo(verdict);
    if (gap > 0) {
      // round ends are drawn as chords
      assertThat(f.value()).isCloseTo(gap, within(0.05));
    } else {
      assertThat(f.text()).contains("runs into").contains("move both sprockets across");
    }
  }

  @ParameterizedTest
  @CsvSource({"0.05, PASS", "-0.05, FAIL"})
  void sprocketsOutOfLineFail(double spare, Verdict verdict) {
    Finding straight = of("in-line.chain");
    assertThat(straight.value()).isZero();
    assertThat(straight.text()).contains("are 0 mm out of line; 1.");
    // 84 links over 16 and 40 teeth: the centre distance by the formula of ISO 606
    double k = 84 - 28;
    double d = 24 / (2 * Math.PI);
    double apart = 15.875 / 4 * (k + Math.sqrt(k * k - 8 * d * d));
    assertThat(straight.limit()).isCloseTo(0.003 * apart, within(0.003));
    Finding f = of("in-line.chain", ACROSS, across(92, 92 + straight.limit() - spare));
    assertThat(f.verdict()).isEqualTo(verdict);
  }

  @Test
  void whereItRunsAcrossIsAskedForWhereNobodyHasSaid() {
    Finding f = of("run.chain", ACROSS + ", \"width\": \"20 mm\", ", "");
    assertThat(f.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(f.text()).contains("give \"across\" and \"width\"");
  }

  @Test
  void anOddChainFailsUnlessItsHalfLinkIsMeant() {
    String links = "\"chainLinks\": {\"is\": \"84\"";
    String odd = links.replace("84", "85");
    Finding fails = of("chain.chain", links, odd);
    assertThat(fails.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(fails.text()).contains("halfLink");
    Finding meant = of("chain.chain", links, odd, ACROSS, ACROSS + ", \"halfLink\": true");
    assertThat(meant.verdict()).isEqualTo(Verdict.CAUTION);
  }

  /** The test machine with one more run, over a wheel of 30 mm on its back. */
  private static Finding idle(String kind, double z, String more) {
    return TestMachine.tourer()
        .pin("idler", 400, z)
        .with(
            "ties",
            "second",
            "{'tie': 'belt-length', 'pins': ['shaft', 'rearAxle', 'idler'], 'radii': ['60 mm',"
                + " '100 mm', '30 mm'], 'across': ['92 mm', '92 mm', '93 mm'], 'width': '15 mm',"
                + " 'idlers': ['idler'], 'back': ['idler'], 'is': 'chainLength + 5000 mm'"
                + more
                + "}")
        .pin("shaft", 800, 400)
        .finding(kind + ".second")
        .orElseThrow();
  }

  /** Between wheels of 30 and 60 mm on one side of it, a run needs more than 30 mm. */
  @ParameterizedTest
  @CsvSource({"0, true", "29.9, true", "30.1, false"})
  void wheelsInEachOtherAreNamedWithWhatTheyNeed(double apart, boolean nested) {
    Finding f =
        TestMachine.tourer()
            .pin("idler", 800 - apart, 400)
            .pin("shaft", 800, 400)
            .with(
                "ties",
                "second",
                "{'tie': 'belt-length', 'pins': ['shaft', 'rearAxle', 'idler'], 'radii':"
                    + " ['60 mm', '100 mm', '30 mm'], 'across': ['92 mm', '92 mm', '92 mm'],"
                    + " 'width': '15 mm', 'idlers': ['idler'], 'is': 'chainLength + 5000 mm'}")
            .finding("run.second")
            .orElseThrow();
    assertThat(
            f.verdict() == Verdict.FAIL
                && f.text().contains("cannot run between the wheels about idler and shaft"))
        .as(f.text())
        .isEqualTo(nested);
    if (nested) {
      assertThat(f.text())
          .contains("it takes more than 30 mm", "apart")
          .doesNotContain("allowed is");
    }
  }

  @Test
  void anIdlerIsTouchedOrTold() {
    assertThat(idle("wrap", 300, "").verdict()).isEqualTo(Verdict.PASS);
    Finding missed = idle("wrap", 100, "");
    assertThat(missed.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(missed.text()).contains("does not touch its idler about idler");
    // the nearest pair is the shaft and it, 1 mm askew over some 430 mm: 1.3 mm are allowed
    assertThat(idle("in-line", 300, "").verdict()).isEqualTo(Verdict.PASS);
    assertThat(idle("squat", 300, "").verdict()).isNotEqualTo(Verdict.NOT_APPLICABLE);
  }

  @Test
  void aSprungIdlerGoesAsFarAsKeepsTheRunAsLongAsDrawn() {
    assertThat(idle("slack", 300, "").limit()).isEqualTo(40);
    Finding sprung = idle("slack", 300, ", 'sprung': 'idler'");
    assertThat(sprung.verdict()).isEqualTo(Verdict.PASS);
    assertThat(sprung.value()).as(sprung.text()).isCloseTo(WAY, within(0.01));
    assertThat(idle("slack", 238, ", 'sprung': 'idler'").text()).contains("leaves its idler");
    // as drawn it hangs free of the run, wherever the travel takes that
    assertThat(idle("slack", 200, ", 'sprung': 'idler'").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(idle("squat", 200, "").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(idle("run", 200, "").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
  }

  /** With 40 teeth its pitch radius is 101.2 mm; the run is at 92 mm, 1.31 mm may be off. */
  @ParameterizedTest
  @CsvSource({
    "92, 0, PASS, 105, false",
    "93.3, 1.3, PASS, 99.3, false",
    "-60, 152, FAIL, 109.1, false",
    "40, 52, FAIL, 109.3, true",
    "92, 0, PASS, 99.1, true"
  })
  void theRunIsOnTheSprocketThatTheWheelSaysItHas(
      double y, double off, Verdict verdict, double radius, boolean wrongSize) {
    TestMachine machine =
        TestMachine.tourer()
            .part(
                "rearWheel",
                "inside",
                "[{'what': 'sprocket', 'radius': '"
                    + radius
                    + " mm', 'width': '8 mm', 'y': '"
                    + y
                    + " mm'}]");
    Finding f = machine.finding("in-line.chain").orElseThrow();
    assertThat(f.value()).as(f.text()).isCloseTo(off, within(1e-9));
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(machine.finding("in-line.chain.rearWheel").isPresent()).isEqualTo(wrongSize);
  }

  @ParameterizedTest
  @CsvSource({"380, PASS", "430, FAIL"})
  void aSmallWheelIsWrappedTooLittle(double radius, Verdict verdict) {
    TestMachine machine = TestMachine.tourer();
    machine
        .pin("shaft", 800, 400)
        .with(
            "ties",
            "second",
            "{'tie': 'belt-length', 'pins': ['shaft', 'rearAxle'], 'radii': ['10 mm', '"
                + radius
                + " mm'], 'is': 'chainLength + 5000 mm'}");
    Finding f = machine.finding("wrap.second").orElseThrow();
    // half a turn less twice the angle by which the stretches close, least where they are nearest
    double least = Double.POSITIVE_INFINITY;
    for (Standing s : machine.study().standings()) {
      double apart = s.places().pin("rearAxle").distance(s.places().pin("shaft"));
      least = Math.min(least, 180 - 2 * Math.toDegrees(Math.asin((radius - 10) / apart)));
    }
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isCloseTo(least, within(1e-6));
    assertThat(f.limit()).isCloseTo(120, within(1e-9));
  }

  @Test
  void straightStretchesTouchBothDiscsAndNoMore() {
    PointMm one = new PointMm(500, 330);
    PointMm other = new PointMm(10, 290);
    List<BeltRun.Straight> both = BeltRun.round(one, 41, other, 101).straights();
    assertThat(both.get(0).from().distance(one)).isCloseTo(41, within(1e-9));
    assertThat(both.get(0).to().distance(other)).isCloseTo(101, within(1e-9));
    assertThat(both.get(1).from().distance(other)).isCloseTo(101, within(1e-9));
    assertThat(both.get(1).to().distance(one)).isCloseTo(41, within(1e-9));
    for (BeltRun.Straight s : both) {
      PointMm way = s.to().minus(s.from());
      PointMm centre = s == both.get(0) ? one : other;
      PointMm next = s == both.get(0) ? other : one;
      // a tangent is square to the radius at either end
      assertThat(way.dot(s.from().minus(centre))).isCloseTo(0, within(1e-6));
      assertThat(way.dot(s.to().minus(next))).isCloseTo(0, within(1e-6));
    }
    // uncrossed: each stays on its side of the line of centres
    PointMm along = other.minus(one);
    double side = along.cross(both.get(0).from().minus(one));
    assertThat(side * along.cross(both.get(0).to().minus(one))).isPositive();
    assertThat(side * along.cross(both.get(1).to().minus(one))).isNegative();
    assertThat(side * along.cross(both.get(1).from().minus(one))).isNegative();
  }

  /**
   * A chain of the frame beside the trunk of whoever rides, as far out as somebody that broad sits:
   * the distance is that to the outside of the thighs.
   */
  @Test
  void aChainKeepsOffPeopleOnBothSides() {
    Study study = TestMachine.asFiled("tourer");
    Sitting rider = study.sittings().get(0);
    List<Prism> trunk = rider.limbs().get("thigh");
    double out = trunk.stream().mapToDouble(p -> p.across().to()).max().orElseThrow();
    var middle = trunk.get(0).outline().getCentroid();
    PointMm at = new PointMm(middle.getX(), middle.getY());
    for (int side : new int[] {1, -1}) {
      for (double gap : new double[] {9.9, 10.1, -40}) {
        double y = side * (out + 10 + gap);
        TestMachine machine =
            TestMachine.tourer()
                .pin("one", at.x() - 30, at.z())
                .pin("other", at.x() + 30, at.z())
                .with(
                    "ties",
                    "second",
                    ("{'tie': 'belt-length', 'pins': ['one', 'other'], 'radii': ['2 mm', '2 mm'],"
                            + " 'across': ['%1$s mm', '%1$s mm'], 'width': '20 mm', 'is':"
                            + " '132.566 mm'}")
                        .formatted(y));
        var found = machine.finding("run.second." + rider.person());
        assertThat(found.isPresent()).isEqualTo(gap < 10);
        found.ifPresent(f -> assertThat(f.verdict()).isEqualTo(Verdict.FAIL));
        found
            .filter(f -> gap > 0)
            .ifPresent(f -> assertThat(f.value()).isCloseTo(gap, within(0.05))); // thighs are round
      }
    }
  }
}
