package org.longlow.constraints.solve.relation;

import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;

/** Relations with circles and arcs. Each gives mm; radii are &gt;= 0. */
public final class Circles {
  /** On which side of a line, seen along its direction. */
  public enum Side {
    LEFT,
    RIGHT
  }

  private Circles() {}

  /** A point is on a circle: its distance from the centre less the radius, negative inside. */
  public static Relation pointOnCircle(Pt p, Pt centre, Quantity radius) {
    return DistanceRelation.of(centre, p, radius);
  }

  /**
   * Room left to the ends of an arc, for use in a limit together with {@link #pointOnCircle}: half
   * the sweep less the angle from the middle of the arc, as arc at the radius; negative beyond an
   * end.
   *
   * @param start direction from the centre to the first end, rad
   * @param sweep angle of the arc anticlockwise from there, rad, in (0, 2 pi)
   * @param radiusMm of the arc, mm, &gt; 0
   */
  public static Relation withinArc(
      Pt p, Pt centre, Quantity start, Quantity sweep, double radiusMm) {
    return LocalRelation.of(
        (u, du) -> {
          double dx = u[0] - u[2];
          double dz = u[1] - u[3];
          double off = Angles.wrap(Math.atan2(dz, dx) - u[4] - u[5] / 2);
          if (du != null) {
            double sign = off < 0 ? -1 : 1;
            // Head is the point, tail the centre.
            Angles.direction(dx, dz, -sign * radiusMm, du, 2, 0);
            du[4] = sign * radiusMm;
            du[5] = radiusMm * (0.5 + 0.5 * sign);
          }
          return radiusMm * (u[5] / 2 - Math.abs(off));
        },
        p,
        centre,
        start,
        sweep);
  }

  /** A line touches a circle that lies on the stated side of it. */
  public static Relation tangentLine(Pt centre, Quantity radius, Pt a, Pt b, Side side) {
    double sign = side == Side.LEFT ? 1 : -1;
    return LocalRelation.of(
        (u, du) -> {
          double value = Angles.leftOf(u, du);
          if (du != null) {
            for (int i = 0; i < 6; i++) {
              du[i] *= sign;
            }
            du[6] = -1;
          }
          return sign * value - u[6];
        },
        centre,
        a,
        b,
        radius);
  }

  /** Two circles touch from outside; as the gap of a limit, room between them. */
  public static Relation tangentOutside(Pt a, Quantity radiusA, Pt b, Quantity radiusB) {
    return centresApart(a, radiusA, b, radiusB, 1);
  }

  /**
   * The second circle touches the first from inside: centre distance less the difference of radii.
   */
  public static Relation tangentInside(
      Pt outer, Quantity radiusOuter, Pt inner, Quantity radiusInner) {
    return centresApart(outer, radiusOuter, inner, radiusInner, -1);
  }

  private static Relation centresApart(
      Pt a, Quantity radiusA, Pt b, Quantity radiusB, double sign) {
    return LocalRelation.of(
        (u, du) -> {
          double dx = u[3] - u[0];
          double dz = u[4] - u[1];
          double d = Math.hypot(dx, dz);
          if (du != null) {
            double cx = d > 0 ? dx / d : 0;
            double cz = d > 0 ? dz / d : 0;
            du[0] = -cx;
            du[1] = -cz;
            du[2] = -1;
            du[3] = cx;
            du[4] = cz;
            du[5] = -sign;
          }
          return d - u[2] - sign * u[5];
        },
        a,
        radiusA,
        b,
        radiusB);
  }
}
