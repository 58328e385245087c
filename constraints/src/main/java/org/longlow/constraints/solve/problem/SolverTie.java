package org.longlow.constraints.solve.problem;

import java.util.List;

/**
 * An exact demand: every relation of it is zero.
 *
 * @param name what the user calls it; reported when it is redundant or part of a contradiction
 * @param relations at least one; several when one idea needs them (two coordinates of a
 *     coincidence)
 */
public record SolverTie(String name, List<Relation> relations) {
  public SolverTie {
    if (name == null || name.isBlank()) {
      throw new IllegalArgumentException("a tie needs a name");
    }
    relations = relations.stream().flatMap(r -> r.parts().stream()).toList();
    if (relations.isEmpty()) {
      throw new IllegalArgumentException("tie '" + name + "' needs at least one relation");
    }
  }

  /** A tie of the relations given. */
  public static SolverTie of(String name, Relation... relations) {
    return new SolverTie(name, List.of(relations));
  }
}
