package org.longlow.constraints.space;

import org.longlow.rider.geom.PointMm;

/**
 * The distance of two convex bodies in space (Gilbert, Johnson and Keerthi 1988). What is answered
 * is never more than the true distance: of every plane tried, how far it keeps the two apart is
 * kept, whichever way it was come by (van den Bergen 2004, section 4.3). For one thread.
 */
public final class Separation {

  /** What is answered is less than the true distance by no more than this, mm. */
  public static final double BOUND_MM = 0.01;

  /** What is nearer than this is in the same place, mm. */
  private static final double LEAST_MM = 1e-9;

  private static final int MOST_STEPS = 60;

  /** Where a gap itself is wanted it is found to within this, mm. */
  public static final double FINE_MM = 1e-6;

  private static final int MOST_FINE_STEPS = 300;

  private final double boundMm;
  private final int mostSteps;

  private final Simplex simplex = new Simplex();
  private final double[] v = new double[3];
  private final double[] w = new double[3];
  private final double[] minus = new double[3];
  private final double[] onA = new double[3];
  private final double[] onB = new double[3];
  private double kept;

  /** Finds distances to within {@link #BOUND_MM}. */
  public Separation() {
    this(BOUND_MM, MOST_STEPS);
  }

  private Separation(double boundMm, int mostSteps) {
    this.boundMm = boundMm;
    this.mostSteps = mostSteps;
  }

  /** Returns one that finds distances to within {@link #FINE_MM}. */
  public static Separation fine() {
    return new Separation(FINE_MM, MOST_FINE_STEPS);
  }

  /** Begins with a direction, from the second body to the first, such as that of their middles. */
  public void begin(double dx, double dy, double dz) {
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
  public double mm(Convex a, Convex b, double cutMm) {
    kept = 0;
    search(a, b, cutMm, 0, null);
    return kept;
  }

  /**
   * Returns whether some plane keeps the two so far apart that they stay {@code cutMm} apart while
   * the first turns about an axis by so little that no point of it goes farther than {@code
   * mostMm}: towards the plane it goes only that much of it as the plane's direction is square to
   * the axis.
   *
   * @param axis its direction in the elevation, a unit vector
   */
  public boolean keeps(Convex a, Convex b, double cutMm, double mostMm, PointMm axis) {
    kept = 0;
    return search(a, b, cutMm, mostMm, axis);
  }

  /** Returns whether a plane was found that keeps the cut; what planes keep is kept. */
  private boolean search(Convex a, Convex b, double cutMm, double mostMm, PointMm axis) {
    simplex.clear();
    if (Math.abs(v[0]) + Math.abs(v[1]) + Math.abs(v[2]) < 1000 * LEAST_MM) {
      v[0] = 1; // any direction will do to begin with
    }
    double before = Double.POSITIVE_INFINITY;
    for (int step = 0; step < mostSteps; step++) {
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
      if (inHull && (length - kept <= boundMm || length >= before)) {
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
  private double squareTo(PointMm axis) {
    double ahead = v[0] * axis.z() - v[2] * axis.x();
    return Math.sqrt(ahead * ahead + v[1] * v[1]);
  }

  /** Puts the middle between the nearest points of the two into {@code out}. */
  public void between(double[] out) {
    simplex.itsOwn(out);
    for (int k = 0; k < 3; k++) {
      out[k] += v[k] / 2;
    }
  }

  /** Puts the direction that it was left with into {@code out}, from the second to the first. */
  public void direction(double[] out) {
    System.arraycopy(v, 0, out, 0, 3);
  }

  /** Puts the point of the second body that was nearest into {@code out}. */
  public void onSecond(double[] out) {
    simplex.itsOwn(out);
  }
}
