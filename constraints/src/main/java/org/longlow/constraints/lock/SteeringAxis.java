package org.longlow.constraints.lock;

import org.longlow.rider.geom.PointMm;

/**
 * An axis in the middle plane that things turn about. A turn to the left is positive: with the axis
 * pointing up, x goes towards y.
 *
 * @param at a point of it
 * @param up its direction, a unit vector
 */
public record SteeringAxis(PointMm at, PointMm up) {

  /** Pins nearer than this make no axis, mm. */
  private static final double LEAST_MM = 1;

  /** Returns whether two points are far enough apart to give an axis. */
  public static boolean isGivenBy(PointMm bottom, PointMm top) {
    return bottom.distance(top) >= LEAST_MM;
  }

  /** Returns the axis from its lower to its upper point. */
  public static SteeringAxis through(PointMm bottom, PointMm top) {
    PointMm along = top.minus(bottom);
    return new SteeringAxis(bottom, along.times(1 / along.length()));
  }

  /** Returns how far a point of the elevation is ahead of the axis, square to it, mm. */
  public double aheadMm(PointMm p) {
    return aheadMm(p.x(), p.z());
  }

  double aheadMm(double x, double z) {
    return (x - at.x()) * up.z() - (z - at.z()) * up.x();
  }

  /** Returns how far up the axis a point of the elevation is, mm from its lower point. */
  public double alongMm(PointMm p) {
    return alongMm(p.x(), p.z());
  }

  double alongMm(double x, double z) {
    return (x - at.x()) * up.x() + (z - at.z()) * up.z();
  }

  /** Returns the point of the elevation so far ahead of the axis and so far up it. */
  public PointMm point(double aheadMm, double alongMm) {
    return at.plus(new PointMm(up.z(), -up.x()).times(aheadMm)).plus(up.times(alongMm));
  }
}
