package org.longlow.rider.pose;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/**
 * A leg whose sole was turned to another slope while the hip stays: as on a pedal.
 *
 * @param shankSoleRad as {@link JointAngles} has it
 * @param kneeRad interior, true
 * @param missMm how far the leg is too short for it, mm; negative where it is too long, else 0
 */
public record FootTurned(double shankSoleRad, double kneeRad, double missMm) {

  /**
   * Returns the leg of somebody in a posture.
   *
   * @param heel where the heel's contact is
   * @param soleRad slope of the sole, toes up positive
   */
  public static FootTurned of(Body body, Posture posture, PointMm heel, double soleRad) {
    JointOffsets across = posture.across();
    RiderWidth width =
        new RiderWidth(across.kneeMm(), across.ankleMm(), RiderWidth.DEFAULT.gripHalfMm());
    LegSolver.Leg leg = LegSolver.flat(body, posture.hip(), heel, soleRad, width);
    return new FootTurned(leg.shankSoleRad(), leg.kneeRad(), leg.missMm());
  }
}
