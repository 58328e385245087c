package org.longlow.rider.pose;

/**
 * Soft bands of comfort, rad. All are judgements of this tool, built on car-driver figures (Rebiffé
 * 1969, Grandjean 1980, Porter and Gyi 1998, all from memory) and neutral-posture data
 * (NASA-STD-3000, from memory). Preferred angles do not depend on body size (Peng, Wang and
 * Denninger 2018), so one band serves everybody.
 */
public final class ComfortBands {

  /** Shown with every comfort figure. */
  public static final String CAUTION =
      "No published comfort set exists for reclined, feet-forward motorcyclists; these bands are"
          + " judgements built on car-driver and reclined-passenger data. Riders on one machine differ"
          + " by about 13 degrees either way, so try it in cardboard.";

  /** Source line for the bands, by which an angle is comfortable or not. */
  public static final String SOURCE = "bands of comfort are judgement";

  /** What the bands were drawn up from, and the limits beyond which an angle fails. */
  public static final String BUILT_ON =
      "after Rebiffe 1969, Grandjean 1980, Porter and Gyi 1998 (car drivers, quoted from memory);"
          + " joint limits after clinical tables quoted from memory";

  /**
   * How far riders on one machine stray, rad: ±13°, half of the 26° that span ±2 SD; Lundin et al.
   * 2024, Traffic Injury Prevention, 20 men on three machines. The unit of the comfort cost.
   */
  public static final double SPREAD = Math.toRadians(13);

  public static final double RECLINE_LOW = Math.toRadians(15);
  public static final double RECLINE_HIGH = Math.toRadians(40);
  public static final double TRUNK_THIGH_LOW = Math.toRadians(100);
  public static final double TRUNK_THIGH_HIGH = Math.toRadians(130);
  public static final double KNEE_LOW = Math.toRadians(110);
  public static final double KNEE_HIGH = Math.toRadians(155);
  public static final double ANKLE_LOW = Math.toRadians(85);
  public static final double ANKLE_HIGH = Math.toRadians(115);
  public static final double ARM_LOW = Math.toRadians(15);
  public static final double ARM_HIGH = Math.toRadians(60);
  public static final double ELBOW_LOW = Math.toRadians(100);
  public static final double ELBOW_HIGH = Math.toRadians(160);
  public static final double NECK_LOW = 0;
  public static final double NECK_HIGH = Math.toRadians(30);

  /** Frankfurt plane nose down; for the road, judgement. */
  public static final double HEAD_LOW = Math.toRadians(-15);

  /** Frankfurt plane nose up; for the road, judgement. */
  public static final double HEAD_HIGH = Math.toRadians(10);

  private ComfortBands() {}
}
