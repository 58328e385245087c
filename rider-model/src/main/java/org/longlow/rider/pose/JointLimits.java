package org.longlow.rider.pose;

import org.longlow.rider.body.Sex;

/**
 * Hard stops for a drawing tool, rad. Judgements built on clinical tables (Soucie et al. 2011,
 * Boone and Azen 1979, AAOS 1965, Barter et al. 1957; the tables themselves from memory): hip
 * flexion 0 to 120°, knee flexion 0 to 130°, dorsiflexion 20°, plantarflexion 45°, shoulder −50 to
 * 170°, elbow flexion 0 to 140°, neck ±45°.
 */
public final class JointLimits {

  /** Trunk-thigh, least: 180° − hip flexion 120°. */
  public static final double HIP_LOW = Math.toRadians(60);

  /** Trunk-thigh, greatest: a straight hip. */
  public static final double HIP_HIGH = Math.toRadians(180);

  /** Knee interior, least: 180° − flexion 130°. */
  public static final double KNEE_LOW = Math.toRadians(50);

  /** Knee interior, greatest: straight. */
  public static final double KNEE_HIGH = Math.toRadians(180);

  /** Shank to sole, least: 90° − dorsiflexion 20°. */
  public static final double ANKLE_LOW = Math.toRadians(70);

  /** Shank to sole, greatest: 90° + plantarflexion 45°. */
  public static final double ANKLE_HIGH = Math.toRadians(135);

  /** Upper arm behind the trunk line. */
  public static final double ARM_LOW = Math.toRadians(-50);

  /** Upper arm raised. */
  public static final double ARM_HIGH = Math.toRadians(170);

  /** Elbow interior, least: 180° − flexion 140°. */
  public static final double ELBOW_LOW = Math.toRadians(40);

  /** Elbow interior, greatest: straight. */
  public static final double ELBOW_HIGH = Math.toRadians(180);

  /** Neck flexion and extension, each way. */
  public static final double NECK = Math.toRadians(45);

  /** How far to stay clear of the hamstring line for comfort (judgement, 15 to 20°). */
  public static final double HAMSTRING_CLEAR = Math.toRadians(15);

  private static final double HAMSTRING_SLOPE_MALE = 0.56;
  private static final double HAMSTRING_SLOPE_FEMALE = 0.49;

  private JointLimits() {}

  /**
   * Returns the least trunk-thigh angle that the hamstrings allow at a knee angle, rad.
   *
   * <p>Greatest hip flexion = 68.5° + 0.56 knee flexion (men), 76.3° + 0.49 knee flexion (women),
   * never above 120°: a straight line (judgement) through the means of straight-leg raise and knee
   * extension at 90° of hip flexion, Youdas et al. 2005, JOSPT 35:246-252, 106 men and 108 women,
   * aged 20 to 79. End of range with the pelvis held, average person; a slumped pelvis hides it.
   *
   * @param kneeRad interior knee angle, rad
   */
  public static double hamstringTrunkThigh(Sex sex, double kneeRad) {
    double bend = Math.PI - Math.min(Math.PI, kneeRad);
    double flexion =
        sex == Sex.MALE
            ? Math.toRadians(68.5) + HAMSTRING_SLOPE_MALE * bend
            : Math.toRadians(76.3) + HAMSTRING_SLOPE_FEMALE * bend;
    return Math.PI - Math.min(Math.PI - HIP_LOW, flexion);
  }
}
