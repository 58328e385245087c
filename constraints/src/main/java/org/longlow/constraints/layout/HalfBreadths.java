package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * How far a body reaches to each side at one place of it: from −right to +left, as in {@link
 * Spread}. One alone is meant for both.
 *
 * @param left reach to the left
 * @param right reach to the right
 */
public record HalfBreadths(Optional<Formula> left, Optional<Formula> right) {

  /** Returns whether nothing is said of either side. */
  public boolean isEmpty() {
    return left.isEmpty() && right.isEmpty();
  }

  /** Returns the reach to the left; something must be said. */
  public Formula leftOrRight() {
    return left.or(() -> right).orElseThrow();
  }

  /** Returns the reach to the right; something must be said. */
  public Formula rightOrLeft() {
    return right.or(() -> left).orElseThrow();
  }
}
