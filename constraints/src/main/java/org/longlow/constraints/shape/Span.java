package org.longlow.constraints.shape;

import org.longlow.rider.geom.PointMm;

/**
 * One smooth edge of an outline: a centripetal Catmull-Rom curve (Barry and Goldman 1988; Yuksel,
 * Schaefer and Keyser 2011).
 *
 * @param before the vertex before it, or null where the edge starts at a corner
 * @param from where it starts
 * @param to where it ends
 * @param after the vertex after it, or null where it ends at a corner
 */
public record Span(PointMm before, PointMm from, PointMm to, PointMm after) {

  /** Shortest knot interval, mm: vertices in one place make no curve. */
  private static final double LEAST_MM = 1e-9;

  /** Returns how many straight pieces keep within {@code flatnessMm} of it. */
  public int pieces(double flatnessMm) {
    double turn = turn(first(), from, to) + turn(from, to, last());
    double length = from.distance(to);
    // sagitta of a chord of an arc: length·turn/(8·n²) per piece
    return (int) Math.min(64, Math.max(2, Math.ceil(Math.sqrt(length * turn / (8 * flatnessMm)))));
  }

  /**
   * Returns a point of it.
   *
   * @param share 0 at its start, 1 at its end
   */
  public PointMm at(double share) {
    PointMm p0 = first();
    PointMm p3 = last();
    double t1 = Math.sqrt(Math.max(p0.distance(from), LEAST_MM));
    double t2 = t1 + Math.sqrt(Math.max(from.distance(to), LEAST_MM));
    double t3 = t2 + Math.sqrt(Math.max(to.distance(p3), LEAST_MM));
    double t = t1 + (t2 - t1) * share;
    PointMm a1 = mix(p0, from, 0, t1, t);
    PointMm a2 = mix(from, to, t1, t2, t);
    PointMm a3 = mix(to, p3, t2, t3, t);
    PointMm b1 = mix(a1, a2, 0, t2, t);
    PointMm b2 = mix(a2, a3, t1, t3, t);
    return mix(b1, b2, t1, t2, t);
  }

  private PointMm first() {
    return before != null ? before : from.plus(from.minus(to));
  }

  private PointMm last() {
    return after != null ? after : to.plus(to.minus(from));
  }

  private static double turn(PointMm a, PointMm b, PointMm c) {
    PointMm u = b.minus(a);
    PointMm v = c.minus(b);
    return Math.abs(Math.atan2(u.cross(v), u.dot(v)));
  }

  private static PointMm mix(PointMm a, PointMm b, double ta, double tb, double t) {
    return a.towards(b, (t - ta) / (tb - ta));
  }
}
