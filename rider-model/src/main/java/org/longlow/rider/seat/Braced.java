package org.longlow.rider.seat;

import org.longlow.rider.body.Body;

/**
 * Somebody seated while the machine slows down: what the pan must hold by friction, and what is
 * left to feet and hands.
 *
 * <p>All of their weight W pushes forward by a W. The trunk weighs less on the back by as much as
 * it is thrown forward: its force there shrinks with 1 − a / tan θ, θ the torso from the vertical,
 * and what the back carried comes onto the pan. Beyond a = tan θ nothing leans on the back, and
 * hands at the height of the shoulders hold the trunk. Feet push straight forward and take no
 * weight off the pan; no muscle else, as {@link SeatLoad}.
 *
 * @param backLeavesG braking at which the trunk leaves the back, g; 0 where nothing leans on it
 * @param frictionNeeded of the pan if it alone is to hold them, signed as {@link
 *     SeatLoad.Shares#frictionNeeded}; infinite if none is enough
 * @param feetN what the feet must push with {@link SeatLoad#DESIGN_FRICTION} on the pan, N, ≥ 0
 * @param feetOnIceN the same with no friction at all, N, ≥ 0
 * @param handsN what the hands must push to hold the trunk, N, ≥ 0
 */
public record Braced(
    double backLeavesG, double frictionNeeded, double feetN, double feetOnIceN, double handsN) {

  /**
   * Returns how somebody is braced.
   *
   * @param brakingG in that of gravity, in [0, 2]
   */
  public static Braced of(Body body, SeatOutcome.Seated seated, double brakingG) {
    double weight = body.massInGearKg() * SeatLoad.GRAVITY;
    SeatLoad.Shares rest = seated.load();
    boolean leans = rest.backN() > 0 && seated.reclineRad() > 0;
    double theta = leans ? seated.reclineRad() : 0;
    double leaves = leans ? Math.tan(theta) : 0;
    double kept = kept(leaves, brakingG);
    double borne = leans ? weight - rest.panVerticalN() - rest.pegsN() - rest.handsN() : 0;
    double hands = trunkN(body, weight, brakingG, theta);
    double forward =
        kept * (leans ? rest.forwardN() : 0) + brakingG * weight - hands * Math.cos(theta);
    double pan = rest.panVerticalN() + (1 - kept) * borne;
    double slope = rest.noShearPanRad() - Math.atan(rest.frictionNeeded());
    return new Braced(
        leaves,
        pan > 0 ? friction(Math.atan2(forward, pan) - slope) : Double.POSITIVE_INFINITY,
        Math.max(0, forward - pan * held(slope, SeatLoad.DESIGN_FRICTION)),
        Math.max(0, forward - pan * held(slope, 0)),
        hands);
  }

  /** Returns how much of its push at rest the back keeps at such braking, 0 to 1. */
  public double kept(double brakingG) {
    return kept(backLeavesG, brakingG);
  }

  private static double kept(double leavesG, double brakingG) {
    return leavesG > 0 ? Math.max(0, 1 - brakingG / leavesG) : 0;
  }

  private static double friction(double rad) {
    return rad < Math.PI / 2 ? Math.tan(rad) : Double.POSITIVE_INFINITY;
  }

  /** Forward push over weight that a pan of this slope holds; negative where it falls forward. */
  private static double held(double slopeRad, double friction) {
    return Math.tan(slopeRad + Math.atan(friction));
  }

  /** Push at the shoulders, square to the torso, that keeps the trunk from falling forward. */
  private static double trunkN(Body body, double weight, double brakingG, double thetaRad) {
    WeightShares w = WeightShares.of(body, 0);
    double moment =
        w.trunk() * w.trunkHeight() + w.arms() * w.armsHeight() + w.head() * w.headHeight();
    double falls = brakingG * Math.cos(thetaRad) - Math.sin(thetaRad);
    return Math.max(0, weight * moment * falls);
  }
}
