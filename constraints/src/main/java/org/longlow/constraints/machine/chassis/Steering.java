package org.longlow.constraints.machine.chassis;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * Steering geometry of one state of the machine: trail, flop and head drop follow from three
 * figures.
 *
 * <p>Symbols and formulas as in Cossalter, Motorcycle Dynamics, ch. 1, and Meijaard et al. 2007.
 * English handbooks use "mechanical trail" for either trail, so both are named here in full.
 *
 * @param radiusMm front tyre radius, mm, &gt; 0
 * @param rakeRad steering axis from vertical, rad, positive when the top leans back, |rake| &lt; 85
 *     deg
 * @param offsetMm square distance from steering axis to axle, mm, positive when the axle is ahead
 */
public record Steering(double radiusMm, double rakeRad, double offsetMm) {

  private static final double STEEPEST_RAD = Math.toRadians(85);

  public Steering {
    Values.positive("front tyre radius mm", radiusMm);
    Values.withinRad("rake", rakeRad, -STEEPEST_RAD, STEEPEST_RAD);
    Values.finite("offset mm", offsetMm);
  }

  /** Returns the rake of an axis through two points, one above the other, rad. */
  public static double rakeRad(PointMm top, PointMm bottom) {
    return Math.atan2(bottom.x() - top.x(), top.z() - bottom.z());
  }

  /** Returns whether an axis of this rake is one to steer about. */
  public static boolean takes(double rakeRad) {
    return Math.abs(rakeRad) <= STEEPEST_RAD;
  }

  /**
   * Returns the steering of a front end given by coordinates, whatever its kind.
   *
   * @param axle wheel axle
   * @param axisPoint any point of the steering axis
   */
  public static Steering of(double radiusMm, double rakeRad, PointMm axle, PointMm axisPoint) {
    return new Steering(radiusMm, rakeRad, offsetMm(axle, axisPoint, rakeRad));
  }

  /**
   * Returns the offset of an axle from an axis through {@code axisPoint}: one line for telescopic,
   * raked yokes, leading link, trailing link and hub-centre front ends.
   */
  public static double offsetMm(PointMm axle, PointMm axisPoint, double rakeRad) {
    return (axle.x() - axisPoint.x()) * Math.cos(rakeRad)
        + (axle.z() - axisPoint.z()) * Math.sin(rakeRad);
  }

  /** Returns the distance from the front contact point square to the steering axis, mm. */
  public double normalTrailMm() {
    return radiusMm * Math.sin(rakeRad) - offsetMm;
  }

  /**
   * Returns the distance along the ground from the front contact point forward to the steering
   * axis, mm; positive when the axis meets the ground ahead of the contact.
   */
  public double groundTrailMm() {
    return radiusMm * Math.tan(rakeRad) - offsetMm / Math.cos(rakeRad);
  }

  /** Returns the wheel flop factor, ground trail × sin(rake) × cos(rake), mm. */
  public double flopMm() {
    return normalTrailMm() * Math.sin(rakeRad);
  }
}
