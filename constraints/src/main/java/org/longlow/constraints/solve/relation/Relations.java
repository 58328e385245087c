package org.longlow.constraints.solve.relation;

import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;

/**
 * Relations between points, lines and measures. Each gives mm and is zero when it holds.
 *
 * <p>A line is given by two points; its direction runs from the first to the second and its left is
 * a quarter turn anticlockwise from that. Used as the gap of a limit, the sign stated for each
 * matters.
 */
public final class Relations {
  /** Radius of the arc that stands for an angular error, mm. */
  public static final double ARC_RADIUS_MM = 1000;

  private Relations() {}

  /**
   * Distance between two points less a length &gt;= 0; a constant 0 makes a tie hold both
   * coordinates together.
   */
  public static Relation distance(Pt a, Pt b, Quantity length) {
    return DistanceRelation.of(a, b, length);
  }

  /** Distance between two points less a constant length, mm. */
  public static Relation distance(Pt a, Pt b, double lengthMm) {
    return distance(a, b, Quantity.of(lengthMm));
  }

  /** How far forward {@code b} is of {@code a}, less an offset. */
  public static Relation horizontal(Pt a, Pt b, Quantity offset) {
    return LocalRelation.difference(a.x(), b.x(), offset);
  }

  /** How far {@code b} is above {@code a}, less an offset. */
  public static Relation vertical(Pt a, Pt b, Quantity offset) {
    return LocalRelation.difference(a.z(), b.z(), offset);
  }

  /** Two points are one. */
  public static Relation[] coincide(Pt a, Pt b) {
    return LocalRelation.coincide(a, b);
  }

  /** A measure equals another: the value of {@code measure} less {@code value}, both in mm. */
  public static Relation equal(Quantity measure, Quantity value) {
    return LocalRelation.of(
        (u, du) -> {
          if (du != null) {
            du[0] = 1;
            du[1] = -1;
          }
          return u[0] - u[1];
        },
        measure,
        value);
  }

  /** A coordinate or measure keeps a value. */
  public static Relation fix(Quantity measure, double value) {
    return equal(measure, Quantity.of(value));
  }

  /** A point keeps its place. */
  public static Relation[] fix(Pt point, double xMm, double zMm) {
    return new Relation[] {fix(point.x(), xMm), fix(point.z(), zMm)};
  }

  /**
   * Direction of the line a-b less an angle from the horizontal, rad, anticlockwise positive; as
   * arc.
   */
  public static Relation angleToHorizontal(Pt a, Pt b, Quantity angle) {
    return LocalRelation.of(
        (u, du) -> {
          double cos = Math.cos(u[4]);
          double sin = Math.sin(u[4]);
          double dx = u[2] - u[0];
          double dz = u[3] - u[1];
          double turn = Math.atan2(cos * dz - sin * dx, cos * dx + sin * dz);
          if (du != null) {
            Angles.direction(dx, dz, ARC_RADIUS_MM, du, 0, 2);
            du[4] = -ARC_RADIUS_MM;
          }
          return ARC_RADIUS_MM * turn;
        },
        a,
        b,
        angle);
  }

  /**
   * Lean of the line a-b from the vertical less an angle, rad; as arc. Leaning back (towards -x as
   * it rises) is positive, as for rake measured up the steering axis.
   */
  public static Relation angleToVertical(Pt a, Pt b, Quantity angle) {
    return LocalRelation.of(
        (u, du) -> {
          double cos = Math.cos(u[4]);
          double sin = Math.sin(u[4]);
          // The vertical is a quarter turn; turn (dx, dz) back by that before comparing.
          double dx = u[2] - u[0];
          double dz = u[3] - u[1];
          double turn = Math.atan2(-cos * dx - sin * dz, cos * dz - sin * dx);
          if (du != null) {
            Angles.direction(dx, dz, ARC_RADIUS_MM, du, 0, 2);
            du[4] = -ARC_RADIUS_MM;
          }
          return ARC_RADIUS_MM * turn;
        },
        a,
        b,
        angle);
  }

  /** Turn from the line a-b to the line c-d, anticlockwise positive, less an angle, rad; as arc. */
  public static Relation angleBetween(Pt a, Pt b, Pt c, Pt d, Quantity angle) {
    return LocalRelation.of(
        (u, du) -> {
          double ex = u[2] - u[0];
          double ez = u[3] - u[1];
          double fx = u[6] - u[4];
          double fz = u[7] - u[5];
          double turn = Math.atan2(ex * fz - ez * fx, ex * fx + ez * fz);
          if (du != null) {
            Angles.direction(ex, ez, -ARC_RADIUS_MM, du, 0, 2);
            Angles.direction(fx, fz, ARC_RADIUS_MM, du, 4, 6);
            du[8] = -ARC_RADIUS_MM;
          }
          return ARC_RADIUS_MM * Angles.wrap(turn - u[8]);
        },
        a,
        b,
        c,
        d,
        angle);
  }

  /**
   * Two lines are parallel, either way round: the turn between them is 0 or half a turn; as arc.
   */
  public static Relation parallel(Pt a, Pt b, Pt c, Pt d) {
    return turnModuloHalf(a, b, c, d, 0);
  }

  /** Two lines are at right angles, either way round; as arc. */
  public static Relation perpendicular(Pt a, Pt b, Pt c, Pt d) {
    return turnModuloHalf(a, b, c, d, Math.PI / 2);
  }

