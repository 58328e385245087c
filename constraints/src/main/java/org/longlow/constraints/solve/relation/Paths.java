package org.longlow.constraints.solve.relation;

import java.util.List;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;

/** Lengths of tubes, belts and chains as relations, mm. */
public final class Paths {
  private Paths() {}

  /**
   * Length of a bent tube along its centre line, less a length.
   *
   * <p>Legs between the corner points, less at each bend what the corner cuts: 2 R tan(turn / 2) of
   * leg is replaced by R turn of arc. Elementary geometry; turns stay below half a turn.
   *
   * @param corners at least 2 points, the ends included
   * @param bendRadius centre-line radius of every bend, mm, &gt;= 0
   */
  public static Relation tubeLength(List<Pt> corners, Quantity bendRadius, Quantity length) {
    int count = corners.size();
    if (count < 2) {
      throw new IllegalArgumentException("a tube needs at least 2 points, got " + count);
    }
    Object[] inputs = new Object[count + 2];
    for (int i = 0; i < count; i++) {
      inputs[i] = corners.get(i);
    }
    inputs[count] = bendRadius;
    inputs[count + 1] = length;
    return LocalRelation.of((u, du) -> tube(u, du, count), inputs);
  }

  private static double tube(double[] u, double[] du, int count) {
    double radius = u[2 * count];
    double sum = -u[2 * count + 1];
    double bends = 0;
    for (int i = 0; i + 1 < count; i++) {
      double dx = u[2 * i + 2] - u[2 * i];
      double dz = u[2 * i + 3] - u[2 * i + 1];
      double d = Math.hypot(dx, dz);
      sum += d;
      if (du != null && d > 0) {
        addTo(du, 2 * i, -dx / d, -dz / d);
        addTo(du, 2 * i + 2, dx / d, dz / d);
      }
    }
    for (int i = 1; i + 1 < count; i++) {
      double ex = u[2 * i] - u[2 * i - 2];
      double ez = u[2 * i + 1] - u[2 * i - 1];
      double fx = u[2 * i + 2] - u[2 * i];
      double fz = u[2 * i + 3] - u[2 * i + 1];
      double turn = Math.atan2(ex * fz - ez * fx, ex * fx + ez * fz);
      double half = Math.tan(Math.abs(turn) / 2);
      bends += Math.abs(turn) - 2 * half;
      if (du != null) {
        // d(turn - 2 tan(turn/2)) = -tan(turn/2)^2 d turn.
        double factor = -radius * half * half * Math.signum(turn);
        double e = ex * ex + ez * ez;
        double f = fx * fx + fz * fz;
        if (e > 0 && f > 0) {
          double inX = factor * ez / e;
          double inZ = -factor * ex / e;
          double outX = -factor * fz / f;
          double outZ = factor * fx / f;
          addTo(du, 2 * i - 2, -inX, -inZ);
          addTo(du, 2 * i, inX - outX, inZ - outZ);
          addTo(du, 2 * i + 2, outX, outZ);
        }
      }
    }
    if (du != null) {
      du[2 * count] = bends;
      du[2 * count + 1] = -1;
    }
    return sum + radius * bends;
  }

  private static void addTo(double[] du, int at, double x, double z) {
    du[at] += x;
    du[at + 1] += z;
  }

  /**
   * Length of an open belt round two wheels less a length: 2 C cos a + r1 (pi - 2 a) + r2 (pi + 2
   * a), sin a = (r2 - r1) / C (any machine-element text). Where one wheel swallows the other the
   * length is that round the larger.
   */
  public static Relation openBelt(Pt a, Quantity radiusA, Pt b, Quantity radiusB, Quantity length) {
    return LocalRelation.of(
        (u, du) -> {
          double dx = u[3] - u[0];
          double dz = u[4] - u[1];
          double c = Math.hypot(dx, dz);
          double step = u[5] - u[2];
          double sine = c > Math.abs(step) ? step / c : Math.signum(step);
          double angle = Math.asin(sine);
          double cos = Math.sqrt(Math.max(0, 1 - sine * sine));
          double wrapA = Math.PI - 2 * angle;
          double wrapB = Math.PI + 2 * angle;
          if (du != null) {
            // A taut belt is as short as it can be, so to first order only the free ends'
            // directions count.
            double gx = c > 0 ? 2 * cos * dx / c : 0;
            double gz = c > 0 ? 2 * cos * dz / c : 0;
            du[0] = -gx;
            du[1] = -gz;
            du[2] = wrapA;
            du[3] = gx;
            du[4] = gz;
            du[5] = wrapB;
            du[6] = -1;
          }
          return 2 * c * cos + u[2] * wrapA + u[5] * wrapB - u[6];
        },
        a,
        radiusA,
        b,
        radiusB,
        length);
  }

