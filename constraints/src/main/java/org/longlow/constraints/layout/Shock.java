package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Formula;

/**
 * Spring and damper between an arm and the frame. All of it is said, or nothing.
 *
 * @param foot the pin that it hangs on at the arm, which goes with the wheel
 * @param top the pin that it hangs on at the frame
 * @param stroke by how much it can close
 * @param spring force for each mm by which it closes; of two, both together
 */
public record Shock(
    Optional<String> foot,
    Optional<String> top,
    Optional<Formula> stroke,
    Optional<Formula> spring) {

  /** Nothing is said of it. */
  public static final Shock NOT_SAID =
      new Shock(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Returns the pins that it hangs on. */
  List<String> pins() {
    return Stream.concat(foot.stream(), top.stream()).toList();
  }
}
