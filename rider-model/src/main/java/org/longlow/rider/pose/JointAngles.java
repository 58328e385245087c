package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/**
 * The angles of a posture, rad.
 *
 * <p>Knee and elbow are true angles, whatever leads outwards. Trunk-thigh and arm are seen from the
 * side, as flexion is measured; so is the ankle over a board, where the sole points straight ahead.
 * Zeros and signs:
 *
 * @param recline hip-to-shoulder line from the vertical, positive rearward, in (−π, π]
 * @param trunkThigh at the hip, between hip-shoulder and hip-knee, in [0, 2π); 180° is a straight
 *     hip
 * @param knee interior, between knee-hip and knee-ankle on the underside, in [0, 2π); 180° straight
 * @param shankSole between the shank and the sole (heel to ball), in [0, 2π); 90° with a flat sole
 *     under an upright shank, more with the toes pushed away (plantarflexion)
 * @param arm from the trunk line downwards to the upper arm, positive forward, in (−π, π]
 * @param elbow interior, in [0, 2π); 180° is a straight arm
 * @param neckFlexion head relative to trunk, positive nose towards the chest; recline − head pitch
 * @param headPitch Frankfurt plane from the horizontal, positive nose up
 */
public record JointAngles(
    double recline,
    double trunkThigh,
    double knee,
    double shankSole,
    double arm,
    double elbow,
    double neckFlexion,
    double headPitch) {

  /** Returns the angles of a trunk with its limbs. */
  static JointAngles of(
      PointMm hip, PointMm shoulder, LegSolver.Leg leg, ArmSolver.Arm arm, double headPitch) {
    PointMm trunk = shoulder.minus(hip);
    double recline = Math.atan2(-trunk.x(), trunk.z());
    return new JointAngles(
        recline,
        Turns.ccw(leg.knee().minus(hip), trunk),
        leg.kneeRad(),
        leg.shankSoleRad(),
        signed(Turns.ccw(hip.minus(shoulder), arm.elbow().minus(shoulder))),
        arm.elbowRad(),
        recline - headPitch,
        headPitch);
  }

  /** Returns how far the neck leans back from where it is erect, rad. */
  public double neckLean() {
    return Neck.leanRad(recline, headPitch);
  }

  private static double signed(double turn) {
    return turn > Math.PI ? turn - 2 * Math.PI : turn;
  }
}
