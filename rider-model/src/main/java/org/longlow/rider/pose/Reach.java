package org.longlow.rider.pose;

import org.longlow.rider.body.Body;

/** How far limbs reach, mm. */
public final class Reach {

  private Reach() {}

  /** How well a foot stands on the ground. */
  public enum Footing {
    /** Whole sole down. */
    FLAT,
    /** Ball down, heel up. */
    BALL,
    /** Not at all. */
    NONE
  }

  /**
   * A foot put down beside the machine.
   *
   * @param footing how well
   * @param flatMarginMm leg length to spare for a flat foot, mm; negative when the heel must rise
   * @param ballMarginMm the same for the ball of the foot with the ankle pointed
   */
  public record GroundFoot(Footing footing, double flatMarginMm, double ballMarginMm) {}

  /**
   * Returns how a foot reaches the ground straight beside the hip.
   *
   * <p>The straight leg spans √(h² + y²) to the ankle axis, h its height difference and y its
   * distance sideways. The ball is reached with the ankle pointed to its stop. A leg over a wide
   * seat cannot hang straight, so y must count the seat's half width.
   *
   * @param hipHeightMm hip joint above the ground, mm
   * @param sidewaysMm from the hip joint sideways to the standing foot, mm
   */
  public static GroundFoot ground(Body body, double hipHeightMm, double sidewaysMm) {
    double leg = body.thighMm() + body.shankMm();
    Body.Foot foot = body.foot();
    double flat = leg - Math.hypot(hipHeightMm - foot.ankle().z(), sidewaysMm);
    double point = JointLimits.ANKLE_HIGH - Math.PI / 2;
    double ahead = foot.ballMm() - foot.ankle().x();
    double ankleUp = foot.ankle().z() * Math.cos(point) + ahead * Math.sin(point);
    double ball = leg - Math.hypot(hipHeightMm - ankleUp, sidewaysMm);
    Footing footing = flat >= 0 ? Footing.FLAT : ball >= 0 ? Footing.BALL : Footing.NONE;
    return new GroundFoot(footing, flat, ball);
  }
}
