package org.longlow.constraints.solve.problem;

import java.util.List;

/**
 * A demand that must hold on one side: every gap of it is zero or more.
 *
 * @param name what the user calls it
 * @param gaps room left, mm; negative means broken by that much. At least one; several when one
 *     idea needs them, as two bodies that may come close at several places
 */
public record SolverLimit(String name, List<Relation> gaps) {
  public SolverLimit {
    if (name == null || name.isBlank()) {
      throw new IllegalArgumentException("a limit needs a name");
    }
    gaps = List.copyOf(gaps);
    if (gaps.isEmpty()) {
      throw new IllegalArgumentException("limit '" + name + "' needs a gap");
    }
  }

  /** A limit of the gaps given. */
  public static SolverLimit of(String name, Relation... gaps) {
    return new SolverLimit(name, List.of(gaps));
  }

  /**
   * Returns the least of the gaps, mm.
   *
   * @param x values of all variables of the problem
   */
  public double roomMm(double[] x) {
    return gaps.stream()
        .mapToDouble(gap -> gap.evaluate(x, null) * gap.scale())
        .min()
        .orElseThrow();
  }
}
