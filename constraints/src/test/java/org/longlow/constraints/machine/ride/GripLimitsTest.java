package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Tyres that slide, by moments about each contact and halving, instead of a closed form. */
class GripLimitsTest {

  private static final double G = 9.80665;

  /** The most of a deceleration, or of a pull where negative, that a machine bears. */
  private static double most(DoublePredicate bears) {
    double from = 0;
    double to = 20;
    for (int i = 0; i < 200; i++) {
      double middle = (from + to) / 2;
      if (bears.test(middle)) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return from;
  }

  @Test
  void eachBrakeAndTheDriveHoldWhatTheirTyreWeighs() {
    SplittableRandom random = new SplittableRandom(11);
    int lifted = 0;
    int driven = 0;
    for (int i = 0; i < 200; i++) {
      double base = random.nextDouble(1200, 2000);
      double b = base * random.nextDouble(0.3, 0.6);
      double h = random.nextDouble(350, 1100);
      double grip = random.nextDouble(0.2, 1.4);
      double kg = random.nextDouble(150, 500);
      double weight = kg * G;
      AxleLoads axles = new AxleLoads(base, new MassPoint(kg, new PointMm(b, h)));
      GripLimits limits = GripLimits.of(axles, grip);
      // loads by moments about the other contact; inertia acts forward at the centre
      double front =
          most(
              a ->
                  a * weight <= grip * (weight * b + a * weight * h) / base
                      && rear(base, b, h, a) >= 0);
      double rear = most(a -> a * weight <= grip * weight * rear(base, b, h, a));
      double both = most(a -> a <= grip && rear(base, b, h, a) >= 0);
      for (DrivenWheels wheels : DrivenWheels.values()) {
        GripLimits.Driving pulls = GripLimits.driving(axles, grip, wheels);
        double drive =
            most(
                a -> {
                  double onRear = rear(base, b, h, -a);
                  double share =
                      switch (wheels) {
                        case FRONT -> 1 - onRear;
                        case REAR -> onRear;
                        case BOTH -> 1;
                      };
                  return a <= grip * share && b - a * h >= 0;
                });
        assertThat(pulls.g()).isCloseTo(drive, within(1e-9));
        assertThat(pulls.lifts()).isEqualTo(b - drive * h < 1e-6);
        driven += pulls.lifts() ? 1 : 0;
      }
      assertThat(limits.frontG()).isCloseTo(front, within(1e-9));
      assertThat(limits.rearG()).isCloseTo(rear, within(1e-9));
      assertThat(limits.bothG()).isCloseTo(both, within(1e-9));
      assertThat(limits.brakingLifts()).isEqualTo(rear(base, b, h, front) < 1e-9);
      lifted += limits.brakingLifts() ? 1 : 0;
    }
    assertThat(lifted).isBetween(10, 190);
    assertThat(driven).isBetween(20, 380);
  }

  /** Share of the weight on the rear wheel. */
  private static double rear(double base, double b, double h, double brakingG) {
    return (base - b - brakingG * h) / base;
  }

  @Test
  void aRoadWithoutGripIsRefused() {
    AxleLoads axles = new AxleLoads(1500, new MassPoint(200, new PointMm(700, 500)));
    assertThatThrownBy(() -> GripLimits.of(axles, 0)).isInstanceOf(OutOfRange.class);
  }
}
