package org.longlow.constraints.solve.problem;

import java.util.Locale;

/**
 * A preference: the solver makes the sum of weight times residual squared least in the room that
 * ties and limits leave.
 *
 * @param name what the user calls it
 * @param weight at least 0, finite; 0 switches the wish off
 * @param residual how far from wished
 */
public record SolverWish(String name, double weight, Relation residual) {
  public SolverWish {
    if (name == null || name.isBlank()) {
      throw new IllegalArgumentException("a wish needs a name");
    }
    if (!(weight >= 0) || Double.isInfinite(weight)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "wish '%s' has weight %s; give a finite weight of 0 or more",
              name,
              weight));
    }
    if (residual == null) {
      throw new IllegalArgumentException("wish '" + name + "' needs a residual");
    }
  }
}
