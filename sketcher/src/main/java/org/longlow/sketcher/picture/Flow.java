package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Planar;

/** Smooth lines by few points, for what is drawn and never measured. */
final class Flow {

  /** Chords from one point to the next. */
  private static final int CHORDS = 4;

  private Flow() {}

  /**
   * Returns the points of a smooth line through {@code knots} (Catmull and Rom's spline, its slopes
   * held down where knots lie close together).
   */
  static List<PointMm> through(List<PointMm> knots) {
    return points(knots, false);
  }

  /** As {@link #through}, from the last knot on to the first; the first is not repeated. */
  static List<PointMm> round(List<PointMm> knots) {
    return points(knots, true);
  }

  private static List<PointMm> points(List<PointMm> knots, boolean closed) {
    int n = knots.size();
    List<PointMm> out = new ArrayList<>(n * CHORDS);
    int spans = closed ? n : n - 1;
    for (int i = 0; i < spans; i++) {
      PointMm a = knots.get(i);
      PointMm b = knots.get((i + 1) % n);
      PointMm before = closed || i > 0 ? knots.get((i + n - 1) % n) : a;
      PointMm after = closed || i + 2 < n ? knots.get((i + 2) % n) : b;
      double span = a.distance(b);
      PointMm leave = slope(before, b, span);
      PointMm reach = slope(a, after, span);
      for (int k = 0; k < CHORDS; k++) {
        double t = (double) k / CHORDS;
        double u = 1 - t;
        out.add(
            a.times(u * u * (1 + 2 * t))
                .plus(leave.times(u * u * t))
                .plus(b.times(t * t * (3 - 2 * t)))
                .minus(reach.times(t * t * u)));
      }
    }
    if (!closed) {
      out.add(knots.get(n - 1));
    }
    return out;
  }

  private static PointMm slope(PointMm before, PointMm after, double span) {
    PointMm way = after.minus(before);
    double length = way.length();
    return length < 1e-9 ? way : way.times(Math.min(0.5, span / length));
  }

  /**
   * Returns how far a convex outline reaches from a point inside it, mm; 0 from outside where it
   * lies the other way.
   *
   * @param direction of length 1
   */
  static double reachMm(Polygon convex, PointMm from, PointMm direction) {
    CoordinateSequence ring = convex.getExteriorRing().getCoordinateSequence();
    double most = 0;
    for (int i = 1; i < ring.size(); i++) {
      double ax = ring.getX(i - 1) - from.x();
      double az = ring.getY(i - 1) - from.z();
      double bx = ring.getX(i) - from.x();
      double bz = ring.getY(i) - from.z();
      double a = direction.x() * az - direction.z() * ax;
      double b = direction.x() * bz - direction.z() * bx;
      if (a > 0 != b > 0) {
        double share = a / (a - b);
        most =
            Math.max(
                most,
                (ax + share * (bx - ax)) * direction.x()
                    + (az + share * (bz - az)) * direction.z());
      }
    }
    return most;
  }

  /**
   * Returns how far outlines that lie in each other reach together, seen from {@code from}, as a
   * smooth ring.
   *
   * @param rays how many directions are looked along
   */
  static List<PointMm> star(List<Polygon> convex, PointMm from, int rays) {
    List<PointMm> knots = new ArrayList<>(rays);
    for (int i = 0; i < rays; i++) {
      PointMm way = PointMm.unit(2 * Math.PI * i / rays);
      double most = 0;
      for (Polygon p : convex) {
        most = Math.max(most, reachMm(p, from, way));
      }
      knots.add(from.plus(way.times(most)));
    }
    return round(knots);
  }

  /**
   * Returns what of a ring is inside a convex outline (Sutherland and Hodgman's way: edge by edge).
   *
   * @param convex counter-clockwise
   */
  static Geometry inside(List<PointMm> ring, Polygon convex) {
    List<PointMm> kept = ring;
    Coordinate[] edge = convex.getExteriorRing().getCoordinates();
    for (int i = 1; i < edge.length && !kept.isEmpty(); i++) {
      PointMm a = new PointMm(edge[i - 1].x, edge[i - 1].y);
      PointMm along = new PointMm(edge[i].x - edge[i - 1].x, edge[i].y - edge[i - 1].y);
      List<PointMm> next = new ArrayList<>(kept.size() + 2);
      PointMm last = kept.get(kept.size() - 1);
      double before = along.cross(last.minus(a));
      for (PointMm p : kept) {
        double now = along.cross(p.minus(a));
        if (now > 0 != before > 0) {
          next.add(last.towards(p, before / (before - now)));
        }
        if (now > 0) {
          next.add(p);
        }
        last = p;
        before = now;
      }
      kept = next;
    }
    return kept.size() < 3 ? Planar.FACTORY.createPolygon() : polygon(kept);
  }

  /** Returns the polygon of a ring; the first point is not repeated. */
  static Polygon polygon(List<PointMm> ring) {
    double[] xy = new double[2 * ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      xy[2 * i] = ring.get(i).x();
      xy[2 * i + 1] = ring.get(i).z();
    }
    return Planar.polygon(xy);
  }
}
