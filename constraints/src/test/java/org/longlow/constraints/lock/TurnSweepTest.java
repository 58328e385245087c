package org.longlow.constraints.lock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Block;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Rings;
import org.longlow.constraints.space.Separation;
import org.longlow.rider.geom.PointMm;

/** Bodies turned about an axis past others, against points turned one by one. */
class TurnSweepTest {

  private static final double LOCK = Math.toRadians(30);

  private static SteeringAxis axis(PointMm at, double rakeDeg) {
    double rake = Math.toRadians(rakeDeg);
    return SteeringAxis.through(at, at.plus(new PointMm(-Math.sin(rake), Math.cos(rake))));
  }

  /** A star of seven corners, some of which turn in, over a breadth that is nowhere symmetrical. */
  private static Prism star(Random random, PointMm middle, double y) {
    List<PointMm> ring = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      double far = 15 + 60 * random.nextDouble();
      ring.add(middle.plus(PointMm.unit(2 * Math.PI * i / 7 + 0.3).times(far)));
    }
    double from = y - 60 * random.nextDouble();
    return new Prism(
        Curves.polygon(ring), new Interval(from, from + 10 + 60 * random.nextDouble()));
  }

  static List<Long> seeds() {
    List<Long> seeds = new ArrayList<>();
    for (long seed = 1; seed <= 10; seed++) {
      seeds.add(seed);
    }
    return seeds;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void gapsAreThoseOfPointsTurnedOneByOne(long seed) {
    Random random = new Random(seed);
    SteeringAxis axis = axis(new PointMm(40 * random.nextDouble(), 30), 26);
    List<Prism> moving =
        List.of(star(random, new PointMm(180, 60), 20), star(random, new PointMm(-140, 40), -50));
    List<Prism> still =
        List.of(star(random, new PointMm(200, 20), 190), star(random, new PointMm(-150, 90), -210));
    TurnSweep.Closest found =
        TurnSweep.pastStill(axis)
            .closest(
                SpaceBody.of("moving", moving), SpaceBody.of("still", still), -LOCK, LOCK, 1000);
    double step = 6;
    int turns = 36;
    double least = Double.POSITIVE_INFINITY;
    double there = 0;
    for (int k = -turns; k <= turns; k++) {
      double rad = LOCK * k / turns;
      double mm = Clouds.apart(moving, still, axis.at(), axis.up(), rad, step);
      if (mm < least) {
        least = mm;
        there = rad;
      }
    }
    // half a step along an edge, and half a turn between two looks at something 300 mm out
    double coarse = step / 2 + 300 * LOCK / turns / 2;
    assertThat(found.gapMm()).isLessThanOrEqualTo(least + 1e-9);
    if (found.gapMm() > 0) {
      assertThat(found.gapMm()).isGreaterThan(least - coarse - TurnSweep.BOUND_MM - 0.02);
      double at = Clouds.apart(moving, still, axis.at(), axis.up(), found.turnRad(), step);
      assertThat(at).isCloseTo(found.gapMm(), within(step / 2 + 2 * TurnSweep.BOUND_MM));
    } else {
      assertThat(least).as("at %s", there).isLessThan(coarse);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatIsMirroredIsMetOnTheOtherSide(long seed) {
    Random random = new Random(seed);
    SteeringAxis axis = axis(PointMm.ORIGIN, 20);
    List<Prism> moving = List.of(star(random, new PointMm(180, 60), 20));
    List<Prism> still = List.of(star(random, new PointMm(190, 50), 120));
    TurnSweep sweep = TurnSweep.pastStill(axis);
    TurnSweep.First left =
        sweep.first(SpaceBody.of("a", moving), SpaceBody.of("b", still), LOCK, 5);
    TurnSweep.First right =
        sweep.first(
            SpaceBody.of("a", mirrored(moving)), SpaceBody.of("b", mirrored(still)), -LOCK, 5);
    assertThat(left == null).isEqualTo(right == null);
    if (left != null) {
      assertThat(left.turnRad()).isCloseTo(-right.turnRad(), within(2e-3));
    }
  }

  private static List<Prism> mirrored(List<Prism> prisms) {
    return prisms.stream().map(p -> new Prism(p.outline(), p.across().mirrored())).toList();
  }

  private static Prism block(double x0, double x1, double y0, double y1, double z0, double z1) {
    return new Prism(
        Curves.polygon(
            List.of(
                new PointMm(x0, z0),
                new PointMm(x1, z0),
                new PointMm(x1, z1),
                new PointMm(x0, z1))),
        new Interval(y0, y1));
  }

  /** A bar 500 mm long, 10 mm wide, comes to a wall at one side: its front corner does first. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 3, 15})
  void aBarComesToAWallWhereTrigonometrySaysSo(double gap) {
    SteeringAxis axis = axis(PointMm.ORIGIN, 0);
    SpaceBody bar = SpaceBody.of("bar", List.of(block(0, 500, -5, 5, 0, 10)));
    SpaceBody wall = SpaceBody.of("wall", List.of(block(-100, 600, 100, 130, -50, 50)));
    // 500 sin a + 5 cos a = 100 - gap
    double turn = Math.asin((100 - gap) / Math.hypot(500, 5)) - Math.atan2(5, 500);
    TurnSweep sweep = TurnSweep.pastStill(axis);
    TurnSweep.First first = sweep.first(bar, wall, LOCK, gap);
    assertThat(first.turnRad()).isLessThanOrEqualTo(turn + 1e-9);
    assertThat(first.turnRad()).isCloseTo(turn, within(2 * TurnSweep.BOUND_MM / 450));
    assertThat(sweep.first(bar, wall, turn - 1e-3, gap)).isNull();
    assertThat(sweep.first(bar, wall, turn + 1e-3, gap)).isNotNull();
    assertThat(sweep.first(bar, wall, -LOCK, gap)).isNull();
  }

  /** A wheel on an upright axis through its middle: the tread comes round to a box beside it. */
  @Test
  void aWheelTurnsIntoABoxBesideIt() {
    SteeringAxis axis = axis(new PointMm(0, 300), 0);
    Tyre tyre = new Tyre(300, 100, 50, false);
    Convex wheel = Rings.wheel(new PointMm(0, 300), tyre);
    // a post 20 mm square at the height of the axle, its near side 100 mm to the left
    double[] out = new double[3];
    Turned turned = new Turned(wheel, axis);
    Convex post = new Block(new double[] {240, 290, 260, 290, 260, 310, 240, 310}, 100, 120);
    Separation separation = new Separation();
    // of a torus of 250 and 50 mm the tube's middle lies in the wheel's plane: that the plane is 50
    // mm off the near corner (240, 100) is where they touch
    double touch = Math.atan2(100, 260);
    double low = 0;
    double high = touch;
    for (int i = 0; i < 60; i++) {
      double a = (low + high) / 2;
      double off = torus(240, 100, a);
      double off2 = torus(260, 100, a);
      if (Math.min(off, off2) > 0) {
        low = a;
      } else {
        high = a;
      }
    }
    turned.turn(low);
    assertThat(separation.mm(turned, post, 100)).isLessThan(0.5);
    turned.turn(low - 0.02);
    assertThat(separation.mm(turned, post, 100)).isBetween(2.0, 6.0);
    wheel.farthest(new double[] {0, 1, 0}, out);
    assertThat(out[1]).isCloseTo(50, within(1e-9));
    wheel.farthest(new double[] {1, 0, 0}, out);
    assertThat(out[0]).isCloseTo(300, within(1e-9));
  }

  /** How far a point at axle height is outside of a turned wheel with a round crown, mm. */
  private static double torus(double x, double y, double turn) {
    double along = x * Math.cos(turn) + y * Math.sin(turn);
    double off = -x * Math.sin(turn) + y * Math.cos(turn);
    double out = Math.max(0, along - 250);
    return Math.hypot(out, off) - 50;
  }

  /** No point of a tyre is outside of what is turned for it, and that is hardly larger. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 20, 50, 80, 200})
  void aTyreIsWithinWhatIsTurnedForIt(double crown) {
    Tyre tyre = new Tyre(300, 100, crown, false);
    Convex wheel = Rings.wheel(PointMm.ORIGIN, tyre);
    double[] out = new double[3];
    for (int k = 0; k <= 90; k++) {
      double slope = Math.toRadians(k);
      double[] d = {Math.cos(slope), Math.sin(slope), 0};
      wheel.farthest(d, out);
      double reach = out[0] * d[0] + out[1] * d[1];
      double end = Math.min(slope, crown > 50 ? Math.asin(50 / crown) : Math.PI / 2);
      double x = 300 - crown + crown * Math.cos(end);
      double y = Math.min(50, crown * Math.sin(end));
      double arc = x * d[0] + y * d[1];
      assertThat(reach).isGreaterThanOrEqualTo(arc - 1e-9);
      if (crown >= 50) {
        assertThat(reach).isLessThan(arc + 0.01 * crown);
      }
    }
  }

  /** Both on their own axes by the same turn: as one past the other turned back, by hand. */
  @Test
  void twoAxesTurnAtTheSameTime() {
    SteeringAxis one = axis(PointMm.ORIGIN, 0);
    SteeringAxis two = axis(new PointMm(300, 0), 0);
    SpaceBody a = SpaceBody.of("a", List.of(block(0, 140, -5, 5, 0, 10)));
    SpaceBody b = SpaceBody.of("b", List.of(block(160, 300, -5, 5, 0, 10)));
    // their near corners pass each other where 280 sin a = 10 cos a, 300 - hypot(280, 10) apart
    double apart = 300 - Math.hypot(280, 10);
    TurnSweep.Closest closest = TurnSweep.past(one, two).closest(a, b, -LOCK, LOCK, 100);
    assertThat(closest.gapMm()).isBetween(apart - 2 * TurnSweep.BOUND_MM, apart);
    assertThat(Math.abs(closest.turnRad())).isCloseTo(Math.atan2(10, 280), within(0.03));
  }
}
