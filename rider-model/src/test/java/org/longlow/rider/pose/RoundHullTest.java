package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.RoundHull.Circle;

class RoundHullTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  // The reference is the convex hull of JTS of all corners; it drops and keeps corners that lie
  // within rounding of an edge, so areas are compared, not corners.
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void hullIsThatOfAllCorners(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 500; run++) {
      Circle[] circles = new Circle[1 + random.nextInt(4)];
      for (int i = 0; i < circles.length; i++) {
        circles[i] =
            new Circle(
                new PointMm(random.nextDouble(-300, 300), random.nextDouble(1000)),
                1 + random.nextDouble(150));
      }
      Coordinate[] ring = RoundHull.ring(circles);
      Polygon hull = FACTORY.createPolygon(ring);
      Geometry expected = new ConvexHull(corners(circles), FACTORY).getConvexHull();
      assertThat(Orientation.isCCW(ring)).isTrue();
      assertThat(hull.isValid()).isTrue();
      assertThat(hull.getArea()).isCloseTo(expected.getArea(), within(1e-6));
      assertThat(hull.symDifference(expected).getArea()).isCloseTo(0, within(1e-6));
    }
  }

  /** A boot flat on a board: heel, ball and toe in one line within rounding, found by chance. */
  @Test
  void circlesAlongOneLineAreWalkedOnce() {
    Circle[] boot = {
      new Circle(new PointMm(829.1181008130695, -16.977614097912515), 17.879053210739688),
      new Circle(new PointMm(949.3291105593197, 135.93135217261624), 41.0),
      new Circle(new PointMm(1010.2626478271357, 170.77264921464857), 22.55),
      new Circle(new PointMm(817.407647475265, 86.498241548033), 48.43879558006741)
    };
    same(boot);
    SplittableRandom random = new SplittableRandom(4);
    for (int run = 0; run < 2000; run++) {
      int corner = random.nextInt(RoundHull.CORNERS);
      PointMm out = PointMm.unit(2 * Math.PI * corner / RoundHull.CORNERS);
      PointMm along = out.left().turned(random.nextDouble(-0.09, 0.09));
      Circle[] circles = new Circle[3 + random.nextInt(3)];
      for (int i = 0; i < circles.length; i++) {
        double radius = 1 + random.nextDouble(100);
        PointMm touch = new PointMm(800, 100).plus(along.times(random.nextDouble(-300, 300)));
        circles[i] = new Circle(touch.minus(out.times(radius)), radius);
      }
      same(circles);
    }
  }

  private static void same(Circle... circles) {
    Polygon hull = FACTORY.createPolygon(RoundHull.ring(circles));
    Geometry expected = new ConvexHull(corners(circles), FACTORY).getConvexHull();
    assertThat(hull.symDifference(expected).getArea()).isCloseTo(0, within(1e-6));
  }

  private static Coordinate[] corners(Circle[] circles) {
    Coordinate[] corners = new Coordinate[RoundHull.CORNERS * circles.length];
    for (int i = 0; i < corners.length; i++) {
      Circle c = circles[i / RoundHull.CORNERS];
      double angle = 2 * Math.PI * (i % RoundHull.CORNERS) / RoundHull.CORNERS;
      corners[i] =
          new Coordinate(
              c.centre().x() + c.radius() * Math.cos(angle),
              c.centre().z() + c.radius() * Math.sin(angle));
    }
    return corners;
  }
}
