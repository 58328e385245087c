package org.longlow.constraints.check.person;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.HeadTarget;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.PoseSolver;
import org.longlow.rider.pose.RiderWidth;

/** Bodies beside the machine and over it: how they stand, where hands hang, how broad they are. */
final class BodyPose {

  /** Knees of somebody who stands are not pressed through: leg over its links; judgement. */
  private static final double STANDING = 0.99;

  /** How far an arm hangs, over its links; judgement. */
  private static final double HANGING = 0.95;

  private static final double MOST_ACROSS_MM = 800;

  private BodyPose() {}

  static double standingMm(Body body) {
    return body.foot().ankle().z() + STANDING * (body.thighMm() + body.shankMm());
  }

  static FootContact flat(Body body, PointMm heel, double soleRad) {
    return new FootContact.Footboard(
        heel, heel.plus(PointMm.unit(soleRad).times(body.foot().ballMm())));
  }

  static HandContact hanging(Body body, PointMm hip, double recline) {
    PointMm shoulder = hip.plus(PointMm.unit(Math.PI / 2 + recline).times(body.hipToShoulderMm()));
    double arm = HANGING * (body.upperArmMm() + body.elbowToGripMm());
    return new HandContact.Grip(shoulder.plus(new PointMm(0.15 * arm, -0.97 * arm)));
  }

  static PoseResult pose(
      Body body,
      PointMm hip,
      double recline,
      FootContact foot,
      HandContact hand,
      RiderWidth width) {
    return PoseSolver.solve(body, hip, recline, new HeadTarget.Gaze(), foot, hand, width);
  }

  static RiderWidth width(Body body, double footMm, double splayMm, double handMm) {
    double foot = Math.min(MOST_ACROSS_MM, Math.abs(footMm));
    double knee = (body.hipHalfMm() + foot) / 2 + splayMm;
    return new RiderWidth(Math.min(600, knee), foot, Math.min(MOST_ACROSS_MM, Math.abs(handMm)));
  }
}
