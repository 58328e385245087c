package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * How far a body reaches to each side at one place of it: from −right to +left, as in {@link
 * Spread}.
 *
 * @param left reach to the left
 * @param right reach to the right; absent it is as far as to the left
 */
public record Reach(Formula left, Optional<Formula> right) {

  public Formula rightOrLeft() {
    return right.orElse(left);
  }
}
