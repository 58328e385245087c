package org.longlow.constraints.machine.chassis;

import org.longlow.constraints.machine.Values;

/**
 * The circle on which a machine that stands upright turns at a walk. Its wheels roll without
 * slipping; that the contact of the front tyre moves as the trail swings, and lean, are left out.
 *
 * @param onGroundRad by how much the front wheel turns on the ground, rad
 * @param frontRadiusMm radius of the front wheel's circle, mm
 * @param rearRadiusMm radius of the rear wheel's circle, mm
 */
public record TurningCircle(double onGroundRad, double frontRadiusMm, double rearRadiusMm) {

  /** Returns whether a machine with this rake and lock turns on some circle. */
  public static boolean isThere(double rakeRad, double lockRad) {
    return lockRad > 0 && lockRad < Math.PI / 2 && Math.abs(rakeRad) < Math.PI / 2;
  }

  /**
   * Returns it.
   *
   * @param wheelbaseMm mm, &gt; 0
   * @param rakeRad the steering axis from the vertical, rad, between -π/2 and π/2
   * @param lockRad turn about the steering axis, rad, between 0 and π/2
   */
  public static TurningCircle of(double wheelbaseMm, double rakeRad, double lockRad) {
    Values.positive("wheelbase mm", wheelbaseMm);
    double ground = Math.atan(Math.tan(lockRad) * Math.cos(rakeRad));
    return new TurningCircle(
        ground, wheelbaseMm / Math.sin(ground), wheelbaseMm / Math.tan(ground));
  }
}
