package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/**
 * Where the spine's segments meet, mm in the elevation; the thorax ends at the height of the
 * acromion, where the elevation shows the shoulder.
 *
 * <p>Hip and shoulder are where recline and the survey's lengths have them; between them the spine
 * is a bow that opens as the back goes down. Its pelvis rolls back by {@link #PELVIS_SHARE} of what
 * the back reclines, so lumbar flexion falls, and is one line with the rest from {@link
 * #STRAIGHT_RAD} on. Links of a bow are up to 4 % longer than the segments that the survey's chord
 * is split into.
 *
 * @param lumbosacral L5/S1, between pelvis and lumbar
 * @param thoracolumbar T12/L1, between lumbar and thorax
 * @param occiput between neck and skull
 */
public record SpineJoints(PointMm lumbosacral, PointMm thoracolumbar, PointMm occiput) {

  /**
   * How much the pelvis rolls back as a seat's back reclines, 1: 6° for every 11° between backs of
   * 18 and 40° from the vertical, 24 men on hard seats (abstract of a study of pelvic inclination
   * in motor vehicle postures, checked; the paper was not seen). That it goes on so to {@link
   * #STRAIGHT_RAD} is a judgement.
   */
  static final double PELVIS_SHARE = 6.0 / 11;

  /**
   * Recline from which pelvis, lumbar and thorax are one line, rad; judgement: lumbar flexion falls
   * as recline grows (Reed, Ebert and Jones 2019, backs of 23 to 53°), its end was not seen.
   */
  static final double STRAIGHT_RAD = Math.toRadians(45);

  /** Less reclined than this nobody sits more bent; judgement. */
  static final double ERECT_RAD = Math.toRadians(10);

  /**
   * Of a trunk-thigh angle up to this the pelvis is rolled back as a sitter's is, rad; it is not
   * with a straight hip, in between in proportion. Judgement.
   */
  static final double SITTING_RAD = Math.toRadians(135);

  static SpineJoints of(PointMm hip, Neck neck, double pitchRad, double trunkThighRad) {
    double whole = neck.body().hipToShoulderMm();
    double pelvis = neck.body().spine().pelvisMm() / whole;
    double lumbar = neck.body().spine().lumbarMm() / whole;
    // of a parabola over the chord whose first link leans back as far as the pelvis does
    double sits = (Math.PI - trunkThighRad) / (Math.PI - SITTING_RAD);
    double rolled = Math.max(0, Math.min(1, sits)) * rolledRad(neck.reclineRad());
    double bow = Math.tan(rolled) / (1 - pelvis);
    return new SpineJoints(
        on(hip, neck.foot(), pelvis, bow),
        on(hip, neck.foot(), pelvis + lumbar, bow),
        neck.occiput(pitchRad));
  }

  private static PointMm on(PointMm hip, PointMm shoulder, double share, double bow) {
    PointMm chord = shoulder.minus(hip);
    return hip.plus(chord.times(share)).plus(chord.left().times(bow * share * (1 - share)));
  }

  /** Returns how far the pelvis leans back beyond the line from hip to shoulder, rad. */
  static double rolledRad(double reclineRad) {
    double least = Math.max(ERECT_RAD, Math.min(STRAIGHT_RAD, reclineRad));
    return (1 - PELVIS_SHARE) * (STRAIGHT_RAD - least);
  }
}
