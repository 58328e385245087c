package org.longlow.constraints.check.person;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.FootTurned;
import org.longlow.rider.pose.Posture;

/**
 * A foot on a pedal through its travel, turned about what it rests on while the hip stays.
 *
 * @param rest where the sole rests: its heel on a board, else where it meets the peg
 * @param soleMm from the heel along the sole to there
 * @param padMm from the heel along the sole to the pedal; negative behind the heel
 * @param leastRad least angle of shank and sole on the way
 * @param mostRad greatest
 * @param turnRad how far the foot turns on the way
 * @param missMm how far the leg is too short on the way, mm, or 0
 */
record PedalSweep(
    PointMm rest,
    double soleMm,
    double padMm,
    double leastRad,
    double mostRad,
    double turnRad,
    double missMm) {

  /** Half the thickness of a pedal's rubber, mm; judgement. */
  static final double RUBBER_MM = 10;

  /** Places of the way that are looked at; angles turn one way between its ends. */
  private static final int STEPS = 4;

  /** How far a pedal is from where the sole rests, mm; negative behind it, where no toes are. */
  static double alongMm(Posture posture, PointMm rest, PointMm pad) {
    PointMm to = pad.minus(rest);
    return to.dot(posture.ball().minus(posture.heel())) < 0 ? -to.length() : to.length();
  }

  /**
   * Follows a foot.
   *
   * @param soleMm from the heel along the sole to where it rests
   * @param pad middle of the rubber
   * @param pivot what it turns about
   * @param pressMm how far it is pressed away from the sole
   * @param liftMm how far the toes lift it; 0 if they do not
   */
  static PedalSweep of(
      Body body,
      Posture posture,
      PointMm rest,
      double soleMm,
      PointMm pad,
      PointMm pivot,
      double pressMm,
      double liftMm) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double miss = 0;
    PointMm arm = pad.minus(pivot);
    PointMm above = pad.minus(rest).left();
    // pressed, the rubber goes away from the side that the foot is on
    double way = arm.left().dot(above) > 0 ? -1 : 1;
    boolean lifts = liftMm > 0;
    for (int lift = 0; lift <= (lifts ? 1 : 0); lift++) {
      double off = lift == 0 ? RUBBER_MM : -RUBBER_MM - Figure.toeHeightMm(body);
      double travel = lift == 0 ? pressMm : -liftMm;
      for (int k = 0; k <= STEPS; k++) {
        double turn = way * travel * k / STEPS / Math.max(1, arm.length());
        PointMm to = pivot.plus(arm.turned(turn)).minus(rest);
        double sole = to.angleRad() + Math.asin(Math.max(-1, Math.min(1, off / to.length())));
        PointMm heel = rest.minus(PointMm.unit(sole).times(soleMm));
        FootTurned foot = FootTurned.of(body, posture, heel, sole);
        least = Math.min(least, foot.shankSoleRad());
        most = Math.max(most, foot.shankSoleRad());
        low = Math.min(low, sole);
        high = Math.max(high, sole);
        miss = Math.max(miss, foot.missMm());
      }
    }
    return new PedalSweep(
        rest, soleMm, soleMm + alongMm(posture, rest, pad), least, most, high - low, miss);
  }
}
