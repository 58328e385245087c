package org.longlow.constraints.solve.problem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What is to be solved: variables, ties, limits and wishes. Immutable.
 *
 * @param variables in the order of their indices
 * @param ties exact demands
 * @param limits one-sided demands
 * @param wishes preferences
 */
public record Problem(
    List<Variable> variables,
    List<SolverTie> ties,
    List<SolverLimit> limits,
    List<SolverWish> wishes) {

  /**
   * One unknown.
   *
   * @param name what the user calls it, such as {@code front axle.x}; unique in the problem
   * @param start where the search begins and, unless an anchor is given, the value to stay near to;
   *     mm for coordinates
   * @param anchor the value to stay near to
   * @param scale how large a change of it counts as much as 1 mm of a pin; &gt; 0 (for an angle in
   *     rad, 0.001 says that a thousandth of a radian is as much as a millimetre)
   * @param fixed whether it keeps its start value
   */
  public record Variable(String name, double start, double anchor, double scale, boolean fixed) {
    public Variable {
      if (name == null || name.isBlank()) {
        throw new IllegalArgumentException("a variable needs a name");
      }
      if (!Double.isFinite(start) || !Double.isFinite(anchor)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "variable '%s' starts at %s near %s; both must be finite",
                name,
                start,
                anchor));
      }
      if (!(scale > 0) || Double.isInfinite(scale)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT, "variable '%s' has scale %s; give a finite one > 0", name, scale));
      }
    }
  }

  public Problem {
    variables = List.copyOf(variables);
    ties = List.copyOf(ties);
    limits = List.copyOf(limits);
    wishes = List.copyOf(wishes);
    Set<String> names = new HashSet<>();
    for (Variable variable : variables) {
      if (!names.add(variable.name())) {
        throw new IllegalArgumentException("two variables are called '" + variable.name() + "'");
      }
    }
    for (SolverTie tie : ties) {
      for (Relation relation : tie.relations()) {
        check("tie", tie.name(), relation, variables.size());
      }
    }
    for (SolverLimit limit : limits) {
      for (Relation gap : limit.gaps()) {
        check("limit", limit.name(), gap, variables.size());
      }
    }
    for (SolverWish wish : wishes) {
      check("wish", wish.name(), wish.residual(), variables.size());
    }
  }

  private static void check(String kind, String name, Relation relation, int count) {
    int[] used = relation.variables();
    for (int i = 0; i < used.length; i++) {
      if (used[i] < 0 || used[i] >= count) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "%s '%s' uses variable %d; the problem has 0 to %d",
                kind,
                name,
                used[i],
                count - 1));
      }
      for (int j = 0; j < i; j++) {
        if (used[i] == used[j]) {
          throw new IllegalArgumentException(
              String.format(Locale.ROOT, "%s '%s' lists variable %d twice", kind, name, used[i]));
        }
      }
    }
  }

  /** Number of variables, fixed ones included. */
  public int size() {
    return variables.size();
  }

  /** Start values in the order of the variables. */
  public double[] start() {
    return variables.stream().mapToDouble(Variable::start).toArray();
  }

  /** Anchor values in the order of the variables. */
  public double[] anchor() {
    return variables.stream().mapToDouble(Variable::anchor).toArray();
  }

  /** Index of the variable of that name, or -1. */
  public int indexOf(String name) {
    for (int i = 0; i < variables.size(); i++) {
      if (variables.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** A copy that starts at {@code x} and wants to stay near it. */
  public Problem withStart(double[] x) {
    return with(x, x);
  }

  /** A copy that starts at {@code x} and wants to stay near {@code anchor}. */
  public Problem with(double[] x, double[] anchor) {
    List<Variable> moved = new ArrayList<>(variables.size());
    for (int i = 0; i < variables.size(); i++) {
      Variable v = variables.get(i);
      moved.add(new Variable(v.name(), x[i], anchor[i], v.scale(), v.fixed()));
    }
    return new Problem(moved, ties, limits, wishes);
  }

  /** A copy in which some variables stay at the values given. */
  public Problem holding(Map<Integer, Double> held) {
    List<Variable> some = new ArrayList<>(variables);
    held.forEach(
        (i, at) -> {
          Variable v = variables.get(i);
          some.set(i, new Variable(v.name(), at, at, v.scale(), true));
        });
    return new Problem(some, ties, limits, wishes);
  }

  /** A copy with other ties. */
  public Problem withTies(List<SolverTie> other) {
    return new Problem(variables, other, limits, wishes);
  }

  /** A copy with other limits. */
  public Problem withLimits(List<SolverLimit> other) {
    return new Problem(variables, ties, other, wishes);
  }

  /** A copy with other wishes. */
  public Problem withWishes(List<SolverWish> other) {
    return new Problem(variables, ties, limits, other);
  }

  /** An empty builder. */
  public static Builder builder() {
    return new Builder();
  }

  /** Collects variables and demands; not safe for several threads. */
  public static final class Builder {
    private final List<Variable> variables = new ArrayList<>();
    private final List<SolverTie> ties = new ArrayList<>();
    private final List<SolverLimit> limits = new ArrayList<>();
    private final List<SolverWish> wishes = new ArrayList<>();

    private Builder() {}

    /** Adds a free variable of scale 1 and returns its index. */
    public int variable(String name, double start) {
      return variable(new Variable(name, start, start, 1, false));
    }

    /** Adds a variable that keeps its value and returns its index. */
    public int fixed(String name, double value) {
      return variable(new Variable(name, value, value, 1, true));
    }

    /** Adds a variable and returns its index. */
    public int variable(Variable variable) {
      variables.add(variable);
      return variables.size() - 1;
    }

    /** Adds the two coordinates {@code name.x} and {@code name.z} of a pin, mm. */
    public Pt pin(String name, double xMm, double zMm) {
      return Pt.variables(variable(name + ".x", xMm), variable(name + ".z", zMm));
    }

    /** Adds a tie. */
    public Builder tie(String name, Relation... relations) {
      ties.add(SolverTie.of(name, relations));
      return this;
    }

    /** Adds a limit: every gap is zero or more. */
    public Builder limit(String name, Relation... gaps) {
      limits.add(SolverLimit.of(name, gaps));
      return this;
    }

    /** Adds a limit of several gaps. */
    public Builder limit(String name, List<Relation> gaps) {
      limits.add(new SolverLimit(name, gaps));
      return this;
    }

    /** Adds a wish. */
    public Builder wish(String name, double weight, Relation residual) {
      wishes.add(new SolverWish(name, weight, residual));
      return this;
    }

    /** The problem so far. */
    public Problem build() {
      return new Problem(variables, ties, limits, wishes);
    }
  }
}
