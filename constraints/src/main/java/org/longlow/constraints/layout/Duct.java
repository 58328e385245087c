package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * How air is led to a radiator and away from it.
 *
 * @param intakeWidth breadth of the opening that air comes in by
 * @param intakeHeight its height, square to the air; said with the breadth
 * @param outletWidth breadth of the opening that it leaves by
 * @param outletHeight its height, square to the air; said with the breadth
 * @param out the pin in the middle of the outlet, if it is said where that is
 * @param towards a pin that the air leaves towards; said with {@code out}
 */
public record Duct(
    Optional<Formula> intakeWidth,
    Optional<Formula> intakeHeight,
    Optional<Formula> outletWidth,
    Optional<Formula> outletHeight,
    Optional<String> out,
    Optional<String> towards) {

  /** It stands in the wind. */
  public static final Duct NONE =
      new Duct(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
}
