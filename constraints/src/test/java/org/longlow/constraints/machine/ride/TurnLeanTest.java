package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurnLeanTest {

  // Worked by solving the moment balance numerically; printed to 1e-12.
  @ParameterizedTest
  @CsvSource({
    "60, 40, 35.303693758650, 4.735649717893, 40.039343476542, 1.225339528999",
    "80, 80, 32.188545833219, 4.364486594406, 36.553032427625, 1.181614534320",
    "100, 120, 33.252123410364, 4.492697295676, 37.744820706040, 1.195792005182"
  })
  void leanInATurnMatchesTheMomentBalance(
      double kmh, double radius, double ideal, double more, double roll, double load) {
    TurnLean lean = TurnLean.of(kmh / 3.6, radius, 600, 75);
    assertThat(Math.toDegrees(lean.idealRollRad())).isCloseTo(ideal, within(1e-9));
    assertThat(Math.toDegrees(lean.correctionRad())).isCloseTo(more, within(1e-9));
    assertThat(Math.toDegrees(lean.rollRad())).isCloseTo(roll, within(1e-9));
    assertThat(lean.loadFactor()).isCloseTo(load, within(1e-9));
    double phi = lean.rollRad();
    double balance =
        525 * Math.sin(phi) - (75 + 525 * Math.cos(phi)) * Math.tan(lean.idealRollRad());
    assertThat(balance).isCloseTo(0, within(1e-9));
  }

  // Rows of a table of ideal lean, atan(v²/(g R)), printed to 0.001 deg.
  @ParameterizedTest
  @CsvSource({
    "20, 8, 21.475",
    "50, 25, 38.196",
    "60, 40, 35.304",
    "100, 60, 52.672",
    "130, 400, 18.388",
    "90, 8, 82.845",
    "70, 200, 10.911"
  })
  void idealLeanMatchesTheTable(double kmh, double radius, double deg) {
    assertThat(Math.toDegrees(TurnLean.of(kmh / 3.6, radius, 600, 0).rollRad()))
        .isCloseTo(deg, within(5e-4));
  }

  @Test
  void limitSpeedInvertsTheLean() {
    // Touch-down roll 42.7725206784 deg, h 600, t 75, 50 m; worked apart.
    double roll = Math.toRadians(42.7725206784);
    assertThat(Math.tan(TurnLean.idealRollRad(roll, 600, 0, 75)))
        .isCloseTo(0.774409196219, within(1e-9));
    double v = TurnLean.speedMs(TurnLean.idealRollRad(roll, 600, 0, 75), 50);
    assertThat(v).isCloseTo(19.486354128082, within(1e-8));
    assertThat(v * 3.6).isCloseTo(70.150874861095, within(1e-7));
    assertThat(TurnLean.of(v, 50, 600, 75).rollRad()).isCloseTo(roll, within(1e-12));
  }

  /** The centre turned about the crown's centre, which stays its radius above the contact. */
  @ParameterizedTest
  @CsvSource({"0, 30", "25, 30", "25, -30", "40, 120", "40, -120"})
  void aCentreOffTheMiddlePlaneLeansMoreOrLess(double rollDeg, double y) {
    double roll = Math.toRadians(rollDeg);
    double h = 600;
    double t = 75;
    // upright: y to the side leaned to, h - t above the crown's centre
    double arm = Math.hypot(y, h - t);
    double from = Math.atan2(y, h - t);
    double out = arm * Math.sin(from + roll);
    double up = t + arm * Math.cos(from + roll);
    double ideal = TurnLean.idealRollRad(roll, h, y, t);
    assertThat(Math.tan(ideal)).isCloseTo(out / up, within(1e-12));
    assertThat(ideal).isCloseTo(Math.atan2(out, up), within(1e-12));
    // by hand upright: 30 / 600
    if (rollDeg == 0) {
      assertThat(Math.tan(ideal)).isCloseTo(0.05, within(1e-12));
    }
  }

  @Test
  void rollsBeyondLyingFlatAreRefused() {
    assertThatThrownBy(() -> TurnLean.idealRollRad(Math.toRadians(91), 600, 0, 75))
        .hasMessage("roll is 91.0; allowed is 0.0 to 90.0 deg");
    assertThatThrownBy(() -> TurnLean.idealRollRad(Double.NaN, 600, 0, 75))
        .hasMessage("roll is NaN; allowed is 0.0 to 90.0 deg");
    assertThatThrownBy(() -> TurnLean.idealRollRad(-0.1, 600, 0, 75)).hasMessageContaining("roll");
    assertThatThrownBy(() -> TurnLean.idealRollRad(0.1, 600, Double.NaN, 75))
        .hasMessageContaining("centre of gravity y");
    assertThatThrownBy(() -> TurnLean.idealRollRad(0.1, 140, 0, 75))
        .hasMessageContaining("section radius");
    assertThat(TurnLean.idealRollRad(0, 600, 0, 75)).isZero();
    assertThat(TurnLean.idealRollRad(Math.PI / 2, 600, 0, 75))
        .isCloseTo(Math.atan2(525, 75), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "-1, 40, 600, 75",
    "NaN, 40, 600, 75",
    "10, 0, 600, 75",
    "10, 40, -600, 75",
    "10, 40, 600, 301",
    "10, 40, 600, -1",
    "Infinity, 40, 600, 75"
  })
  void nonsenseIsRefused(double v, double radius, double h, double t) {
    assertThatThrownBy(() -> TurnLean.of(v, radius, h, t))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
