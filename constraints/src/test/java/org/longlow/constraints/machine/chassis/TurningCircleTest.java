package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.machine.chassis.TurningCircle.Straight;

/** Circles by hand where they are plain, and those of a torus turned point by point in space. */
class TurningCircleTest {

  private static TurningCircle circle(
      double wheelbase,
      double front,
      double crown,
      double rear,
      double rake,
      double offset,
      double lock) {
    Steering steering = new Steering(front, Math.toRadians(rake), offset);
    return TurningCircle.of(new Straight(steering, crown, rear, wheelbase), Math.toRadians(lock))
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"1800, 25", "1800, 40", "1450, 30", "1450, 80"})
  void anUprightAxisThroughTheContactTurnsTheWheelWhereItStands(double wheelbase, double lock) {
    TurningCircle circle = circle(wheelbase, 300, 50, 320, 0, 0, lock);
    assertThat(circle.onGroundRad()).isCloseTo(Math.toRadians(lock), within(1e-12));
    assertThat(circle.frontRadiusMm())
        .isCloseTo(wheelbase / Math.sin(Math.toRadians(lock)), within(1e-6));
    assertThat(circle.rearRadiusMm())
        .isCloseTo(wheelbase / Math.tan(Math.toRadians(lock)), within(1e-6));
  }

  @Test
  void anUprightAxisAheadSwingsTheContactAboutIt() {
    // the contact, 80 mm behind the axis at 1700, goes to 1700 - 80 cos 30 and 80 sin 30 outwards
    TurningCircle circle = circle(1620, 300, 50, 300, 0, -80, 30);
    double x = 1700 - 80 * Math.cos(Math.PI / 6);
    assertThat(circle.frontRadiusMm()).isCloseTo(2 * x, within(1e-6));
    assertThat(circle.rearRadiusMm()).isCloseTo(x * Math.sqrt(3) - 40, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "1800, 300, 55, 310, 27, 35, 25",
    "1800, 300, 55, 310, 27, 35, 40",
    "1640, 291, 0, 314, 26, 20, 30",
    "1640, 291, 145, 314, 34, -15, 30",
    "1450, 250, 50, 250, 12, 45, 60",
    "1900, 330, 48, 300, 45, 60, 35",
    "1600, 300, 50, 300, -8, 60, 30"
  })
  void aTorusTurnedInSpaceRollsOnTheSameCircles(
      double wheelbase,
      double front,
      double crown,
      double rear,
      double rake,
      double offset,
      double lock) {
    TurningCircle circle = circle(wheelbase, front, crown, rear, rake, offset, lock);
    double[] radii =
        new TurnedWheel(wheelbase, front, crown, rear, Math.toRadians(rake), offset)
            .radii(Math.toRadians(lock));
    assertThat(circle.frontRadiusMm()).isCloseTo(radii[0], within(1e-3));
    assertThat(circle.rearRadiusMm()).isCloseTo(radii[1], within(1e-3));
  }

  @Test
  void withoutLockOrSquareToTheMachineThereIsNone() {
    Straight machine = new Straight(new Steering(300, 0.4, 30), 50, 300, 1700);
    assertThat(TurningCircle.of(machine, 0)).isEmpty();
    assertThat(TurningCircle.of(machine, Math.PI / 2)).isEmpty();
    assertThat(TurningCircle.of(machine, Math.PI / 2 - 1e-3)).isPresent();
  }
}
