package org.longlow.rider.effort;

import java.util.Locale;

/** Joints whose muscles hold something up, from head to foot. */
public enum Joint {
  NECK(Endurance.TRUNK),
  SHOULDER(Endurance.SHOULDER),
  ELBOW(Endurance.ELBOW),
  HIP(Endurance.TRUNK),
  KNEE(Endurance.KNEE),
  ANKLE(Endurance.ANKLE);

  /** A leg straighter than this counts as nearly straight, rad; judgement. */
  private static final double STRAIGHT = Math.toRadians(145);

  private final Endurance endurance;

  Joint(Endurance endurance) {
    this.endurance = endurance;
  }

  /** Returns its name in words, such as {@code neck}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns how long its muscles hold. */
  public Endurance endurance() {
    return endurance;
  }

  /**
   * Returns the muscles that hold against a torque on what hangs on this joint.
   *
   * @param loadNm positive from +x to +z, as {@link JointTorques} has it
   * @param kneeRad interior angle of the knee
   */
  public Strength against(double loadNm, double kneeRad) {
    boolean falls = loadNm < 0;
    return switch (this) {
      case NECK -> falls ? Strength.NECK_EXTENSION : Strength.NECK_FLEXION;
      case SHOULDER -> falls ? Strength.SHOULDER_FLEXION : Strength.SHOULDER_EXTENSION;
      case ELBOW -> falls ? Strength.ELBOW_FLEXION : Strength.ELBOW_EXTENSION;
      case HIP -> falls ? Strength.HIP_FLEXION : Strength.HIP_EXTENSION;
      case KNEE ->
          !falls
              ? Strength.KNEE_FLEXION
              : kneeRad > STRAIGHT ? Strength.KNEE_EXTENSION_STRAIGHT : Strength.KNEE_EXTENSION;
      case ANKLE -> falls ? Strength.ANKLE_DORSAL : Strength.ANKLE_PLANTAR;
    };
  }
}
