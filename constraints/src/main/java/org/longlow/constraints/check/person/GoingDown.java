package org.longlow.constraints.check.person;

import java.util.function.BiFunction;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SegmentMass;

/**
 * The trunk of somebody between seat and feet, going down or rising: hips part of the way from the
 * seat to where they stand over the feet, trunk leaned forward until the body is over the feet, or
 * as far as people lean. Hands that push or hold spare some of that lean.
 *
 * @param hip in the axes of the frame
 * @param reclineRad of the trunk, rearward positive
 */
record GoingDown(PointMm hip, double reclineRad) {

  /** Of the way of the hips from the seat to standing; judgement: the weight is off the seat. */
  static final double RISEN = 1.0 / 3;

  /** Farther forward nobody leans to rise, rad; judgement. */
  static final double MOST_RAD = Math.toRadians(-60);

  private static final double STEP_RAD = Math.toRadians(5);

  /**
   * Returns it for somebody whose feet stand as when they sit down.
   *
   * @param down sitting, feet on the road
   * @param standMm height of the hips over the road of somebody who stands
   * @param posed the body with its hips at a place and its trunk leaned so far, hands and feet
   *     where they belong
   */
  static GoingDown of(
      Body body,
      Posture down,
      double standMm,
      Ground ground,
      BiFunction<PointMm, Double, PoseResult> posed) {
    PointMm stands = ground.toFrame(new PointMm(ground.toRoad(down.ankle()).x(), standMm));
    PointMm hip = down.hip().towards(stands, RISEN);
    double feet = 0.5 * (ground.toRoad(down.heel()).x() + ground.toRoad(down.ball()).x());
    double recline = Math.min(0, down.angles().recline());
    while (recline > MOST_RAD && aheadMm(body, posed.apply(hip, recline), ground) < feet) {
      recline = Math.max(MOST_RAD, recline - STEP_RAD);
    }
    return new GoingDown(hip, recline);
  }

  /** How far along the road the centre of mass is, mm. */
  static double aheadMm(Body body, PoseResult pose, Ground ground) {
    double mass = 0;
    double moment = 0;
    for (SegmentMass m : SegmentMass.of(body, pose.posture())) {
      mass += m.massKg();
      moment += m.massKg() * ground.toRoad(m.centre()).x();
    }
    return moment / mass;
  }
}
