package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What is said of who works a lever: all of it, or nothing.
 *
 * @param by what works it
 * @param pad see {@link Control}
 * @param pivot see {@link Control}
 * @param travel see {@link Control}
 */
public record Working(
    Optional<Control.By> by,
    Optional<String> pad,
    Optional<String> pivot,
    Optional<Formula> travel) {

  /** Nothing. */
  public static final Working NOT_SAID =
      new Working(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Returns what works it and where, if that is said. */
  public Optional<Control> control() {
    return by.isPresent() && pad.isPresent()
        ? Optional.of(new Control(by.get(), pad.get(), pivot, travel))
        : Optional.empty();
  }
}
