package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Breadth;

/**
 * Formers of bodies from fixed seeds: each point of one lies as deep as the skin is thick under a
 * surface that is written out here, twisted sides between slanting edges.
 */
class FormerSeedsTest {

  private static final double LONG_MM = 400;

  private static final double NEAR_MM = 0.05;

  /** Heights of floor and roof, and how far out the sides are there, behind and ahead. */
  private record Body(double[] floor, double[] roof, double[][] left, double[][] right) {

    static Body of(SplittableRandom r) {
      return new Body(
          pair(r, -30, 40),
          pair(r, 110, 220),
          new double[][] {pair(r, 60, 150), pair(r, 50, 150)},
          new double[][] {pair(r, 60, 150), pair(r, 50, 150)});
    }

    private static double[] pair(SplittableRandom r, double from, double to) {
      return new double[] {r.nextDouble(from, to), r.nextDouble(from, to)};
    }

    private static double at(double[] pair, double x) {
      return pair[0] + (pair[1] - pair[0]) * x / LONG_MM;
    }

    double[] side(boolean isLeft, double x, double up) {
      double[][] reach = isLeft ? left : right;
      double y = at(reach[0], x) * (1 - up) + at(reach[1], x) * up;
      double z = at(floor, x) * (1 - up) + at(roof, x) * up;
      return new double[] {x, isLeft ? y : -y, z};
    }

    /** How far a place lies from the nearest side, by a grid that closes in on it. */
    double toSide(boolean isLeft, double... p) {
      double x = p[0];
      double up = 0.5;
      double wideX = 60;
      double wideUp = 0.5;
      for (int round = 0; round < 40; round++) {
        double best = Double.POSITIVE_INFINITY;
        double nextX = x;
        double nextUp = up;
        for (int i = -4; i <= 4; i++) {
          for (int k = -4; k <= 4; k++) {
            double tx = Math.max(0, Math.min(LONG_MM, x + i * wideX / 4));
            double tu = Math.max(0, Math.min(1, up + k * wideUp / 4));
            double[] q = side(isLeft, tx, tu);
            double d = Math.hypot(Math.hypot(p[0] - q[0], p[1] - q[1]), p[2] - q[2]);
            if (d < best) {
              best = d;
              nextX = tx;
              nextUp = tu;
            }
          }
        }
        x = nextX;
        up = nextUp;
        wideX *= 0.6;
        wideUp *= 0.6;
      }
      double[] q = side(isLeft, x, up);
      return Math.hypot(Math.hypot(p[0] - q[0], p[1] - q[1]), p[2] - q[2]);
    }

    /** Floor and roof run straight across the machine: planes in the elevation. */
    double toPlane(double[] height, double x, double z) {
      double rise = (height[1] - height[0]) / LONG_MM;
      return Math.abs(z - at(height, x)) / Math.hypot(1, rise);
    }

    double depth(double... p) {
      return Math.min(
          Math.min(toSide(true, p), toSide(false, p)),
          Math.min(toPlane(floor, p[0], p[2]), toPlane(roof, p[0], p[2])));
    }
  }

  private static FormerCut cut(Body b, double skin, boolean across, double place) {
    return FormerCuts.of(
            Made.formed(
                Made.reaching(
                    0,
                    b.floor()[0],
                    b.left()[0][0],
                    b.right()[0][0],
                    LONG_MM,
                    b.floor()[1],
                    b.left()[0][1],
                    b.right()[0][1],
                    LONG_MM,
                    b.roof()[1],
                    b.left()[1][1],
                    b.right()[1][1],
                    0,
                    b.roof()[0],
                    b.left()[1][0],
                    b.right()[1][0]),
                Made.spread(100, 100, false),
                Breadth.EVEN,
                skin,
                false,
                across ? Made.across(0, place) : Made.along(0, place)),
            Made.PLACES)
        .get(0);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void formersLieTheirSkinUnderTheSurface(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Body body = Body.of(random);
    double skin = random.nextDouble(1, 9);
    double place = random.nextDouble(60, 340);
    Coordinate[] across = cut(body, skin, true, place).line().getCoordinates();
    for (int i = 0; i + 1 < across.length; i++) {
      for (double t : new double[] {0, 0.37}) {
        double y = across[i].x + t * (across[i + 1].x - across[i].x);
        double z = across[i].y + t * (across[i + 1].y - across[i].y);
        assertThat(body.depth(place, y, z)).as("%s %s", y, z).isCloseTo(skin, within(NEAR_MM));
      }
    }
    double off = random.nextDouble(-40, 40);
    Coordinate[] along = cut(body, skin, false, off).line().getCoordinates();
    int step = Math.max(1, along.length / 40);
    for (int i = 0; i + 1 < along.length; i += step) {
      Coordinate c = along[i];
      double ends = Math.min(c.x, LONG_MM - c.x);
      double depth = Math.min(ends, body.depth(c.x, off, c.y));
      assertThat(depth).as("%s %s", c.x, c.y).isCloseTo(skin, within(NEAR_MM));
    }
  }
}
