package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What a part takes from the electrics of a machine, and what it gives; all of it, both sides
 * together.
 *
 * @param power what it takes while it is on, W
 * @param duty the share of a ride for which it is on; all of it unless said
 * @param supply what it gives, W
 * @param energy what it stores, Wh
 */
public record Electric(
    Optional<Formula> power,
    Optional<Formula> duty,
    Optional<Formula> supply,
    Optional<Formula> energy) {

  /** Nothing is said of it. */
  public static final Electric NOT_SAID =
      new Electric(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
