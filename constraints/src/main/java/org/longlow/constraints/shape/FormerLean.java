package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Location;

/** How the edge of a former leans from the section at one face to that at the other. */
final class FormerLean {

  private final double thicknessMm;
  private final IndexedPointInAreaLocator own;
  private final IndexedPointInAreaLocator within;
  private final List<Coordinate[]> lines = new ArrayList<>();

  /** Takes the sections at both faces of a sheet; the second may be empty, then nothing leans. */
  FormerLean(Geometry line, Geometry other, double thicknessMm) {
    this.thicknessMm = thicknessMm;
    this.own = new IndexedPointInAreaLocator(line);
    this.within = new IndexedPointInAreaLocator(other);
    Geometry boundary = other.getBoundary();
    for (int i = 0; i < boundary.getNumGeometries(); i++) {
      lines.add(boundary.getGeometryN(i).getCoordinates());
    }
  }

  /** Returns how far the other face's line lies from a place on an edge, outward positive, mm. */
  double offMm(Coordinate p, Coordinate out) {
    boolean narrower = within.locate(p) == Location.EXTERIOR;
    return narrower ? -along(p, -out.x, -out.y) : along(p, out.x, out.y);
  }

  /** Returns the angle of that against square, outward positive. */
  double rad(Coordinate p, Coordinate out) {
    return Math.atan2(offMm(p, out), thicknessMm);
  }

  /** Returns which way is out at a place on an edge, square to it. */
  Coordinate outward(LineSegment s, Coordinate p) {
    double nx = -(s.p1.y - s.p0.y) / s.getLength();
    double ny = (s.p1.x - s.p0.x) / s.getLength();
    boolean in = own.locate(new Coordinate(p.x + 1e-3 * nx, p.y + 1e-3 * ny)) != Location.EXTERIOR;
    return in ? new Coordinate(-nx, -ny) : new Coordinate(nx, ny);
  }

  /** How far it is from a place to the nearest of the lines in a direction; 0 if there is none. */
  private double along(Coordinate p, double dx, double dy) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Coordinate[] line : lines) {
      for (int i = 0; i + 1 < line.length; i++) {
        double ex = line[i + 1].x - line[i].x;
        double ey = line[i + 1].y - line[i].y;
        double cross = dx * ey - dy * ex;
        double ax = line[i].x - p.x;
        double ay = line[i].y - p.y;
        double t = (ax * ey - ay * ex) / cross;
        double on = (ax * dy - ay * dx) / cross;
        if (cross != 0 && t >= 0 && on >= 0 && on <= 1) {
          nearest = Math.min(nearest, t);
        }
      }
    }
    return nearest == Double.POSITIVE_INFINITY ? 0 : nearest;
  }
}
