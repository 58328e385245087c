package org.longlow.rider.pose;

import java.util.List;
import org.longlow.rider.body.Sex;

/** Reads a posture against the bands. */
public final class Comfort {

  private static final double TURN = Math.PI;

  private Comfort() {}

  /** Returns every reading of a posture, the hamstring line last. */
  public static List<JointReading> read(JointAngles a, Sex sex) {
    String bands = ComfortBands.SOURCE;
    double hamstring = JointLimits.hamstringTrunkThigh(sex, a.knee());
    return List.of(
        JointReading.of(
            "recline",
            a.recline(),
            ComfortBands.RECLINE_LOW,
            ComfortBands.RECLINE_HIGH,
            -TURN / 2,
            TURN / 2,
            bands),
        JointReading.of(
            "trunkThigh",
            a.trunkThigh(),
            ComfortBands.TRUNK_THIGH_LOW,
            ComfortBands.TRUNK_THIGH_HIGH,
            JointLimits.HIP_LOW,
            JointLimits.HIP_HIGH,
            bands),
        JointReading.of(
            "knee",
            a.knee(),
            ComfortBands.KNEE_LOW,
            ComfortBands.KNEE_HIGH,
            JointLimits.KNEE_LOW,
            JointLimits.KNEE_HIGH,
            bands),
        JointReading.of(
            "shankSole",
            a.shankSole(),
            ComfortBands.ANKLE_LOW,
            ComfortBands.ANKLE_HIGH,
            JointLimits.ANKLE_LOW,
            JointLimits.ANKLE_HIGH,
            bands),
        JointReading.of(
            "arm",
            a.arm(),
            ComfortBands.ARM_LOW,
            ComfortBands.ARM_HIGH,
            JointLimits.ARM_LOW,
            JointLimits.ARM_HIGH,
            bands),
        JointReading.of(
            "elbow",
            a.elbow(),
            ComfortBands.ELBOW_LOW,
            ComfortBands.ELBOW_HIGH,
            JointLimits.ELBOW_LOW,
            JointLimits.ELBOW_HIGH,
            bands),
        JointReading.of(
            "neckFlexion",
            a.neckFlexion(),
            ComfortBands.NECK_LOW,
            ComfortBands.NECK_HIGH,
            -JointLimits.NECK,
            JointLimits.NECK,
            bands),
        JointReading.of(
            "headPitch",
            a.headPitch(),
            ComfortBands.HEAD_LOW,
            ComfortBands.HEAD_HIGH,
            -TURN / 2,
            TURN / 2,
            "judgement, no published source"),
        JointReading.of(
            "hamstring",
            a.trunkThigh(),
            hamstring + JointLimits.HAMSTRING_CLEAR,
            JointLimits.HIP_HIGH,
            hamstring,
            JointLimits.HIP_HIGH,
            "judgement, a straight line through the means of Youdas et al. 2005"));
  }

  /**
   * Returns the discomfort of a posture: Σ (e/13°)², e the stray outside each comfort band and
   * inside the hamstring clearance. Zero inside all bands, with a continuous gradient.
   */
  public static double cost(JointAngles angles, Sex sex) {
    double sum = 0;
    for (double stray : strays(angles, sex)) {
      sum += stray * stray;
    }
    return sum;
  }

  /**
   * Returns the strays whose squares add up to {@link #cost}, each over 13°, signed (positive above
   * the band): the residual form for least squares. Order: recline, trunkThigh, knee, shankSole,
   * arm, elbow, neckFlexion, headPitch, hamstring. d(stray)/d(angle) is 1/13° outside the band, 0
   * inside.
   */
  public static double[] strays(JointAngles a, Sex sex) {
    double clear = JointLimits.hamstringTrunkThigh(sex, a.knee()) + JointLimits.HAMSTRING_CLEAR;
    return new double[] {
      stray(a.recline(), ComfortBands.RECLINE_LOW, ComfortBands.RECLINE_HIGH),
      stray(a.trunkThigh(), ComfortBands.TRUNK_THIGH_LOW, ComfortBands.TRUNK_THIGH_HIGH),
      stray(a.knee(), ComfortBands.KNEE_LOW, ComfortBands.KNEE_HIGH),
      stray(a.shankSole(), ComfortBands.ANKLE_LOW, ComfortBands.ANKLE_HIGH),
      stray(a.arm(), ComfortBands.ARM_LOW, ComfortBands.ARM_HIGH),
      stray(a.elbow(), ComfortBands.ELBOW_LOW, ComfortBands.ELBOW_HIGH),
      stray(a.neckFlexion(), ComfortBands.NECK_LOW, ComfortBands.NECK_HIGH),
      stray(a.headPitch(), ComfortBands.HEAD_LOW, ComfortBands.HEAD_HIGH),
      stray(a.trunkThigh(), clear, 2 * TURN)
    };
  }

  private static double stray(double value, double low, double high) {
    return (value < low ? value - low : value > high ? value - high : 0) / ComfortBands.SPREAD;
  }
}
