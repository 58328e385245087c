package org.longlow.rider.seat;

import org.longlow.rider.geom.PointMm;

/**
 * A force on a body in the elevation.
 *
 * @param at where it acts, mm
 * @param force x forward and z up, N (a pair of numbers, not a place)
 */
public record Push(PointMm at, PointMm force) {

  private static final double MM_PER_M = 1e3;

  /** Returns what it turns about a point, N m, positive from +x to +z: the nose of it up. */
  public double aboutNm(PointMm point) {
    return at.minus(point).cross(force) / MM_PER_M;
  }

  /** Returns what several turn about a point together, N m. */
  public static double aboutNm(PointMm point, Iterable<Push> pushes) {
    double sum = 0;
    for (Push push : pushes) {
      sum += push.aboutNm(point);
    }
    return sum;
  }
}
