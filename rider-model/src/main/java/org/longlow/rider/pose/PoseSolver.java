package org.longlow.rider.pose;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * Puts a body's joints where seat, feet, hands and head want them.
 *
 * <p>Given the hip and the recline of the trunk, legs and arms are planar two-link chains in closed
 * form (see {@link TwoLink}); their inputs may be anything finite.
 */
public final class PoseSolver {

  private static final PointMm DOWN = new PointMm(0, -1);

  /** Where hands rest on the thigh, from the hip over thigh length; judgement. */
  private static final double HANDS_ON_THIGH = 0.6;

  private PoseSolver() {}

  /** Trunk points that follow from hip and recline alone. */
  public record Trunk(PointMm shoulder, PointMm neckBase) {

    /** Returns the trunk of a body. */
    public static Trunk of(Body body, PointMm hip, double reclineRad) {
      PointMm up = new PointMm(-Math.sin(reclineRad), Math.cos(reclineRad));
      return new Trunk(
          hip.plus(up.times(body.hipToShoulderMm())),
          hip.plus(up.times(body.hipToNeckMm())).plus(up.left().times(body.neckBehindMm())));
    }
  }

  /**
   * Solves a posture.
   *
   * @param body who
   * @param hip hip joint, mm
   * @param reclineRad hip-shoulder line from the vertical, rearward positive, rad, finite
   * @param head what the head does
   * @param foot where the feet are
   * @param hand where the hands are
   */
  public static PoseResult solve(
      Body body,
      PointMm hip,
      double reclineRad,
      HeadTarget head,
      FootContact foot,
      HandContact hand) {
    if (!Double.isFinite(reclineRad)) {
      throw new OutOfRange("reclineRad must be finite, got " + reclineRad);
    }
    Trunk trunk = Trunk.of(body, hip, reclineRad);
    LegSolver.Leg leg = LegSolver.solve(body, hip, foot);
    PointMm grip =
        hand instanceof HandContact.Grip held ? held.centre() : onThigh(body, hip, leg.knee());
    TwoLink arm =
        TwoLink.solve(trunk.shoulder(), body.upperArmMm(), body.elbowToGripMm(), grip, -1, DOWN);
    double pitch = pitch(body, trunk.neckBase(), reclineRad, head);
    Posture posture = posture(body, hip, trunk, leg, arm, pitch);
    List<PoseResult.Shortfall> out = new ArrayList<>(2);
    shortfall(out, PoseResult.Limb.LEG, leg.missMm());
    shortfall(out, PoseResult.Limb.ARM, arm.missMm());
    return out.isEmpty() ? new PoseResult.Reached(posture) : new PoseResult.Short(posture, out);
  }

  private static double pitch(Body body, PointMm neckBase, double recline, HeadTarget head) {
    if (head instanceof HeadTarget.Pitch held) {
      return held.pitchRad();
    }
    if (head instanceof HeadTarget.OnRest rest) {
      double pitch = HeadSolver.pitchTouching(body, neckBase, rest.surface(), rest.normal());
      if (!Double.isNaN(pitch)) {
        return pitch;
      }
    }
    return HeadSolver.gazePitch(recline);
  }

  private static PointMm onThigh(Body body, PointMm hip, PointMm knee) {
    PointMm u = knee.minus(hip).times(1 / body.thighMm());
    double above = 0.5 * body.measures().get("thighclearance");
    return hip.plus(u.times(HANDS_ON_THIGH * body.thighMm())).plus(u.left().times(above));
  }

  private static Posture posture(
      Body body, PointMm hip, Trunk trunk, LegSolver.Leg leg, TwoLink arm, double pitch) {
    PointMm neck = trunk.neckBase();
    Body.Head head = body.head();
    PointMm forearm = arm.end().minus(arm.joint());
    PointMm wrist = arm.joint().plus(forearm.times(body.forearmMm() / body.elbowToGripMm()));
    return new Posture(
        hip,
        trunk.shoulder(),
        neck,
        neck.plus(head.tragion().turned(pitch)),
        neck.plus(head.eye().turned(pitch)),
        neck.plus(head.vertex().turned(pitch)),
        neck.plus(head.centre().turned(pitch)),
        leg.knee(),
        leg.ankle(),
        leg.heel(),
        leg.ball(),
        leg.toe(),
        arm.joint(),
        wrist,
        arm.end(),
        JointAngles.of(
            hip,
            trunk.shoulder(),
            leg.knee(),
            leg.ankle(),
            leg.heel(),
            leg.ball(),
            arm.joint(),
            arm.end(),
            pitch));
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
