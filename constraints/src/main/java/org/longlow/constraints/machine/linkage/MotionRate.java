package org.longlow.constraints.machine.linkage;

import org.longlow.rider.geom.PointMm;

/**
 * How fast a rigid section moves at one place of its way, per share of the way.
 *
 * @param turnRad how fast it turns, counter-clockwise positive, rad for all the way
 * @param origin how fast its point at the origin of the elevation moves, mm for all the way
 */
public record MotionRate(double turnRad, PointMm origin) {

  /** Returns the rate of a section one point of which moves so. */
  static MotionRate of(double turnRad, PointMm at, PointMm velocity) {
    return new MotionRate(turnRad, velocity.minus(at.left().times(turnRad)));
  }

  /**
   * Returns how fast a point of the section moves, mm for all the way.
   *
   * @param now where it is now
   */
  public PointMm of(PointMm now) {
    return origin.plus(now.left().times(turnRad));
  }
}
