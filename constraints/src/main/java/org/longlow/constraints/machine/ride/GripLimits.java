package org.longlow.constraints.machine.ride;

import java.util.Optional;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.AxleLoads;

/**
 * How hard a machine slows down and pulls away before a tyre slides or a wheel lifts, g; level
 * road, no aerodynamics.
 *
 * <p>Braking by a moves a W h / p onto the front wheel, h the height of the centre of mass and p
 * the wheelbase. The front tyre alone holds a W with a friction μ while a ≤ μ b / (p − μ h), b from
 * the rear contact to the centre of mass; the rear alone while a ≤ μ (p − b) / (p + μ h); both,
 * each braked as it can be, while a ≤ μ. The rear tyre drives up to μ (p − b) / (p − μ h), the
 * front one up to μ b / (p + μ h), both up to μ. None goes beyond where a wheel lifts.
 *
 * @param frontG braking with the front brake alone
 * @param rearG braking with the rear brake alone
 * @param bothG braking with both
 * @param brakingLifts whether the rear wheel lifts before the tyres slide
 */
public record GripLimits(double frontG, double rearG, double bothG, boolean brakingLifts) {

  /**
   * How hard a machine pulls away.
   *
   * @param g at most
   * @param lifts whether the front wheel lifts before what drives slides
   */
  public record Driving(double g, boolean lifts) {}

  /** Returns those of a machine; none where it does not stand on both wheels or nothing grips. */
  public static Optional<GripLimits> ifAny(AxleLoads axles, double grip) {
    boolean stands = axles.total().at().z() > 0 && axles.frontN() > 0 && axles.rearN() > 0;
    return stands && grip > 0 ? Optional.of(of(axles, grip)) : Optional.empty();
  }

  /**
   * Returns those of a machine that stands on both wheels.
   *
   * @param grip μ, peak friction of both tyres, &gt; 0
   */
  public static GripLimits of(AxleLoads axles, double grip) {
    Values.positive("grip", grip);
    double base = axles.wheelbaseMm();
    double ahead = axles.total().at().x();
    double height = axles.total().at().z();
    double lift = axles.brakeLiftG();
    // at the very lift all weight is on one tyre, which holds as much as it weighs times its grip
    boolean lifts = grip > lift;
    return new GripLimits(
        lifts ? lift : grip * ahead / (base - grip * height),
        grip * (base - ahead) / (base + grip * height),
        Math.min(grip, lift),
        lifts);
  }

  /** Returns how hard a machine that stands on both wheels pulls away, on likewise a grip. */
  public static Driving driving(AxleLoads axles, double grip, DrivenWheels driven) {
    Values.positive("grip", grip);
    double base = axles.wheelbaseMm();
    double ahead = axles.total().at().x();
    double height = axles.total().at().z();
    if (driven == DrivenWheels.FRONT) {
      // the less the front tyre carries the less it drives, so that it never lifts itself
      return new Driving(grip * ahead / (base + grip * height), false);
    }
    if (grip > axles.driveLiftG()) {
      return new Driving(axles.driveLiftG(), true);
    }
    boolean both = driven == DrivenWheels.BOTH;
    return new Driving(both ? grip : grip * (base - ahead) / (base - grip * height), false);
  }
}
