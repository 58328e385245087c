package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;

/**
 * A named quantity: given, computed by a formula, or free for the solver to find.
 *
 * @param is its value or formula; where it is free, where the solver starts
 * @param dim its dimension
 * @param free true if the solver may change it
 * @param from smallest value allowed, if any
 * @param to largest value allowed, if any
 * @param note for people, may be empty
 */
public record Measure(
    Formula is, Dim dim, boolean free, Optional<Formula> from, Optional<Formula> to, String note) {

  /** Returns a copy with another value or formula. */
  public Measure withIs(Formula other) {
    return new Measure(other, dim, free, from, to, note);
  }

  /** Returns a copy of which nothing is said but its value or formula. */
  public Measure onlyIs() {
    return new Measure(is, dim, false, Optional.empty(), Optional.empty(), "");
  }
}
