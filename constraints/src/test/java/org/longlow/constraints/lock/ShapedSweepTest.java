package org.longlow.constraints.lock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Made;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** A body whose breadth varies turned past a box, and a box past it, by points of its surface. */
class ShapedSweepTest {

  private static final double LOCK = Math.toRadians(35);
  private static final double STEP = 4;

  /** A wedge along the machine from x 120 to 320 and 60 high, flat or oval across. */
  private record Wedge(double behind, double ahead, boolean oval) {

    List<Prism> prisms() {
      return Made.solid(
              Made.outline(120, 0, 320, 0, 320, 60, 120, 60),
              Made.spread(behind, behind, false),
              new Breadth(
                  Made.stations(false, 120, behind, 320, ahead),
                  oval ? Made.profile(Profile.Shape.OVAL) : Profile.FLAT))
          .prisms();
    }

    List<double[]> surface() {
      List<double[]> points = new ArrayList<>();
      for (double x = 120; x <= 320; x += STEP) {
        double half = behind + (ahead - behind) * (x - 120) / 200;
        for (double up = 0; up <= 60; up += STEP / 2) {
          double share = oval ? 2 * Math.sqrt(up / 60 * (1 - up / 60)) : 1;
          // its ends, and its flat upper and lower sides, are faces too
          boolean face = x == 120 || x + STEP > 320 || !oval && (up == 0 || up == 60);
          for (double y = face ? 0 : half * share; y <= half * share; y += STEP) {
            points.add(new double[] {x, y, up});
            points.add(new double[] {x, -y, up});
          }
          points.add(new double[] {x, half * share, up});
          points.add(new double[] {x, -half * share, up});
        }
      }
      return points;
    }
  }

  private static Prism box(Random random) {
    double x = 150 + 120 * random.nextDouble();
    double z = -40 + 60 * random.nextDouble();
    double y = 190 + 60 * random.nextDouble();
    return new Prism(
        Curves.polygon(
            List.of(
                new PointMm(x, z),
                new PointMm(x + 70, z + 10),
                new PointMm(x + 60, z + 70),
                new PointMm(x - 10, z + 50))),
        new Interval(y, y + 40));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void closestIsWhereDenseTurnsOfItsPointsAre(long seed) {
    Random random = new Random(seed);
    Wedge wedge = new Wedge(30 + 40 * random.nextDouble(), 10 + 60 * random.nextDouble(), seed > 3);
    Prism box = box(random);
    double rake = Math.toRadians(25);
    PointMm at = new PointMm(-30, 10);
    SteeringAxis axis =
        SteeringAxis.through(at, at.plus(new PointMm(-Math.sin(rake), Math.cos(rake))));
    List<double[]> surface = wedge.surface();
    boolean steered = seed % 2 == 0;
    SpaceBody body = SpaceBody.of("wedge", wedge.prisms());
    SpaceBody still = SpaceBody.of("box", List.of(box));
    // a body turned past a box comes as near as the box turned back past the body
    TurnSweep.Closest found =
        steered
            ? TurnSweep.pastStill(axis).closest(body, still, -LOCK, LOCK, 1000)
            : TurnSweep.pastStill(axis).closest(still, body, -LOCK, LOCK, 1000);
    double least = Double.POSITIVE_INFINITY;
    int turns = 140;
    for (int k = -turns; k <= turns; k++) {
      double rad = LOCK * k / turns * (steered ? 1 : -1);
      for (double[] p : surface) {
        least = Clouds.nearer(least, Clouds.turned(p, axis.at(), axis.up(), rad), box);
      }
    }
    // points at most half a diagonal of a step off, half a step of turn at 400 mm, corners of the
    // box against flat sides among points; curves are gone round by 0.2 mm
    double coarse = STEP * Math.sqrt(0.5) + 400 * LOCK / turns / 2 + 0.21 + TurnSweep.BOUND_MM;
    if (found.gapMm() > 0) {
      assertThat(found.gapMm()).isLessThan(least + 1e-3).isGreaterThan(least - coarse);
    } else {
      assertThat(least).isLessThan(coarse);
    }
  }
}
