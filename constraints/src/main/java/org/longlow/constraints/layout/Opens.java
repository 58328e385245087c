package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * By what a section is opened, held open and held shut.
 *
 * @param grip the pin of the section where a hand takes hold; absent for its far end
 * @param holds how far open it is held, as a share of the way; absent for all the way
 * @param wayOut true if somebody must get out through it
 * @param drive the name of what moves it by power, may be empty; one drive may move several
 * @param gasSprings that help it open
 * @param counterweights likewise
 * @param catches that hold it
 */
public record Opens(
    Optional<String> grip,
    Optional<Formula> holds,
    boolean wayOut,
    String drive,
    List<GasSpring> gasSprings,
    List<Counterweight> counterweights,
    List<Catch> catches) {

  /** Nothing is said of it. */
  public static final Opens UNSAID =
      new Opens(Optional.empty(), Optional.empty(), false, "", List.of(), List.of(), List.of());

  public Opens {
    gasSprings = List.copyOf(gasSprings);
    counterweights = List.copyOf(counterweights);
    catches = List.copyOf(catches);
  }

  /** Whether something helps it open. */
  public boolean isHelped() {
    return !gasSprings.isEmpty() || !counterweights.isEmpty();
  }
}
