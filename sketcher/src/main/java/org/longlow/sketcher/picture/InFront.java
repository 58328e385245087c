package org.longlow.sketcher.picture;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Separation;

/**
 * Which of two convex bodies stands before the other where their pictures overlap. Of two that are
 * apart a plane between them tells, for every line of sight crosses it once; of two that are in
 * each other, what is nearer in the middle of what both cover. For one thread.
 */
final class InFront {

  /** Bodies nearer than this are in each other, mm; as near as {@link Separation} tells. */
  private static final double APART_MM = 2 * Separation.BOUND_MM;

  /** A plane leans away from the line of sight by more than this, or it tells nothing. */
  private static final double TELLS = 1e-6;

  /** Nothing farther than this is looked at, mm. */
  private static final double FAR_MM = 1e6;

  private static final int MOST_STEPS = 40;

  private final Separation separation = new Separation();
  private final double[] way = new double[3];

  /** Returns whether the first hides the second where their pictures overlap. */
  boolean hides(Shadow first, Shadow second) {
    if (first.farMm() >= second.nearMm()) {
      return true;
    }
    if (second.farMm() >= first.nearMm()) {
      return false;
    }
    separation.begin(
        first.box().centre().getX() - second.box().centre().getX(),
        first.box().centre().getY() - second.box().centre().getY(),
        first.nearMm() + first.farMm() - second.nearMm() - second.farMm());
    if (separation.mm(first.body(), second.body(), FAR_MM) > APART_MM) {
      separation.direction(way);
      double length = Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]);
      if (Math.abs(way[2]) > TELLS * length) {
        return way[2] > 0;
      }
    }
    Geometry both = first.area().intersection(second.area());
    if (both.isEmpty()) {
      return false;
    }
    Coordinate at = both.getInteriorPoint().getCoordinate();
    return near(first, at) > near(second, at);
  }

  /** Returns how near to the viewer a body is at a place of the page, mm. */
  private double near(Shadow shadow, Coordinate at) {
    double near = shadow.nearMm() + 1;
    for (int step = 0; step < MOST_STEPS; step++) {
      double mm = separation.mm(point(at, near), shadow.body(), FAR_MM);
      if (mm <= APART_MM) {
        return near;
      }
      separation.direction(way);
      double length = Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]);
      if (way[2] <= TELLS * length) {
        return near; // the line of sight only grazes it
      }
      near -= mm * length / way[2];
    }
    return near;
  }

  private static Convex point(Coordinate at, double near) {
    return (d, out) -> {
      out[0] = at.x;
      out[1] = at.y;
      out[2] = near;
    };
  }
}
