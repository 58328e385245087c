package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A builder's own test of a foam: a disc of 203 mm pressed into a slab on a bathroom scale.
 *
 * @param thickness of the slab
 * @param presses what was read, in any order
 */
public record FoamTrial(Optional<Formula> thickness, List<Press> presses) {

  /** No test was made. */
  public static final FoamTrial NONE = new FoamTrial(Optional.empty(), List.of());

  public FoamTrial {
    presses = List.copyOf(presses);
  }

  /** Whether anything of it is said. */
  public boolean isThere() {
    return thickness.isPresent() || !presses.isEmpty();
  }

  /**
   * One press.
   *
   * @param depth how deep the disc was
   * @param load what the scale read, a mass
   */
  public record Press(Formula depth, Formula load) {}
}
