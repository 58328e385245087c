package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/** Puts a machine whose wheels have moved in the body back on level ground. */
public final class GroundPlane {

  private GroundPlane() {}

  /**
   * Returns the motion of the body after which both tyres touch z = 0 and the rear contact is at x
   * = 0. The turn is the pitch, nose up positive.
   *
   * @param rearAxle rear axle in body axes
   * @param rearRadiusMm radius to the ground (loaded, if that is wanted), mm, &gt; 0
   * @param frontAxle front axle in body axes, ahead of the rear one
   * @param frontRadiusMm mm, &gt; 0
   */
  public static RigidMotion stand(
      PointMm rearAxle, double rearRadiusMm, PointMm frontAxle, double frontRadiusMm) {
    Values.positive("rear radius mm", rearRadiusMm);
    Values.positive("front radius mm", frontRadiusMm);
    PointMm base = frontAxle.minus(rearAxle);
    double baseMm = base.length();
    double grow = frontRadiusMm - rearRadiusMm;
    if (baseMm <= Math.abs(grow)) {
      throw Values.refused(
          "distance between axles mm", baseMm, "more than the difference of the radii");
    }
    double turn = Math.asin(grow / baseMm) - base.angleRad();
    return RigidMotion.taking(rearAxle, new PointMm(0, rearRadiusMm), turn);
  }
}
