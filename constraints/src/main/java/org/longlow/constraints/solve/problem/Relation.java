package org.longlow.constraints.solve.problem;

import java.util.List;

/**
 * One scalar function of a few variables, with analytic first derivatives.
 *
 * <p>Implementations are immutable and safe for use by several threads at once. They are smooth
 * near every layout that matters; where a derivative does not exist (a line of zero length) they
 * give zeros, which the solver recognises.
 */
public interface Relation {
  /**
   * The variables this relation depends on.
   *
   * @return distinct variable indices, in the order of the gradient; callers do not modify it
   */
  int[] variables();

  /**
   * Evaluates the relation.
   *
   * @param x values of all variables of the problem; not modified
   * @param gradient receives the partial derivatives in the order of {@link #variables()} (it may
   *     be longer); null when only the value is wanted
   * @return the value; for ties and limits times {@link #scale()} it is in mm
   */
  double evaluate(double[] x, double[] gradient);

  /**
   * The relations that a tie uses in place of this one: itself, or several where one scalar would
   * be singular just where it holds, as the distance of two points that are one.
   */
  default List<Relation> parts() {
    return List.of(this);
  }

  /** Whether one evaluation takes as long as those of many closed forms. */
  default boolean costly() {
    return false;
  }

  /** Millimetres per unit of {@link #evaluate}; 1 for relations that give mm. */
  default double scale() {
    return 1;
  }
}