  private static Relation turnModuloHalf(Pt a, Pt b, Pt c, Pt d, double target) {
    return LocalRelation.of(
        (u, du) -> {
          double ex = u[2] - u[0];
          double ez = u[3] - u[1];
          double fx = u[6] - u[4];
          double fz = u[7] - u[5];
          double turn = Math.atan2(ex * fz - ez * fx, ex * fx + ez * fz);
          if (du != null) {
            Angles.direction(ex, ez, -ARC_RADIUS_MM, du, 0, 2);
            Angles.direction(fx, fz, ARC_RADIUS_MM, du, 4, 6);
          }
          return ARC_RADIUS_MM * 0.5 * Angles.wrap(2 * (turn - target));
        },
        a,
        b,
        c,
        d);
  }

  /** Signed distance of a point from the line a-b, left positive, less an offset. */
  public static Relation pointToLine(Pt p, Pt a, Pt b, Quantity offset) {
    return LocalRelation.of(
        (u, du) -> {
          double value = Angles.leftOf(u, du);
          if (du != null) {
            du[6] = -1;
          }
          return value - u[6];
        },
        p,
        a,
        b,
        offset);
  }

  /** A point is on the line a-b. */
  public static Relation pointOnLine(Pt p, Pt a, Pt b) {
    return pointToLine(p, a, b, Quantity.of(0));
  }

  /** A point divides the line a-b: P = A + t (B - A). */
  public static Relation[] alongLine(Pt p, Pt a, Pt b, Quantity ratio) {
    return attached(p, a, b, ratio, Quantity.of(0));
  }

  /** A point is midway between two others. */
  public static Relation[] midpoint(Pt p, Pt a, Pt b) {
    return alongLine(p, a, b, Quantity.of(0.5));
  }

  /**
   * A point is attached to the frame of a-b: P = A + u (B - A) + v left(B - A), u and v as shares
   * of the length of a-b.
   */
  public static Relation[] attached(Pt p, Pt a, Pt b, Quantity along, Quantity left) {
    return new Relation[] {
      LocalRelation.of(
          (u, du) -> {
            double dx = u[3] - u[1];
            double dz = u[4] - u[2];
            if (du != null) {
              du[0] = 1;
              du[1] = u[5] - 1;
              du[2] = -u[6];
              du[3] = -u[5];
              du[4] = u[6];
              du[5] = -dx;
              du[6] = dz;
            }
            return u[0] - u[1] - u[5] * dx + u[6] * dz;
          },
          p.x(),
          a,
          b,
          along,
          left),
      LocalRelation.of(
          (u, du) -> {
            double dx = u[3] - u[1];
            double dz = u[4] - u[2];
            if (du != null) {
              du[0] = 1;
              du[1] = u[6];
              du[2] = u[5] - 1;
              du[3] = -u[6];
              du[4] = -u[5];
              du[5] = -dz;
              du[6] = -dx;
            }
            return u[0] - u[2] - u[5] * dz - u[6] * dx;
          },
          p.z(),
          a,
          b,
          along,
          left)
    };
  }

  /**
   * Two points are mirror images in the line a-b: their midpoint is on it and their join is square
   * to it.
   */
  public static Relation[] mirror(Pt p, Pt q, Pt a, Pt b) {
    return new Relation[] {
      LocalRelation.of(
          (u, du) -> {
            double[] v = {(u[0] + u[2]) / 2, (u[1] + u[3]) / 2, u[4], u[5], u[6], u[7]};
            if (du == null) {
              return Angles.leftOf(v, null);
            }
            double[] dv = new double[6];
            double value = Angles.leftOf(v, dv);
            du[0] = dv[0] / 2;
            du[1] = dv[1] / 2;
            du[2] = dv[0] / 2;
            du[3] = dv[1] / 2;
            System.arraycopy(dv, 2, du, 4, 4);
            return value;
          },
          p,
          q,
          a,
          b),
      LocalRelation.of(
          (u, du) -> {
            // Component of q - p along a-b.
            double dx = u[6] - u[4];
            double dz = u[7] - u[5];
            double d = Math.hypot(dx, dz);
            if (!(d > 0)) {
              return 0;
            }
            double cx = dx / d;
            double cz = dz / d;
            double px = u[2] - u[0];
            double pz = u[3] - u[1];
            if (du != null) {
              du[0] = -cx;
              du[1] = -cz;
              du[2] = cx;
              du[3] = cz;
              double across = (px * -cz + pz * cx) / d;
              du[4] = across * cz;
              du[5] = -across * cx;
              du[6] = -across * cz;
              du[7] = across * cx;
            }
            return px * cx + pz * cz;
          },
          p,
          q,
          a,
          b)
    };
  }

  /** Two lines are equally long: length of a-b less that of c-d. */
  public static Relation equalLength(Pt a, Pt b, Pt c, Pt d) {
    return LocalRelation.of(
        (u, du) -> {
          double ex = u[2] - u[0];
          double ez = u[3] - u[1];
          double fx = u[6] - u[4];
          double fz = u[7] - u[5];
          double e = Math.hypot(ex, ez);
          double f = Math.hypot(fx, fz);
          if (du != null) {
            double cx = e > 0 ? ex / e : 0;
            double cz = e > 0 ? ez / e : 0;
            double gx = f > 0 ? fx / f : 0;
            double gz = f > 0 ? fz / f : 0;
            du[0] = -cx;
            du[1] = -cz;
            du[2] = cx;
            du[3] = cz;
            du[4] = gx;
            du[5] = gz;
            du[6] = -gx;
            du[7] = -gz;
          }
          return e - f;
        },
        a,
        b,
        c,
        d);
  }

  /** The negative of a relation: turns "at least" into "at most" when used as a limit. */
  public static Relation negative(Relation relation) {
    return new Scaled(relation, -1);
  }

  /** A multiple of a relation. */
  public static Relation times(double factor, Relation relation) {
    return new Scaled(relation, factor);
  }
}
