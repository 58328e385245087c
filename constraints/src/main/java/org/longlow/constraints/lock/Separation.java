package org.longlow.constraints.lock;

/**
 * The distance of two convex bodies in space (Gilbert, Johnson and Keerthi 1988). What is answered
 * is never more than the true distance: of every plane tried, how far it keeps the two apart is
 * kept, whichever way it was come by (van den Bergen 2004, section 4.3). For one thread.
 */
final class Separation {

  /** What is answered is less than the true distance by no more than this, mm. */
  static final double BOUND_MM = 0.01;

  /** What is nearer than this is in the same place, mm. */
  private static final double LEAST_MM = 1e-9;

  private static final int MOST_STEPS = 60;

  private final Simplex simplex = new Simplex();
  private final double[] v = new double[3];
  private final double[] w = new double[3];
  private final double[] minus = new double[3];
  private final double[] onA = new double[3];
  private final double[] onB = new double[3];
  private double kept;

  /** Begins with a direction, from the second body to the first, such as that of their middles. */
  void begin(double dx, double dy, double dz) {
    v[0] = dx;
    v[1] = dy;
    v[2] = dz;
  }

  /**
   * Returns a distance that the two keep, mm; 0 where they touch or are in each other, and some
   * figure of at least the cut where they keep that.
   *
   * <p>Begins with the direction that the last pair was left with, which is near where a body has
   * moved a little.
   *
   * @param cutMm nothing beyond this matters, mm, &gt; 0
   */
  double mm(Convex a, Convex b, double cutMm) {
    kept = 0;
    search(a, b, cutMm, 0, null);
    return kept;
  }

  /**
   * Returns whether some plane keeps the two so far apart that they stay {@code cutMm} apart while
   * the first turns about an axis by so little that no point of it goes farther than {@code
   * mostMm}: towards the plane it goes only that much of it as the plane's direction is square to
   * the axis.
   */
  boolean keeps(Convex a, Convex b, double cutMm, double mostMm, SteeringAxis axis) {
    kept = 0;
    return search(a, b, cutMm, mostMm, axis);
  }

  /** Returns whether a plane was found that keeps the cut; what planes keep is kept. */
  private boolean search(Convex a, Convex b, double cutMm, double mostMm, SteeringAxis axis) {
    simplex.clear();
    if (Math.abs(v[0]) + Math.abs(v[1]) + Math.abs(v[2]) < 1000 * LEAST_MM) {
      v[0] = 1; // any direction will do to begin with
    }
    double before = Double.POSITIVE_INFINITY;
    for (int step = 0; step < MOST_STEPS; step++) {
      double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
      if (length < LEAST_MM) {
        kept = 0;
        return false;
      }
      for (int k = 0; k < 3; k++) {
        minus[k] = -v[k];
      }
      a.farthest(minus, onA);
      b.farthest(v, onB);
      double on = 0;
      for (int k = 0; k < 3; k++) {
        w[k] = onA[k] - onB[k];
        on += v[k] * w[k];
      }
      kept = Math.max(kept, on / length);
      double turned = axis == null ? kept : (on - mostMm * squareTo(axis)) / length;
      if (turned >= cutMm) {
        return true;
      }
      boolean inHull = simplex.size() > 0;
      if (inHull && (length - kept <= BOUND_MM || length >= before)) {
        return false;
      }
      before = inHull ? length : before;
      simplex.add(w, onB);
      if (!simplex.nearest(v)) {
        kept = 0;
        return false;
      }
    }
    return false;
  }

  /** How much of the direction tried is square to an axis, mm. */
  private double squareTo(SteeringAxis axis) {
    double ahead = v[0] * axis.up().z() - v[2] * axis.up().x();
    return Math.sqrt(ahead * ahead + v[1] * v[1]);
  }

  /**
   * Returns how far the plane come to last keeps the second body from the first while that turns,
   * mm. A direction that turns stays between where it begins, where it ends, and where the tangents
   * there meet; how far a body reaches is convex in the direction, so that of these three most is
   * the bound.
   */
  double keptOver(Turned a, Convex b, double middleRad, double halfRad) {
    double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    if (length < LEAST_MM || halfRad >= Math.PI / 4) {
      return 0;
    }
    for (int k = 0; k < 3; k++) {
      minus[k] = -v[k];
    }
    a.turn(middleRad - halfRad);
    double most = a.reach(minus, 1);
    a.turn(middleRad + halfRad);
    most = Math.max(most, a.reach(minus, 1));
    a.turn(middleRad);
    most = Math.max(most, a.reach(minus, 1 / Math.cos(halfRad)));
    b.farthest(v, onB);
    return -(most + v[0] * onB[0] + v[1] * onB[1] + v[2] * onB[2]) / length;
  }

  /** Puts the point of the second body that was nearest into {@code out}. */
  void onSecond(double[] out) {
    simplex.itsOwn(out);
  }
}
