package org.longlow.constraints.lock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.space.Block;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Rings;
import org.longlow.constraints.space.Rod;
import org.longlow.constraints.space.Separation;
import org.longlow.rider.geom.PointMm;

/** What a plane is said to keep while a body turns, against the body turned step by step. */
class SeparationTest {

  private static double within(Random random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private static Convex body(Random random) {
    double x = within(random, -300, 300);
    double z = within(random, -300, 300);
    double y = within(random, -200, 200);
    double more = within(random, 10, 120);
    return switch (random.nextInt(3)) {
      case 0 -> new Block(new double[] {x, z, x + more, z, x + more / 2, z + more}, y, y + more);
      case 1 ->
          new Rod(
              new PointMm(x, z),
              new PointMm(x + more, z - more),
              y,
              within(random, 5, 30),
              random.nextBoolean(),
              random.nextBoolean());
      default -> Rings.cylinder(new PointMm(x, z), more, y, y + 40);
    };
  }

  private static double farMm(Convex body, SteeringAxis axis) {
    double far = 0;
    double[] point = new double[3];
    PointMm up = axis.up();
    // a box about the axis holds the body
    double[][] ways = {{up.z(), 0, -up.x()}, {-up.z(), 0, up.x()}};
    double ahead = 0;
    for (double[] way : ways) {
      body.farthest(way, point);
      ahead = Math.max(ahead, Math.abs(axis.aheadMm(point[0], point[2])));
    }
    for (double side : new double[] {-1, 1}) {
      body.farthest(new double[] {0, side, 0}, point);
      far = Math.max(far, Math.abs(point[1]));
    }
    return Math.hypot(ahead, far);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whatAPlaneKeepsIsKeptOverTheTurn(long seed) {
    Random random = new Random(seed);
    Separation screen = new Separation();
    Separation exact = new Separation();
    int kept = 0;
    int byDirection = 0;
    for (int n = 0; n < 3000; n++) {
      double rake = within(random, 0, 0.8);
      SteeringAxis axis =
          SteeringAxis.through(PointMm.ORIGIN, new PointMm(-Math.sin(rake), Math.cos(rake)));
      Turned a = new Turned(body(random), axis);
      Convex b = body(random);
      double middle = within(random, -0.5, 0.5);
      double half = within(random, 0.01, 0.4);
      a.turn(0);
      double most = farMm(a, axis) * half;
      a.turn(middle);
      screen.begin(1, 0, 0);
      double cut = within(random, 1, 60);
      if (!screen.keeps(a, b, cut, most, axis.up())) {
        continue;
      }
      kept++;
      exact.begin(1, 0, 0);
      byDirection += exact.mm(a, b, 1e6) < cut + most ? 1 : 0;
      for (int k = -10; k <= 10; k++) {
        a.turn(middle + half * k / 10);
        exact.begin(1, 0, 0);
        assertThat(exact.mm(a, b, 1e6))
            .as(seed + " " + n + " " + k)
            .isGreaterThan(cut - 2 * Separation.BOUND_MM);
      }
    }
    assertThat(kept).isGreaterThan(200);
    // some only because what lies along the axis is not neared by a turn
    assertThat(byDirection).isGreaterThan(20);
  }

  @ParameterizedTest
  @ValueSource(longs = {4, 5})
  void thePlaneComeToLastKeepsNoMoreThanTheNearestTurnAndNearlyAllOfASmallOne(long seed) {
    Random random = new Random(seed);
    Separation looked = new Separation();
    Separation exact = new Separation();
    int apart = 0;
    int close = 0;
    for (int n = 0; n < 400; n++) {
      double rake = within(random, 0, 0.8);
      PointMm foot = new PointMm(within(random, -200, 200), within(random, -200, 200));
      SteeringAxis axis =
          SteeringAxis.through(
              foot, foot.plus(new PointMm(-Math.sin(rake), Math.cos(rake)).times(100)));
      Turned a = new Turned(body(random), axis);
      Convex b = body(random);
      double middle = within(random, -1, 1);
      a.turn(middle);
      looked.begin(1, 1, 1);
      double there = looked.mm(a, b, 1e4);
      if (there == 0) {
        continue;
      }
      apart++;
      double half = within(random, 0.01, 0.7);
      double kept = a.keptOver(looked, b, middle, half);
      for (int k = -20; k <= 20; k++) {
        a.turn(middle + half * k / 20);
        exact.begin(1, 1, 1);
        double mm = exact.mm(a, b, 1e4); // below the distance by no more than the bound
        assertThat(mm + Separation.BOUND_MM).isGreaterThan(kept);
      }
      close += a.keptOver(looked, b, middle, 1e-7) > there - 0.02 ? 1 : 0;
    }
    assertThat(apart).isGreaterThan(250);
    assertThat(close).isGreaterThan(apart * 9 / 10);
  }
}
