package org.longlow.constraints.solve.relation;

import java.util.List;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Relation;

/**
 * Relations between a point and a closed outline, mm.
 *
 * <p>The nearest leg decides, so derivatives jump where two legs are equally near; a solver step
 * may cross such a place but a layout does not come to rest on one unless it lies on a corner.
 */
public final class OutlineRelations {
  private OutlineRelations() {}

  /**
   * Room of a point inside a closed outline: its distance from the nearest edge, negative outside.
   *
   * @param ring at least 3 corners in either sense, not repeated at the end; the outline does not
   *     cross itself
   */
  public static Relation inside(Pt p, List<Pt> ring) {
    if (ring.size() < 3) {
      throw new IllegalArgumentException("an outline needs at least 3 corners, got " + ring.size());
    }
    Object[] inputs = new Object[ring.size() + 2];
    inputs[0] = p;
    for (int i = 0; i <= ring.size(); i++) {
      inputs[i + 1] = ring.get(i % ring.size());
    }
    int count = ring.size();
    return LocalRelation.of(
        (u, du) -> {
          double distance = nearestLeg(u, du, count);
          double wanted = contains(u, count) ? 1 : -1;
          double sign = distance < 0 ? -wanted : wanted;
          if (du != null) {
            for (int i = 0; i < u.length; i++) {
              du[i] *= sign;
            }
          }
          return sign * distance;
        },
        inputs);
  }

  private static double nearestLeg(double[] u, double[] du, int count) {
    int best = 0;
    double bestSquare = Double.POSITIVE_INFINITY;
    double bestShare = 0;
    double bestLean = 0;
    for (int i = 0; i < count; i++) {
      int a = 2 + 2 * i;
      double dx = u[a + 2] - u[a];
      double dz = u[a + 3] - u[a + 1];
      double px = u[0] - u[a];
      double pz = u[1] - u[a + 1];
      double square = dx * dx + dz * dz;
      double share = square > 0 ? (px * dx + pz * dz) / square : 0;
      double clamped = Math.min(1, Math.max(0, share));
      double ex = px - clamped * dx;
      double ez = pz - clamped * dz;
      double distance = ex * ex + ez * ez;
      // Of two legs that meet at the nearest corner, the one that the point is more square to tells
      // the side.
      double lean = square > 0 ? Math.abs(dx * pz - dz * px) / Math.sqrt(square) : 0;
      boolean same = Math.abs(distance - bestSquare) <= 1e-12 * (distance + bestSquare);
      if (same ? lean > bestLean : distance < bestSquare) {
        best = i;
        bestSquare = distance;
        bestShare = share;
        bestLean = lean;
      }
    }
    int a = 2 + 2 * best;
    if (du != null) {
      java.util.Arrays.fill(du, 0);
    }
    double[] v = {u[0], u[1], u[a], u[a + 1], u[a + 2], u[a + 3]};
    double[] dv = du == null ? null : new double[6];
    double line = Angles.leftOf(v, dv);
    if (bestShare >= 0 && bestShare <= 1) {
      if (du != null) {
        du[0] = dv[0];
        du[1] = dv[1];
        System.arraycopy(dv, 2, du, a, 4);
      }
      return line;
    }
    // Nearest to a corner: distance to it, on the side of the leg.
    int corner = bestShare < 0 ? a : a + 2;
    double sign = line < 0 ? -1 : 1;
    double dx = u[0] - u[corner];
    double dz = u[1] - u[corner + 1];
    double d = Math.hypot(dx, dz);
    if (du != null && d > 0) {
      du[0] = sign * dx / d;
      du[1] = sign * dz / d;
      du[corner] = -du[0];
      du[corner + 1] = -du[1];
    }
    return sign * d;
  }

  /** Even-odd rule on the ring of legs. */
  private static boolean contains(double[] u, int count) {
    boolean in = false;
    for (int i = 0; i < count; i++) {
      int a = 2 + 2 * i;
      boolean above = u[a + 1] > u[1];
      boolean aboveNext = u[a + 3] > u[1];
      if (above != aboveNext
          && u[0] < u[a] + (u[a + 2] - u[a]) * (u[1] - u[a + 1]) / (u[a + 3] - u[a + 1])) {
        in = !in;
      }
    }
    return in;
  }
}
