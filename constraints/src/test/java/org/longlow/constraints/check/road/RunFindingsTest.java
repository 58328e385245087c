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
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What a chain passes at its sides, by hand from the file of the test machine. */
class RunFindingsTest {

  private static final String ACROSS = "\"across\": [\"92 mm\", \"92 mm\"]";

  private static final String DEPTH = "\"depth\": \"55 mm\"";

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
    Finding f = of("run.chain", ACROSS, across(y, y));
    assertThat(f.value()).isCloseTo(gap, within(1e-6));
    assertThat(f.limit()).isEqualTo(5);
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).contains("rearWheel");
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

  @Test
  void straightStretchesTouchBothDiscsAndNoMore() {
    BeltRun belt = new BeltRun(41, 101);
    PointMm one = new PointMm(500, 330);
    PointMm other = new PointMm(10, 290);
    List<BeltRun.Straight> both = belt.straights(one, other);
    for (BeltRun.Straight s : both) {
      PointMm way = s.to().minus(s.from());
      assertThat(s.from().distance(one)).isCloseTo(41, within(1e-9));
      assertThat(s.to().distance(other)).isCloseTo(101, within(1e-9));
      // a tangent is square to the radius at either end
      assertThat(way.dot(s.from().minus(one))).isCloseTo(0, within(1e-6));
      assertThat(way.dot(s.to().minus(other))).isCloseTo(0, within(1e-6));
    }
    // uncrossed: each stays on its side of the line of centres
    PointMm along = other.minus(one);
    assertThat(along.cross(both.get(0).from().minus(one))).isPositive();
    assertThat(along.cross(both.get(0).to().minus(one))).isPositive();
    assertThat(along.cross(both.get(1).to().minus(one))).isNegative();
  }
}
