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
    double[] t = knots(share);
    PointMm a1 = mix(first(), from, 0, t[1], t[0]);
    PointMm a2 = mix(from, to, t[1], t[2], t[0]);
    PointMm a3 = mix(to, last(), t[2], t[3], t[0]);
    PointMm b1 = mix(a1, a2, 0, t[2], t[0]);
    PointMm b2 = mix(a2, a3, t[1], t[3], t[0]);
    return mix(b1, b2, t[1], t[2], t[0]);
  }

  /**
   * Returns a quantity along it that runs as smoothly as itself and stays between its two ends.
   *
   * @param before its value at the vertex before, not asked for where the edge starts at a corner
   * @param after likewise at the vertex after
   */
  double along(double share, double before, double from, double to, double after) {
    double[] t = knots(share);
    double width = t[2] - t[1];
    double straight = (to - from) / width;
    return Monotone.at(
        share,
        width,
        from,
        to,
        this.before == null ? straight : Monotone.slope((from - before) / t[1], straight),
        this.after == null ? straight : Monotone.slope(straight, (after - to) / (t[3] - t[2])));
  }

  /** The place of a share among the knots, and the second to the fourth of these. */
  private double[] knots(double share) {
    double t1 = Math.sqrt(Math.max(first().distance(from), LEAST_MM));
    double t2 = t1 + Math.sqrt(Math.max(from.distance(to), LEAST_MM));
    double t3 = t2 + Math.sqrt(Math.max(to.distance(last()), LEAST_MM));
    return new double[] {t1 + (t2 - t1) * share, t1, t2, t3};
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
