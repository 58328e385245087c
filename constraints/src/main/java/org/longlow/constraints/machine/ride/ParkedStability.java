package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * A parked machine on three supports: front contact, rear contact and stand foot, rigid statics.
 *
 * <p>Caution: a machine that tips hurts people. Keep every tip angle above {@link
 * #LEAST_TIP_ANGLE_DEG} and try it on the real slope.
 *
 * @param frontShare share of the weight on the front contact; negative means it tips
 * @param rearShare share on the rear contact
 * @param footShare share on the stand foot
 * @param overFrontEdgeMm distance from the centre's ground point to the edge front contact to foot
 * @param overRearEdgeMm distance to the edge foot to rear contact
 * @param overWheelsMm distance to the line of the wheels
 * @param footOutMm distance of the foot to that line
 * @param cgHeightMm height of the centre of gravity as parked
 */
public record ParkedStability(
    double frontShare,
    double rearShare,
    double footShare,
    double overFrontEdgeMm,
    double overRearEdgeMm,
    double overWheelsMm,
    double footOutMm,
    double cgHeightMm) {

  /** Tip angle to keep, deg, for slope, wind and a push together; engineering default. */
  public static final double LEAST_TIP_ANGLE_DEG = 10;

  /** A point of the plan: x forward, y to the stand's side, mm. */
  public record PlanMm(double xMm, double yMm) {
    public PlanMm {
      Values.finite("x mm", xMm);
      Values.finite("y mm", yMm);
    }
  }

  /**
   * Returns the loads and margins.
   *
   * @param cg ground point of the centre of gravity as parked
   * @throws IllegalArgumentException if the three supports lie in one line
   */
  public static ParkedStability on(
      PlanMm front, PlanMm rear, PlanMm foot, PlanMm cg, double cgHeightMm) {
    Values.positive("centre of gravity height mm", cgHeightMm);
    double area = area(front, rear, foot);
    double longest =
        Math.max(distance(front, rear), Math.max(distance(rear, foot), distance(foot, front)));
    if (Math.abs(area) < 1e-9 * longest * longest || longest == 0) {
      throw new OutOfRange(
          "the contacts and the stand foot lie in one line; move the foot to one side");
    }
    double f = area(cg, rear, foot) / area;
    double r = area(front, cg, foot) / area;
    double s = area(front, rear, cg) / area;
    double twice = Math.abs(area);
    return new ParkedStability(
        f,
        r,
        s,
        r * twice / distance(front, foot),
        f * twice / distance(foot, rear),
        s * twice / distance(rear, front),
        twice / distance(rear, front),
        cgHeightMm);
  }

  private static double area(PlanMm a, PlanMm b, PlanMm c) {
    return (b.xMm - a.xMm) * (c.yMm - a.yMm) - (c.xMm - a.xMm) * (b.yMm - a.yMm);
  }

  private static double distance(PlanMm a, PlanMm b) {
    return PointMm.norm(a.xMm - b.xMm, a.yMm - b.yMm);
  }

  /** Returns the tip angle over the edge front contact to foot, rad; negative if it tips. */
  public double tipOverFrontEdgeRad() {
    return Math.atan(overFrontEdgeMm / cgHeightMm);
  }

  /** Returns the tip angle over the edge foot to rear contact, rad. */
  public double tipOverRearEdgeRad() {
    return Math.atan(overRearEdgeMm / cgHeightMm);
  }

  /** Returns the tip angle back over the wheels, away from the stand, rad. */
  public double tipOverWheelsRad() {
    return Math.atan(overWheelsMm / cgHeightMm);
  }

  /** Returns the smallest of the three tip angles, rad. */
  public double leastTipRad() {
    return Math.min(tipOverWheelsRad(), leastTipOverFootRad());
  }

  /** Returns the smaller of the two over the edges that end at the foot, rad. */
  public double leastTipOverFootRad() {
    return Math.min(tipOverFrontEdgeRad(), tipOverRearEdgeRad());
  }

  /**
   * Returns the share of the weight on the foot where the road falls to its side.
   *
   * @param slopeRad of the road, square to the line of the wheels
   */
  public double footShareOn(double slopeRad) {
    return (overWheelsMm * Math.cos(slopeRad) + cgHeightMm * Math.sin(slopeRad)) / footOutMm;
  }

  /** Returns true if all three supports carry load. */
  public boolean stands() {
    return frontShare > 0 && rearShare > 0 && footShare > 0;
  }
}
