package org.longlow.rider.pose;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/** Solves elbow and hand: from acromion to grip in space; the elbow hangs under that line. */
final class ArmSolver {

  private static final PointMm DOWN = new PointMm(0, -1);

  private ArmSolver() {}

  /**
   * An arm.
   *
   * @param elbowRad interior, true
   * @param elbowYMm middle plane to elbow
   * @param gripYMm middle plane to grip
   */
  record Arm(
      PointMm elbow,
      PointMm wrist,
      PointMm grip,
      double elbowYMm,
      double gripYMm,
      double elbowRad,
      double missMm) {}

  /**
   * Returns the arm that reaches for a grip.
   *
   * @param shoulder acromion
   * @param gripYMm middle plane to grip, mm
   */
  static Arm solve(Body body, PointMm shoulder, PointMm grip, double gripYMm) {
    LimbPlane plane = LimbPlane.between(shoulder, body.shoulderHalfMm(), grip, gripYMm, DOWN);
    TwoLink chain = TwoLink.in(plane, body.upperArmMm(), body.elbowToGripMm(), -1);
    PointMm wrist = chain.joint().towards(chain.end(), body.forearmMm() / body.elbowToGripMm());
    return new Arm(
        plane.point(chain.joint()),
        plane.point(wrist),
        plane.point(chain.end()),
        plane.yMm(chain.joint()),
        plane.yMm(chain.end()),
        Turns.at(chain.joint(), chain.end(), PointMm.ORIGIN),
        chain.missMm());
  }
}
