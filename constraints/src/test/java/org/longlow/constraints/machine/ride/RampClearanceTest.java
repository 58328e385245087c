package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;

/** Ramps and kerbs against rolling the machine over them, step by step. */
class RampClearanceTest {

  private static final RampClearance MACHINE = new RampClearance(1600, 310, 290);

  /** A road that rises at {@code x > 0} by this slope. */
  private record Road(double slopeRad) {
    double height(double x) {
      return x > 0 ? x * Math.tan(slopeRad) : 0;
    }
  }

  @Test
  void aPointClearsTheCrestOfThePublishedIdea() {
    // two angles worked by hand for the belly point (700, 140) between wheels of 314.9 and 299.9 mm
    RampClearance c = new RampClearance(1500, 314.9, 299.9);
    assertThat(Math.toDegrees(c.crestRad(new PointMm(700, 140))))
        .isCloseTo(22.113312456563, within(1e-9));
  }

  @Test
  void theLeastOfAnEdgeIsThatOfItsManyPoints() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 200; i++) {
      PointMm a = new PointMm(random.nextDouble(-100, 1700), random.nextDouble(60, 500));
      PointMm b = new PointMm(random.nextDouble(-100, 1700), random.nextDouble(60, 500));
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k <= 4000; k++) {
        least = Math.min(least, MACHINE.crestRad(a.plus(b.minus(a).times(k / 4000.0))));
      }
      RampClearance.Least found = MACHINE.crest(a, b);
      if (Double.isInfinite(least)) {
        assertThat(found.value()).isInfinite();
      } else {
        // points 0.45 mm apart find it within what the angle changes over that
        assertThat(found.value()).as("%s %s", a, b).isCloseTo(least, within(5e-4));
        assertThat(found.value()).isLessThan(least + 1e-6);
        assertThat(MACHINE.crestRad(found.point())).isEqualTo(found.value());
      }
    }
  }

  @Test
  void soHighUpNothingClearsLess() {
    for (double deg = 4; deg < 60; deg += 4) {
      double height = MACHINE.heightMm(Math.toRadians(deg));
      for (double x = 5; x < 1600; x += 5) {
        assertThat(MACHINE.crestRad(new PointMm(x, height)))
            .isGreaterThanOrEqualTo(Math.toRadians(deg));
      }
    }
  }

  @Test
  void aFlatBellyTouchesInItsMiddle() {
    RampClearance.Least least =
        new RampClearance(1600, 300, 300).crest(new PointMm(350, 140), new PointMm(1250, 140));
    assertThat(least.point().x()).isCloseTo(800, within(1.0));
    assertThat(least.value())
        .isLessThan(new RampClearance(1600, 300, 300).crestRad(new PointMm(350, 140)));
  }

  @Test
  void overACrestTheCornerThatIsLeastJustTouches() {
    // Wheels on the two sides of a crest of that angle, rolled along it: the corner's height over
    // the road, by the distance of both wheels from it alone, never goes under nought and reaches
    // it.
    SplittableRandom random = new SplittableRandom(8);
    for (int i = 0; i < 20; i++) {
      PointMm p = new PointMm(random.nextDouble(450, 1150), random.nextDouble(60, 250));
      double crest = MACHINE.crestRad(p);
      double lowest = Double.POSITIVE_INFINITY;
      for (int k = 1; k < 20_000; k++) {
        double rear = crest * k / 20_000.0;
        lowest = Math.min(lowest, overCrest(p, rear, crest - rear));
      }
      assertThat(lowest).isCloseTo(0, within(0.02)); // steps of a 20,000th of the crest
    }
  }

  /** How high a point is over the nearer side of a crest whose sides fall by these angles. */
  private static double overCrest(PointMm p, double rearRad, double frontRad) {
    // side under the rear wheel rises forward by rearRad, that under the front falls by frontRad
    double n1 = -Math.sin(rearRad) * p.x() + Math.cos(rearRad) * (p.z() - 310) + 310;
    double n2 = Math.sin(frontRad) * (p.x() - 1600) + Math.cos(frontRad) * (p.z() - 290) + 290;
    return Math.max(n1, n2);
  }

  @Test
  void aNoseJustTouchesTheRampOfItsAngle() {
    SplittableRandom random = new SplittableRandom(9);
    for (int i = 0; i < 20; i++) {
      PointMm nose = new PointMm(random.nextDouble(1950, 2300), random.nextDouble(50, 400));
      Road ramp = new Road(MACHINE.approach(nose).value());
      // the wheel has rolled to the foot: its centre is as far from the ramp as its radius
      double footX = 1600 + 290 * Math.tan(ramp.slopeRad() / 2);
      assertThat(nose.z()).isCloseTo(ramp.height(nose.x() - footX), within(1e-9));
      PointMm tail = new PointMm(1600 - nose.x(), nose.z());
      assertThat(new RampClearance(1600, 290, 310).departure(tail).value())
          .isCloseTo(ramp.slopeRad(), within(1e-12));
    }
  }

  @Test
  void overAKerbOfThatHeightThePointJustClearsItsEdge() {
    SplittableRandom random = new SplittableRandom(10);
    for (int i = 0; i < 200; i++) {
      PointMm p = new PointMm(random.nextDouble(330, 1270), random.nextDouble(40, 200));
      double kerb = MACHINE.kerb(p).value();
      double up = kerbOf(p, 310, 290, 1600);
      double down = kerbOf(new PointMm(1600 - p.x(), p.z()), 290, 310, 1600);
      assertThat(kerb).isCloseTo(Math.min(up, down), within(1e-6));
    }
    assertThat(MACHINE.kerb(new PointMm(1950, 85)).value()).isEqualTo(85);
  }

  /** By halving: the height at which the upper level goes through the point. */
  private static double kerbOf(PointMm p, double lower, double upper, double wheelbase) {
    double from = 0;
    double to = wheelbase / 2;
    for (int k = 0; k < 80; k++) {
      double h = (from + to) / 2;
      // wheels on two levels: their centres lie in a line that pitches so far
      double apart = Math.hypot(wheelbase, upper - lower);
      double drawn = Math.atan2(upper - lower, wheelbase);
      double pitch = Math.asin((h + upper - lower) / apart) - drawn;
      double height = (p.x() - wheelbase) * Math.sin(pitch) + (p.z() - upper) * Math.cos(pitch);
      if (height + upper > 0) {
        from = h;
      } else {
        to = h;
      }
    }
    return from;
  }

  @Test
  void whatLiesInATyreOrAheadOfNothingIsNotMet() {
    assertThat(MACHINE.crestRad(new PointMm(100, 200))).isInfinite();
    assertThat(MACHINE.crestRad(new PointMm(1700, 200))).isInfinite();
    assertThat(MACHINE.approach(new PointMm(1500, 100)).value()).isInfinite();
    assertThat(MACHINE.departure(new PointMm(100, 100)).value()).isInfinite();
    assertThat(MACHINE.kerb(new PointMm(1600, 100)).value()).isInfinite();
  }
}
