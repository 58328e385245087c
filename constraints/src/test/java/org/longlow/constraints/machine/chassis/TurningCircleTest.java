package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Circles worked out by hand: tan of the turn on the ground = tan lock · cos rake. */
class TurningCircleTest {

  @ParameterizedTest
  @CsvSource({
    "1800, 27, 25, 9.383",
    "1800, 27, 30, 7.870",
    "1800, 27, 35, 6.801",
    "1800, 27, 40, 6.012",
    "1450, 25, 30, 6.255"
  })
  void circlesOfTheFrontWheel(double wheelbase, double rake, double lock, double metres) {
    TurningCircle circle = TurningCircle.of(wheelbase, Math.toRadians(rake), Math.toRadians(lock));
    assertThat(2 * circle.frontRadiusMm() / 1000).isCloseTo(metres, within(6e-4));
    // both wheels turn about one place, a wheelbase apart along the machine
    assertThat(Math.hypot(circle.rearRadiusMm(), wheelbase))
        .isCloseTo(circle.frontRadiusMm(), within(1e-6));
  }
}
