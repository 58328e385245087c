package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.ride.ParkedStability.PlanMm;
import org.longlow.rider.geom.PointMm;

/**
 * A machine leaned on two round tyres, seen in the axes of the road: forward along the wheels, up,
 * and across to the side leaned to.
 *
 * <p>Each tyre touches under its own crown, so that on crowns ρ of unlike radius the contacts lie
 * at unlike distances to that side, (ρF − ρR) tan φ apart, while the machine pitches as {@link
 * LeanClearance} says. Between them the road carries the machine on the straight line through both;
 * a mass has its lever from the point of that line abreast of it, which is that of one crown,
 * weighted by how far the mass lies from either contact. Tyres are stiff, wheels are not steered.
 *
 * @param road the road at this roll
 * @param front contact of the front tyre
 * @param rear contact of the rear tyre
 */
public record OnTyres(LeanClearance.Road road, PlanMm front, PlanMm rear) {

  /**
   * Returns the machine at a roll.
   *
   * @param wheelbaseMm distance between the axles along x, mm, &gt; 0
   * @param rollRad rad, in [0, {@link LeanClearance#steepestRollRad()}] and below π/2
   */
  public static OnTyres of(
      double wheelbaseMm, LeanClearance.Wheel front, LeanClearance.Wheel rear, double rollRad) {
    LeanClearance.Road road = LeanClearance.road(wheelbaseMm, front, rear, rollRad);
    return new OnTyres(road, contact(road, wheelbaseMm, front), contact(road, 0, rear));
  }

  /** A ring's lowest point lies a · sin φ back from its centre, in the plane of the wheel. */
  private static PlanMm contact(LeanClearance.Road road, double xMm, LeanClearance.Wheel wheel) {
    PlanMm centre = plan(road, xMm, 0, wheel.centreHeightMm());
    return new PlanMm(centre.xMm(), centre.yMm() + wheel.ringMm() * road.byY());
  }

  /** By what the road knows already: rises are cos φ sin θ, cos φ cos θ and -sin φ. */
  private static PlanMm plan(LeanClearance.Road road, double xMm, double yMm, double zMm) {
    double cosRoll = PointMm.norm(road.byX(), road.byZ());
    double sinPitch = road.byX() / cosRoll;
    double cosPitch = road.byZ() / cosRoll;
    return new PlanMm(
        xMm * cosPitch - zMm * sinPitch,
        yMm * cosRoll - (xMm * sinPitch + zMm * cosPitch) * road.byY());
  }

  /**
   * Returns the point of the road under a body point, mm; y to the side leaned to.
   *
   * @param xMm forward of the rear axle, mm
   * @param yMm to the side leaned to, mm
   * @param zMm height in body axes, mm
   */
  public PlanMm plan(double xMm, double yMm, double zMm) {
    return plan(road, xMm, yMm, zMm);
  }

  /** Returns how far a body point lies past the line of the contacts, to the side leaned to, mm. */
  public double asideMm(double xMm, double yMm, double zMm) {
    PlanMm at = plan(xMm, yMm, zMm);
    double share = (at.xMm() - rear.xMm()) / (front.xMm() - rear.xMm());
    return at.yMm() - rear.yMm() - share * (front.yMm() - rear.yMm());
  }

  /**
   * Returns the angle of the force in the turn that holds the machine at this roll, rad: from the
   * vertical to the line from the contacts to the centre of mass. The centre's moments about the
   * line of the contacts are in balance, mass times sideways pull times height against weight times
   * {@link #asideMm}; positive if the centre lies to the side leaned to, π/2 or more if it lies
   * under the road.
   */
  public double idealRollRad(double xMm, double yMm, double zMm) {
    return Math.atan2(asideMm(xMm, yMm, zMm), road.heightMm(xMm, yMm, zMm));
  }
}
