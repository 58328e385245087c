package org.longlow.rider.body;

import org.longlow.rider.geom.PointMm;

/**
 * The spine between hip and skull in segments, mm.
 *
 * <p>Pelvis, lumbar and thorax follow one another along the trunk line and add up to hip–shoulder
 * as measured; the neck begins where the thorax ends, at the height of the acromion, holds C7 and
 * ends in the joint of the skull. So an erect sitter is as high as the survey's. Where lumbar
 * begins and ends is no measurement of the survey; it only splits one.
 *
 * @param pelvisMm hip joint to L5/S1
 * @param lumbarMm L5/S1 to T12/L1
 * @param thoraxMm T12/L1 to the height of the acromion, about T3/T4
 * @param neckBase spine of C7 from the end of the thorax, erect
 * @param occiput joint of skull and neck from there, erect
 */
public record Spine(
    double pelvisMm, double lumbarMm, double thoraxMm, PointMm neckBase, PointMm occiput) {

  /** Hip to L5/S1 over hip–shoulder; from memory (some 100 mm in a mean man), not certain. */
  public static final double PELVIS_SHARE = 0.20;

  /** L5/S1 to T12/L1 over hip–shoulder; from memory (some 180 mm in a mean man), not certain. */
  public static final double LUMBAR_SHARE = 0.35;

  /** Joint of skull and neck behind the ear hole and below it, mm; from memory, not certain. */
  private static final PointMm OCCIPUT_FROM_TRAGION = new PointMm(-10, -25);

  static Spine of(double hipToShoulder, double hipToNeck, double neckBehind, PointMm tragion) {
    double pelvis = PELVIS_SHARE * hipToShoulder;
    double lumbar = LUMBAR_SHARE * hipToShoulder;
    PointMm neckBase = new PointMm(-neckBehind, hipToNeck - hipToShoulder);
    return new Spine(
        pelvis,
        lumbar,
        hipToShoulder - pelvis - lumbar,
        neckBase,
        neckBase.plus(tragion).plus(OCCIPUT_FROM_TRAGION));
  }

  /**
   * What of the trunk's mass each of its segments has, 1: Dempster 1955 as in Winter 2009, Table
   * 4.1 (pelvis 0.142, abdomen 0.139 and thorax 0.216 of the body, together 0.497; checked against
   * a text that quotes the table; elderly men).
   */
  public enum Part {
    PELVIS("pelvis", 0.142),
    LUMBAR("lumbar", 0.139),
    THORAX("thorax", 0.216);

    private static final double TRUNK = 0.497;

    private final String key;
    private final double ofBody;

    Part(String key, double ofBody) {
      this.key = key;
      this.ofBody = ofBody;
    }

    /** Returns the name used in files. */
    public String key() {
      return key;
    }

    /** Returns the mass over that of the trunk. */
    public double shareOfTrunk() {
      return ofBody / TRUNK;
    }
  }

  /** Returns the length of one of the trunk's segments, mm. */
  public double lengthMm(Part part) {
    return switch (part) {
      case PELVIS -> pelvisMm;
      case LUMBAR -> lumbarMm;
      case THORAX -> thoraxMm;
    };
  }

  /** Returns the neck's length from the end of the thorax past C7 to the skull, mm. */
  public double neckMm() {
    return neckBase.length() + occiput.distance(neckBase);
  }
}
