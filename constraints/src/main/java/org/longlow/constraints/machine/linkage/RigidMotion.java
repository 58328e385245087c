package org.longlow.constraints.machine.linkage;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * A turn about the origin followed by a shift: how a rigid section, or the whole machine, moves in
 * the elevation.
 *
 * @param turnRad counter-clockwise (nose up), rad
 * @param shift mm
 */
public record RigidMotion(double turnRad, PointMm shift) {

  /** The motion that moves nothing. */
  public static final RigidMotion NONE = new RigidMotion(0, PointMm.ORIGIN);

  public RigidMotion {
    Values.finite("turn", turnRad);
    if (shift == null) {
      throw new IllegalArgumentException("a motion needs a shift, (0, 0) for none");
    }
  }

  /** Returns a turn about a fixed point. */
  public static RigidMotion about(PointMm pivot, double turnRad) {
    return new RigidMotion(turnRad, pivot.minus(pivot.turned(turnRad)));
  }

  /** Returns the motion that turns by an angle and takes {@code from} to {@code to}. */
  public static RigidMotion taking(PointMm from, PointMm to, double turnRad) {
    return new RigidMotion(turnRad, to.minus(from.turned(turnRad)));
  }

  public PointMm apply(PointMm point) {
    return point.turned(turnRad).plus(shift);
  }

  /** Returns a direction turned, not shifted. */
  public PointMm turn(PointMm direction) {
    return direction.turned(turnRad);
  }

  public RigidMotion inverse() {
    return new RigidMotion(-turnRad, shift.turned(-turnRad).times(-1));
  }
}
