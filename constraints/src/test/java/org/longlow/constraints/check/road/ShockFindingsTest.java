package org.longlow.constraints.check.road;

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

/**
 * A shock over the middle of the arm, upright: the other route is the triangle of pivot and both
 * pins, whose angle at the pivot the arm's turn changes.
 */
class ShockFindingsTest {

  private static final double BUMP = 60;

  private static final double DROOP = 50;

  /** The arm of the test machine by its own file, solved. */
  private static TestMachine tourer(String stroke, String spring, double x, double top) {
    return TestMachine.tourer()
        .with("pins", "low", "{'at': ['" + x + " mm', '330 mm'], 'with': 'rear-wheel'}")
        .with("pins", "high", "['" + x + " mm', '" + top + " mm']")
        .field(
            "parts",
            "swingarm",
            "shock",
            "{'foot': 'low', 'top': 'high', 'stroke': '"
                + stroke
                + "', 'spring': '"
                + spring
                + "'}");
  }

  private static Finding of(TestMachine machine, String id) {
    return machine.finding(id).orElseThrow();
  }

  /** How far it closes and its ratio as drawn, by the law of cosines. */
  private record Triangle(double closes, double ratio) {

    static Triangle of(double x, double top) {
      var places = TestMachine.asFiled("tourer").placed().places();
      var pivot = places.pin("swingPivot");
      var axle = places.pin("rearAxle");
      double arm = pivot.distance(axle);
      double toFoot = Math.hypot(pivot.x() - x, pivot.z() - 330);
      double toTop = Math.hypot(pivot.x() - x, pivot.z() - top);
      double between =
          Math.atan2(top - pivot.z(), pivot.x() - x) - Math.atan2(330 - pivot.z(), pivot.x() - x);
      double slope = Math.asin((axle.z() - pivot.z()) / arm);
      double up = Math.asin((axle.z() + BUMP - pivot.z()) / arm) - slope;
      double down = slope - Math.asin((axle.z() - DROOP - pivot.z()) / arm);
      double longest = side(toFoot, toTop, between + down);
      double shortest = side(toFoot, toTop, between - up);
      double now = side(toFoot, toTop, between);
      return new Triangle(longest - shortest, toFoot * toTop * Math.sin(between) / now / arm);
    }

    private static double side(double a, double b, double angle) {
      return Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(angle));
    }
  }

  @ParameterizedTest
  @CsvSource({"0.01, PASS", "-0.01, FAIL"})
  void itClosesAsTheTriangleSaysAndNeedsThatStroke(double spare, Verdict verdict) {
    double closes = Triangle.of(150, 640).closes();
    Finding f = of(tourer(closes + spare + " mm", "60 N/mm", 150, 640), "stroke.swingarm");
    assertThat(f.value()).isCloseTo(closes, within(1e-6));
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text().contains("ask for less travel")).isEqualTo(verdict == Verdict.FAIL);
  }

  @ParameterizedTest
  @CsvSource({"1, PASS", "1.09, PASS", "0.91, PASS", "1.11, CAUTION", "0.89, CAUTION"})
  void itsSpringAtTheWheelIsTheRateOrIsSaid(double off, Verdict verdict) {
    double ratio = Triangle.of(150, 640).ratio();
    // the arm of the test machine says 28 N/mm
    double spring = off * 28 / (ratio * ratio);
    Finding f = of(tourer("90 mm", spring + " N/mm", 150, 640), "wheel-rate.swingarm");
    assertThat(f.value()).isCloseTo(ratio, within(1e-6));
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
  }

  /** Nobody can write a rate of 0.0, and a spring that was said is not missing. */
  @Test
  void oneFarTooSoftIsSaidToCarryNothingAndNotThatItsSpringIsMissing() {
    TestMachine soft = tourer("90 mm", "1e-9 N/mm", 150, 640).without("swingarm", "rate");
    assertThat(of(soft, "wheel-rate.swingarm").text())
        .contains("less than 0.1 N/mm at the wheel, which carries nothing: look at its rate")
        .doesNotContain("write that");
    assertThat(of(soft, "sag.unknown").text())
        .contains(
            "since the rate at the wheel is missing: write it as \"rate\"",
            "The shock of swingarm says its own")
        .doesNotContain("the rate is missing");
  }

  @Test
  void oneThatIsHungOnTheFrameAloneOrTurnsOverFails() {
    TestMachine still =
        tourer("90 mm", "60 N/mm", 150, 640).with("pins", "low", "['150 mm', '330 mm']");
    assertThat(of(still, "stroke.swingarm").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(still.finding("wheel-rate.swingarm")).isEqualTo(Optional.empty());
    Finding both =
        of(
            tourer("90 mm", "60 N/mm", 150, 640)
                .field(
                    "parts",
                    "swingarm",
                    "shock",
                    "{'foot': 'low', 'top': 'low', 'stroke': '90 mm', 'spring': '60 N/mm'}"),
            "stroke.swingarm");
    assertThat(both.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(both.text()).contains("both its ends on the pin low, 0 mm apart");
    // its top lies in the way of its foot: it closes, then opens again
    Finding over = of(tourer("90 mm", "60 N/mm", 150, 335), "stroke.swingarm");
    assertThat(over.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(over.text()).contains("opens again");
    // its top below its foot: it opens all the way, and its spring is no rate to write down
    TestMachine below = tourer("90 mm", "60 N/mm", 150, 40).without("swingarm", "rate");
    assertThat(of(below, "stroke.swingarm").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(of(below, "stroke.swingarm").text()).contains("opens from the first millimetre");
    assertThat(below.findings()).noneMatch(f -> f.kind() == ShockFindings.WHEEL_RATE);
    assertThat(TestMachine.tourer().finding("stroke.swingarm")).isEmpty();
  }

  /** What is no part is held off nothing, so somebody must be told. */
  @Test
  void aShockThatIsNoPartIsTold() {
    TestMachine machine = tourer("60 mm", "40 N/mm", 300, 620);
    Finding f = of(machine, "undrawn.swingarm");
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("the shock between low and high.").doesNotContain("rod");
    machine.with("parts", "damper", Boxes.rail("low", "high", 60, 0, ""));
    assertThat(machine.finding("undrawn.swingarm")).isEmpty();
    assertThat(machine.finding("gap.damper.rearWheel")).isPresent();
  }
}