  /**
   * Length of a roller chain round two sprockets less a number of links, mm.
   *
   * <p>Pitch polygon: 2 C cos a + pitch (z1 (pi - 2 a) + z2 (pi + 2 a)) / (2 pi) with sin a = (r2 -
   * r1) / C and pitch radius r = pitch / (2 sin(pi / z)) (as in ISO 606 annexes and machine-element
   * texts).
   *
   * @param pitchMm &gt; 0
   * @param teethA at least 3
   * @param teethB at least 3
   * @param links number of links
   */
  public static Relation chain(Pt a, int teethA, Pt b, int teethB, double pitchMm, Quantity links) {
    if (teethA < 3 || teethB < 3 || !(pitchMm > 0)) {
      throw new IllegalArgumentException(
          "a chain needs sprockets of 3 teeth or more and a pitch > 0 mm, got "
              + teethA
              + ", "
              + teethB
              + " and "
              + pitchMm);
    }
    double step = pitchMm / 2 * (1 / Math.sin(Math.PI / teethB) - 1 / Math.sin(Math.PI / teethA));
    return LocalRelation.of(
        (u, du) -> {
          double dx = u[2] - u[0];
          double dz = u[3] - u[1];
          double c = Math.hypot(dx, dz);
          double sine = c > Math.abs(step) ? step / c : Math.signum(step);
          double angle = Math.asin(sine);
          double cos = Math.sqrt(Math.max(0, 1 - sine * sine));
          double wrapped =
              pitchMm
                  / (2 * Math.PI)
                  * (teethA * (Math.PI - 2 * angle) + teethB * (Math.PI + 2 * angle));
          if (du != null) {
            double byAngle = -2 * c * sine + pitchMm / Math.PI * (teethB - teethA);
            double byC = cos > 0 ? 2 * cos - byAngle * sine / (c * cos) : 0;
            double gx = c > 0 ? byC * dx / c : 0;
            double gz = c > 0 ? byC * dz / c : 0;
            du[0] = -gx;
            du[1] = -gz;
            du[2] = gx;
            du[3] = gz;
            du[4] = -pitchMm;
          }
          return 2 * c * cos + wrapped - pitchMm * u[4];
        },
        a,
        b,
        links);
  }

  /** A wheel that a belt runs round, with the wheel on the stated side of the running belt. */
  public record Wheel(Pt centre, Quantity radius, Circles.Side side) {}

  /**
   * Length of a closed belt round wheels in the order given, less a length.
   *
   * <p>Between two wheels the belt follows the common tangent that leaves each on its side; at each
   * wheel it wraps in the sense of that side by less than a full turn.
   *
   * @param wheels at least 2, none inside another
   */
  public static Relation belt(List<Wheel> wheels, Quantity length) {
    int count = wheels.size();
    if (count < 2) {
      throw new IllegalArgumentException("a belt needs at least 2 wheels, got " + count);
    }
    Object[] inputs = new Object[2 * count + 1];
    double[] side = new double[count];
    for (int i = 0; i < count; i++) {
      inputs[2 * i] = wheels.get(i).centre();
      inputs[2 * i + 1] = wheels.get(i).radius();
      side[i] = wheels.get(i).side() == Circles.Side.LEFT ? 1 : -1;
    }
    inputs[2 * count] = length;
    return LocalRelation.of((u, du) -> closedBelt(u, du, side), inputs);
  }

  private static double closedBelt(double[] u, double[] du, double[] side) {
    int count = side.length;
    double[] heading = new double[count];
    double sum = -u[3 * count];
    if (du != null) {
      java.util.Arrays.fill(du, 0);
      du[3 * count] = -1;
    }
    for (int i = 0; i < count; i++) {
      int j = (i + 1) % count;
      double dx = u[3 * j] - u[3 * i];
      double dz = u[3 * j + 1] - u[3 * i + 1];
      double d = Math.hypot(dx, dz);
      double across = side[j] * u[3 * j + 2] - side[i] * u[3 * i + 2];
      double sine = d > Math.abs(across) ? across / d : Math.signum(across);
      heading[i] = Math.atan2(dz, dx) - Math.asin(sine);
      sum += d * Math.sqrt(Math.max(0, 1 - sine * sine));
    }
    for (int i = 0; i < count; i++) {
      double in = heading[(i + count - 1) % count];
      double out = heading[i];
      double turn = side[i] * (out - in) % (2 * Math.PI);
      // A hair less than nothing is rounding, not a full turn.
      double wrap = turn < -1e-9 ? turn + 2 * Math.PI : turn;
      sum += u[3 * i + 2] * wrap;
      if (du != null) {
        du[3 * i] = Math.cos(in) - Math.cos(out);
        du[3 * i + 1] = Math.sin(in) - Math.sin(out);
        du[3 * i + 2] = wrap;
      }
    }
    return sum;
  }
}
