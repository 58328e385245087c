package org.longlow.rider.pose;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/** Pitch of the head, which turns as one piece about the neck base. */
public final class HeadSolver {

  private static final double SOFT_FLEXION = Math.toRadians(30);
  private static final double NOSE_UP = Math.toRadians(10);
  private static final double NOSE_DOWN = Math.toRadians(-15);

  private HeadSolver() {}

  /**
   * Returns the pitch of a free head that looks at the road: level while the neck stays within 30°
   * of flexion, then up to 10° nose up, then more flexion up to the stop at 45°, then nose up.
   *
   * <p>Judgement: neck flexion relative to the torso is about recline − 20° to recline − 10° in
   * deep recline, and the Frankfurt plane stays within 15° nose down to 10° nose up.
   *
   * @param reclineRad of the trunk, rad
   */
  public static double gazePitch(double reclineRad) {
    double flexion =
        reclineRad <= SOFT_FLEXION ? reclineRad : Math.max(SOFT_FLEXION, reclineRad - NOSE_UP);
    double stop = JointLimits.NECK;
    return reclineRad - Math.max(-stop, Math.min(stop, flexion));
  }

  /**
   * Returns the pitch at which the helmet touches a surface, or NaN if it cannot.
   *
   * <p>n·(C7 + R(pitch) c − s) = r, with c the skull's centre from the neck base, r its radius with
   * helmet: pitch = acos(q/|c|) − arg c + arg n.
   */
  public static double pitchTouching(Body body, PointMm neckBase, PointMm surface, PointMm normal) {
    PointMm c = body.head().centre();
    double q = body.head().radiusMm() - normal.dot(neckBase.minus(surface));
    double cos = q / c.length();
    if (!(Math.abs(cos) <= 1)) {
      return Double.NaN;
    }
    double pitch = Math.acos(cos) - c.angleRad() + normal.angleRad();
    return Math.IEEEremainder(pitch, 2 * Math.PI);
  }

  /** Returns the gap between helmet and surface at a pitch, mm; negative when pressed in. */
  public static double gapMm(
      Body body, PointMm neckBase, double pitchRad, PointMm surface, PointMm normal) {
    PointMm centre = neckBase.plus(body.head().centre().turned(pitchRad));
    return normal.dot(centre.minus(surface)) - body.head().radiusMm();
  }

  /** Returns whether the road is comfortably in view: 15° nose down to 10° nose up (judgement). */
  public static boolean roadInView(double pitchRad) {
    return pitchRad >= NOSE_DOWN - 1e-9 && pitchRad <= NOSE_UP + 1e-9;
  }
}
