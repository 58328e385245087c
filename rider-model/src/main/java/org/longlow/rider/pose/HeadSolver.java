package org.longlow.rider.pose;

/** Pitch of a free head. */
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
    double flexion = Math.max(Math.min(reclineRad, SOFT_FLEXION), reclineRad - NOSE_UP);
    double stop = JointLimits.NECK;
    return reclineRad - Math.max(-stop, Math.min(stop, flexion));
  }

  /** Returns whether the road is comfortably in view: 15° nose down to 10° nose up (judgement). */
  public static boolean roadInView(double pitchRad) {
    return pitchRad >= NOSE_DOWN - 1e-9 && pitchRad <= NOSE_UP + 1e-9;
  }
}
