package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What a part takes from the electrics of a machine, and what it gives; all of it, both sides
 * together.
 *
 * @param power what it takes while it is on, W
 * @param duty the share of a ride for which it is on
 * @param supply what it gives, W
 * @param energy what it stores, Wh
 */
public record Electric(
    Optional<Formula> power, Formula duty, Optional<Formula> supply, Optional<Formula> energy) {

  /** On all the time, where nothing else is said. */
  public static final Formula ALWAYS = Formula.parse("1");

  /** Nothing is said of it. */
  public static final Electric NOT_SAID =
      new Electric(Optional.empty(), ALWAYS, Optional.empty(), Optional.empty());
}
