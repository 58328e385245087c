package org.longlow.rider.pose;

/**
 * One angle of a posture against its bands.
 *
 * @param name such as {@code knee}
 * @param valueRad the angle, rad
 * @param softBand comfort band
 * @param hardRange range of the joint
 * @param verdict where the angle lies
 * @param marginRad distance to the nearer edge of the comfort band: positive inside, negative
 *     outside
 * @param source where the bands come from
 */
public record JointReading(
    String name,
    double valueRad,
    Band softBand,
    Band hardRange,
    Verdict verdict,
    double marginRad,
    String source) {

  /** A closed interval, rad. */
  public record Band(double lowRad, double highRad) {
    double marginRad(double value) {
      return Math.min(value - lowRad, highRad - value);
    }
  }

  /** Where an angle lies. */
  public enum Verdict {
    COMFORTABLE,
    OUTSIDE_COMFORT,
    BEYOND_LIMIT
  }

  /** The hard stops are rounded to whole degrees; a limb at a stop may pass it by rounding only. */
  private static final double SLACK = 1e-9;

  /** Comfort bands are whole degrees and angles are said to a tenth; what reads as equal is. */
  private static final double COMFORT_SLACK = Math.toRadians(0.05);

  static JointReading of(
      String name,
      double value,
      double softLow,
      double softHigh,
      double hardLow,
      double hardHigh,
      String source) {
    Band soft = new Band(softLow, softHigh);
    Band hard = new Band(hardLow, hardHigh);
    double margin = soft.marginRad(value);
    Verdict verdict =
        hard.marginRad(value) < -SLACK
            ? Verdict.BEYOND_LIMIT
            : margin < -COMFORT_SLACK ? Verdict.OUTSIDE_COMFORT : Verdict.COMFORTABLE;
    return new JointReading(name, value, soft, hard, verdict, margin, source);
  }
}
