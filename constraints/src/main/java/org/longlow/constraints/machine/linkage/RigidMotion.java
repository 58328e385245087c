package org.longlow.constraints.machine.linkage;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * A turn about the origin followed by a shift: how a rigid section, or the whole machine, moves in
 * the elevation. Its sine and cosine are worked out once, for it moves many points. Immutable.
 */
public final class RigidMotion {

  /** The motion that moves nothing. */
  public static final RigidMotion NONE = new RigidMotion(0, PointMm.ORIGIN);

  private final double turnRad;
  private final PointMm ahead;
  private final PointMm shift;

  /**
   * @param turnRad counter-clockwise (nose up), rad
   * @param shift mm
   */
  public RigidMotion(double turnRad, PointMm shift) {
    this(turnRad, PointMm.unit(Values.finite("turn", turnRad)), shift);
  }

  private RigidMotion(double turnRad, PointMm ahead, PointMm shift) {
    if (shift == null) {
      throw new IllegalArgumentException("a motion needs a shift, (0, 0) for none");
    }
    this.turnRad = turnRad;
    this.ahead = ahead;
    this.shift = shift;
  }

  /** Returns a turn about a fixed point. */
  public static RigidMotion about(PointMm pivot, double turnRad) {
    return taking(pivot, pivot, turnRad);
  }

  /** Returns the motion that turns by an angle and takes {@code from} to {@code to}. */
  public static RigidMotion taking(PointMm from, PointMm to, double turnRad) {
    PointMm ahead = PointMm.unit(Values.finite("turn", turnRad));
    return new RigidMotion(turnRad, ahead, to.minus(from.turnedTo(ahead)));
  }

  public double turnRad() {
    return turnRad;
  }

  public PointMm shift() {
    return shift;
  }

  public PointMm apply(PointMm point) {
    return turn(point).plus(shift);
  }

  /** Returns a direction turned, not shifted. */
  public PointMm turn(PointMm direction) {
    return direction.turnedTo(ahead);
  }

  public RigidMotion inverse() {
    return new RigidMotion(-turnRad, shift.turned(-turnRad).times(-1));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RigidMotion m
        && Double.compare(m.turnRad, turnRad) == 0
        && m.shift.equals(shift);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(turnRad) + shift.hashCode();
  }

  @Override
  public String toString() {
    return "turn " + turnRad + " rad, then shift " + shift;
  }
}
