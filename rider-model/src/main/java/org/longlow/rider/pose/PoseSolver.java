package org.longlow.rider.pose;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * Puts a body's joints where seat, feet, hands and head want them.
 *
 * <p>Given the hip and the recline of the trunk, legs and arms are two-link chains in closed form
 * (see {@link TwoLink}), each in its own plane between joint and target in space (see {@link
 * LimbPlane}): knees stand out as far as {@link RiderWidth} has them, elbows hang. Their inputs may
 * be anything finite.
 */
public final class PoseSolver {

  /** Where hands rest on the thigh, from the hip over thigh length; judgement. */
  private static final double HANDS_ON_THIGH = 0.6;

  private PoseSolver() {}

  /**
   * Solves a posture.
   *
   * @param body who
   * @param hip hip joint, mm
   * @param reclineRad hip-shoulder line from the vertical, rearward positive, rad, finite
   * @param head what the head does
   * @param foot where the feet are
   * @param hand where the hands are
   * @param width where knees, feet and hands are sideways
   */
  public static PoseResult solve(
      Body body,
      PointMm hip,
      double reclineRad,
      HeadTarget head,
      FootContact foot,
      HandContact hand,
      RiderWidth width) {
    if (!Double.isFinite(reclineRad)) {
      throw new OutOfRange("reclineRad must be finite, got " + reclineRad);
    }
    Neck neck = Neck.of(body, hip, reclineRad);
    LegSolver.Leg leg = LegSolver.solve(body, hip, foot, width);
    ArmSolver.Arm arm =
        hand instanceof HandContact.Grip held
            ? ArmSolver.solve(body, neck.foot(), held.centre(), width.gripHalfMm())
            : onThigh(body, hip, neck.foot(), leg);
    Posture posture = posture(hip, neck, leg, arm, pitch(neck, head));
    List<PoseResult.Shortfall> out = new ArrayList<>(2);
    shortfall(out, PoseResult.Limb.LEG, leg.missMm());
    shortfall(out, PoseResult.Limb.ARM, arm.missMm());
    return out.isEmpty() ? new PoseResult.Reached(posture) : new PoseResult.Short(posture, out);
  }

  private static double pitch(Neck neck, HeadTarget head) {
    if (head instanceof HeadTarget.Pitch held) {
      return held.pitchRad();
    }
    if (head instanceof HeadTarget.OnRest rest) {
      double pitch = neck.pitchTouching(rest.surface(), rest.normal());
      if (!Double.isNaN(pitch)) {
        return pitch;
      }
    }
    return HeadSolver.gazePitch(neck.reclineRad());
  }

  private static ArmSolver.Arm onThigh(
      Body body, PointMm hip, PointMm shoulder, LegSolver.Leg leg) {
    PointMm thigh = leg.knee().minus(hip);
    double seen = thigh.length();
    double above = 0.5 * body.measures().get("thighclearance") / Math.max(seen, 1);
    PointMm at = hip.plus(thigh.times(HANDS_ON_THIGH)).plus(thigh.left().times(above));
    double out = body.hipHalfMm() + HANDS_ON_THIGH * (leg.kneeYMm() - body.hipHalfMm());
    return ArmSolver.solve(body, shoulder, at, out);
  }

  private static Posture posture(
      PointMm hip, Neck neck, LegSolver.Leg leg, ArmSolver.Arm arm, double pitch) {
    Body body = neck.body();
    Body.Head head = body.head();
    JointAngles angles = JointAngles.of(hip, neck.foot(), leg, arm, pitch);
    return new Posture(
        hip,
        neck.foot(),
        neck.base(pitch),
        neck.head(head.tragion(), pitch),
        neck.head(head.eye(), pitch),
        neck.head(head.vertex(), pitch),
        neck.head(head.centre(), pitch),
        leg.knee(),
        leg.ankle(),
        leg.heel(),
        leg.ball(),
        leg.toe(),
        arm.elbow(),
        arm.wrist(),
        arm.grip(),
        new JointOffsets(
            body.hipHalfMm(),
            leg.kneeYMm(),
            leg.ankleYMm(),
            leg.ballYMm(),
            body.shoulderHalfMm(),
            arm.elbowYMm(),
            arm.gripYMm()),
        SpineJoints.of(hip, neck, pitch, angles.trunkThigh()),
        angles);
  }

  private static void shortfall(
      List<PoseResult.Shortfall> out, PoseResult.Limb limb, double missMm) {
    if (Math.abs(missMm) > 1e-9) {
      out.add(
          new PoseResult.Shortfall(
              limb,
              missMm > 0 ? PoseResult.Side.TOO_FAR : PoseResult.Side.TOO_NEAR,
              Math.abs(missMm)));
    }
  }
}
