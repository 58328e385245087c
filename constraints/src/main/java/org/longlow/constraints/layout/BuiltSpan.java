package org.longlow.constraints.layout;

import org.longlow.constraints.formula.Formula;

/**
 * A length or an angle that was measured between two pins.
 *
 * @param kind which of the quantities of two pins, such as {@link TieKind#DISTANCE}
 * @param from the pin P of {@link TieKind}
 * @param to its Q
 * @param is what was measured
 */
public record BuiltSpan(TieKind kind, String from, String to, Formula is) {

  /** Says what was measured, such as {@code distance headTop to headBottom}. */
  public String words() {
    return kind.word() + " " + from + " to " + to;
  }
}
