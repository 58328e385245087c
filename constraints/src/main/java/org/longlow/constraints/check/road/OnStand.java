package org.longlow.constraints.check.road;

import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.LeanClearance;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/**
 * A machine leaned onto the foot of its stand, as its wheels and springs are.
 *
 * @param ground under the upright machine
 * @param road what the machine touches as it leans
 * @param foot on the road of the upright machine, mm
 * @param yMm how far the foot is out, mm, &gt;= 0
 * @param centre of mass, likewise
 * @param acrossMm how far the centre is out to the side of the foot, mm
 * @param crownMm mean of the crown radii, mm
 * @param touches whether the foot comes down at all
 * @param leanRad lean at which it does, else the lean that is written, rad
 */
record OnStand(
    Ground ground,
    LeanClearance road,
    PointMm foot,
    double yMm,
    PointMm centre,
    double acrossMm,
    double crownMm,
    boolean touches,
    double leanRad) {

  /**
   * Leans a machine.
   *
   * @param places where its pins are
   * @param ground under the upright machine
   * @param mass all of it, in the axes of the frame
   */
  static OnStand of(Wheels wheels, Places places, Ground ground, Part.Stand stand, MassPoint mass) {
    Tyre front = wheels.frontTyre();
    Tyre rear = wheels.rearTyre();
    LeanClearance road =
        new LeanClearance(
            ground.wheelbaseMm(),
            new LeanClearance.Wheel(front.freeRadiusMm(), front.sectionRadiusMm()),
            new LeanClearance.Wheel(rear.freeRadiusMm(), rear.sectionRadiusMm()));
    PointMm foot = ground.toRoad(places.pin(stand.foot()));
    double y = places.value(stand.y());
    LeanClearance.TouchDown touch = road.touchDown(foot.x(), Math.abs(y), foot.z());
    return new OnStand(
        ground,
        road,
        foot,
        Math.abs(y),
        ground.toRoad(mass.at()),
        Math.signum(y) * mass.yMm(),
        (front.sectionRadiusMm() + rear.sectionRadiusMm()) / 2,
        touch.touches(),
        touch.touches() ? touch.rollRad() : places.value(stand.lean()));
  }

  /** Returns how high the foot is over the road at a lean, mm; negative under it. */
  double offMm(double rollRad) {
    return road.clearanceMm(foot.x(), yMm, foot.z(), rollRad);
  }

  /** Returns the height of the centre of mass over the road, mm; not above 0 is no machine. */
  double heightMm() {
    return ParkedStability.leanHeightMm(centre.z(), acrossMm, crownMm, leanRad);
  }

  /** Returns its statics; only where {@link #heightMm} is above 0. */
  ParkedStability stability() {
    return ParkedStability.on(
        new ParkedStability.PlanMm(ground.wheelbaseMm(), 0),
        new ParkedStability.PlanMm(0, 0),
        inPlan(foot, yMm),
        inPlan(centre, acrossMm),
        heightMm());
  }

  private ParkedStability.PlanMm inPlan(PointMm at, double y) {
    return new ParkedStability.PlanMm(
        at.x(), ParkedStability.leanShiftMm(at.z(), y, crownMm, leanRad));
  }
}
