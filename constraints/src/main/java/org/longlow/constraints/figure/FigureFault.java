package org.longlow.constraints.figure;

import org.longlow.constraints.words.OneLine;

/**
 * One thing wrong with the input of a figure.
 *
 * @param name which input, such as {@code masses[2].massKg}
 * @param value what it was, "missing" if it was not given
 * @param allowed what is allowed, in words; empty where {@code value} is all that is to be said
 */
public record FigureFault(String name, String value, String allowed) {

  /** Returns the fault as one line, whatever it quotes. */
  public String line() {
    return OneLine.of(
        allowed.isEmpty() ? name + " " + value : name + " is " + value + "; allowed is " + allowed);
  }
}
