package org.longlow.constraints.lock;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/**
 * Turned bodies by counting: their edges as points a little apart, turned one by one about the axis
 * by Rodrigues' formula, and of each the distance to the other body by JTS and Pythagoras.
 */
final class Clouds {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Clouds() {}

  /** Points on all edges of a prism, no farther apart than a step. */
  static List<double[]> edges(Prism prism, double stepMm) {
    List<double[]> points = new ArrayList<>();
    Coordinate[] ring = ((Polygon) prism.outline()).getExteriorRing().getCoordinates();
    Interval across = prism.across();
    for (int i = 1; i < ring.length; i++) {
      int n = (int) Math.ceil(ring[i].distance(ring[i - 1]) / stepMm);
      for (int k = 0; k < n; k++) {
        double x = ring[i - 1].x + (ring[i].x - ring[i - 1].x) * k / n;
        double z = ring[i - 1].y + (ring[i].y - ring[i - 1].y) * k / n;
        points.add(new double[] {x, across.from(), z});
        points.add(new double[] {x, across.to(), z});
      }
      int m = (int) Math.ceil(across.length() / stepMm);
      for (int k = 1; k < m; k++) {
        points.add(new double[] {ring[i].x, across.from() + across.length() * k / m, ring[i].y});
      }
    }
    return points;
  }

  /** A point turned about an axis through a place of the middle plane. */
  static double[] turned(double[] p, PointMm at, PointMm up, double rad) {
    double[] k = {up.x(), 0, up.z()};
    double[] v = {p[0] - at.x(), p[1], p[2] - at.z()};
    double dot = k[0] * v[0] + k[1] * v[1] + k[2] * v[2];
    double[] cross = {
      k[1] * v[2] - k[2] * v[1], k[2] * v[0] - k[0] * v[2], k[0] * v[1] - k[1] * v[0]
    };
    double[] out = new double[3];
    for (int i = 0; i < 3; i++) {
      out[i] = v[i] * Math.cos(rad) + cross[i] * Math.sin(rad) + k[i] * dot * (1 - Math.cos(rad));
    }
    return new double[] {out[0] + at.x(), out[1], out[2] + at.z()};
  }

  static double distance(double[] p, Prism prism) {
    Geometry outline = prism.outline();
    Coordinate c = new Coordinate(p[0], p[2]);
    boolean within = SimplePointInAreaLocator.locate(c, outline) != Location.EXTERIOR;
    double side = within ? 0 : outline.distance(FACTORY.createPoint(c));
    double across = Math.max(0, Math.max(prism.across().from() - p[1], p[1] - prism.across().to()));
    return Math.hypot(side, across);
  }

  /** The lesser of a distance and that of a point, not asked where all the prism lies farther. */
  static double nearer(double least, double[] p, Prism prism) {
    Envelope box = prism.outline().getEnvelopeInternal();
    double x = Math.max(0, Math.max(box.getMinX() - p[0], p[0] - box.getMaxX()));
    double z = Math.max(0, Math.max(box.getMinY() - p[2], p[2] - box.getMaxY()));
    double across = Math.max(0, Math.max(prism.across().from() - p[1], p[1] - prism.across().to()));
    return x * x + z * z + across * across > least * least
        ? least
        : Math.min(least, distance(p, prism));
  }

  /** The distance of a body turned and one that stays: too large by half a step at most. */
  static double apart(
      List<Prism> moving, List<Prism> still, PointMm at, PointMm up, double rad, double stepMm) {
    double least = Double.POSITIVE_INFINITY;
    for (Prism a : moving) {
      for (Prism b : still) {
        for (double[] p : edges(a, stepMm)) {
          least = nearer(least, turned(p, at, up, rad), b);
        }
        for (double[] p : edges(b, stepMm)) {
          least = nearer(least, turned(p, at, up, -rad), a);
        }
      }
    }
    return least;
  }
}
