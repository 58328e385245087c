package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
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
