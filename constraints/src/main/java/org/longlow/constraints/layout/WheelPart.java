package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;

/**
 * A wheel with its tyre.
 *
 * @param axle its axle pin
 * @param tyre size designation such as {@code 120/70 R17}; may be empty if radius is given
 * @param radius measured free radius, instead of the designation's
 * @param width measured section width, instead of the designation's
 * @param crown measured section (crown) radius, instead of half the width
 * @param pressure of its air, cold
 * @param spread moment of inertia about its axle over mass times free radius squared, 0.5 for a
 *     disc to 1 for a thin ring; for balance
 * @param rimInside radius of what is free inside its rim, from the axle
 * @param inside what sits about its axle and is no part of its own
 * @param electric what the motor among that takes from the electrics
 */
public record WheelPart(
    PartBase base,
    Part.End end,
    String axle,
    String tyre,
    Optional<Formula> radius,
    Optional<Formula> width,
    Optional<Formula> crown,
    Optional<Formula> pressure,
    Optional<Formula> spread,
    Optional<Formula> rimInside,
    List<HubBody> inside,
    Electric electric)
    implements Part.AtEnd {

  public WheelPart {
    inside = List.copyOf(inside);
  }

  /** Whether a motor sits in its hub. */
  public boolean driven() {
    return inside.stream().anyMatch(body -> body.what() == HubBody.What.MOTOR);
  }

  @Override
  public Traits traits() {
    return new Traits("wheel", Duty.WHEEL, Joint.OTHER, Heat.SUFFERS, Make.BOUGHT, false);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.wheel(this);
  }

  @Override
  public List<String> pins() {
    return List.of(axle);
  }
}
