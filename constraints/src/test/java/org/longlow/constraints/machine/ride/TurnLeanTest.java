package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
