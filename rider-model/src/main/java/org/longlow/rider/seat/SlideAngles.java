package org.longlow.rider.seat;

/**
 * Angles of pan and back at which friction alone keeps somebody in place, with the load shares they
 * have now; changing an angle moves the body, so they are good to a degree or two.
 *
 * @param leastPanRad pan from the horizontal, front edge up: at less they slide forward while
 *     braking; NaN where no pan keeps them
 * @param mostPanRad at more they slide back at rest
 * @param leastBackRad torso from the vertical: at less the trunk leaves the back while braking
 */
public record SlideAngles(double leastPanRad, double mostPanRad, double leastBackRad) {

  /**
   * Returns the angles for somebody who sits.
   *
   * @param braced the same person while braking
   * @param brakingG in that of gravity
   */
  public static SlideAngles of(SeatOutcome.Seated seated, Braced braced, double brakingG) {
    SeatLoad.Shares rest = seated.load();
    double reach = Math.atan(SeatLoad.DESIGN_FRICTION);
    double pan = rest.noShearPanRad() - Math.atan(rest.frictionNeeded());
    return new SlideAngles(
        Double.isFinite(braced.frictionNeeded())
            ? pan + Math.atan(braced.frictionNeeded()) - reach
            : Double.NaN,
        rest.noShearPanRad() + reach,
        Math.atan(brakingG));
  }

  /** Whether one pan keeps them both while braking and at rest. */
  public boolean canBe() {
    return leastPanRad <= mostPanRad;
  }
}
