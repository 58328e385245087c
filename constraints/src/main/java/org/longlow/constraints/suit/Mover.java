package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.SolveSession;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverWish;

/**
 * Moves some pins of a layout while its ties and limits hold. What is tied to them comes along; all
 * else stays where it is, and limits against it stop the moved ones. Not for several threads.
 */
final class Mover {

  /** A place that cannot be reached without shaking is no place to go to. */
  private static final SolverSettings SETTINGS = SolverSettings.DEFAULT.withRestarts(0);

  /** How much more a pin's new place counts than the strongest wish of the layout. */
  private static final double PRIORITY = 1e4;

  private static final double NOTHING = 1e-6;

  /** How far each pin is moved to see what comes along, mm. */
  private static final double LOOK_MM = 20;

  private final LayoutProblem layout;
  private final Problem free;
  private final int[] variables;
  private final double[] targets;
  private final double[] anchor;
  private final SolveSession session;
  private final SolveSession settling;

  /**
   * @param pins the pins to move
   * @param anchor values of all variables that the rest stays near to, where ties and limits hold
   */
  Mover(LayoutProblem layout, List<String> pins, double[] anchor) {
    this.layout = layout;
    this.anchor = anchor.clone();
    variables =
        pins.stream().flatMapToInt(p -> java.util.Arrays.stream(layout.variables(p))).toArray();
    targets = new double[variables.length];
    Problem whole = layout.problem();
    double heaviest = whole.wishes().stream().mapToDouble(SolverWish::weight).max().orElse(0);
    List<SolverWish> wishes = new ArrayList<>(whole.wishes());
    for (int k = 0; k < variables.length; k++) {
      double weight = heaviest > 0 ? PRIORITY * heaviest : 1;
      wishes.add(new SolverWish("place " + k, weight, new Go(variables[k], k, targets)));
    }
    List<SolverWish> places = wishes.subList(whole.wishes().size(), wishes.size());
    Problem problem = holding(whole, carried(whole, places));
    free = problem.withWishes(List.of());
    session = new SolveSession(problem.withWishes(wishes), SETTINGS);
    settling = whole.wishes().isEmpty() ? null : new SolveSession(whole, SETTINGS);
  }

  /** Which variables the ties carry along when the pins move, these among them. */
  private Set<Integer> carried(Problem whole, List<SolverWish> places) {
    SolveSession ties = new SolveSession(whole.withLimits(List.of()).withWishes(places), SETTINGS);
    Set<Integer> moved = new HashSet<>();
    for (int k = 0; k < variables.length; k++) {
      moved.add(variables[k]);
      System.arraycopy(at(anchor), 0, targets, 0, targets.length);
      targets[k] += LOOK_MM;
      double[] x = ties.solve(anchor, anchor).x();
      for (int v = 0; v < x.length; v++) {
        if (Math.abs(x[v] - anchor[v]) > NOTHING * whole.variables().get(v).scale()) {
          moved.add(v);
        }
      }
    }
    return moved;
  }

  /** The problem with all other variables held at the anchor. */
  private Problem holding(Problem whole, Set<Integer> moved) {
    List<Problem.Variable> held = new ArrayList<>();
    for (int v = 0; v < whole.size(); v++) {
      Problem.Variable is = whole.variables().get(v);
      boolean fixed = is.fixed() || !moved.contains(v);
      held.add(new Problem.Variable(is.name(), anchor[v], anchor[v], is.scale(), fixed));
    }
    return new Problem(held, whole.ties(), whole.limits(), whole.wishes());
  }

  LayoutProblem layout() {
    return layout;
  }

  /** Returns the coordinates of the moved pins in {@code x}: x, z, x, z ..., mm. */
  double[] at(double[] x) {
    double[] now = new double[variables.length];
    for (int k = 0; k < now.length; k++) {
      now[k] = x[variables[k]];
    }
    return now;
  }

  /**
   * Returns the layout with the pins as near to {@code target} as ties and limits let them, or
   * empty if those cannot be made to hold from {@code from}.
   */
  Optional<double[]> to(double[] from, double[] target) {
    System.arraycopy(target, 0, targets, 0, targets.length);
    SolveReport report = session.solve(from, anchor);
    if (report.status().holds() && settling != null) {
      // wishes of the layout have the last word: it is solved with them whenever it is opened
      report = settling.solve(report.x(), report.x());
    }
    return report.status().holds() ? Optional.of(report.x()) : Optional.empty();
  }

  /**
   * Returns the directions in which the pins can go from {@code x}: an orthonormal basis, each
   * vector as long as {@link #at}.
   */
  double[][] directions(double[] x) {
    Map<String, Integer> rows = rows();
    List<double[]> columns = new ArrayList<>();
    for (Freedom freedom : freedoms(x)) {
      double[] column = new double[variables.length];
      boolean any = false;
      for (Map.Entry<String, Double> move : freedom.moves().entrySet()) {
        Integer k = rows.get(move.getKey());
        if (k != null) {
          column[k] = move.getValue();
          any = true;
        }
      }
      if (any && freedom.lasting()) {
        columns.add(column);
      }
    }
    return orthonormal(columns);
  }

  /** Returns the pins that may come along when these move from {@code x}, these among them. */
  Set<String> company(double[] x) {
    Map<String, Integer> rows = rows();
    Set<String> names = new HashSet<>();
    for (Freedom freedom : freedoms(x)) {
      if (freedom.moves().keySet().stream().anyMatch(rows::containsKey)) {
        names.addAll(freedom.moves().keySet());
      }
    }
    Set<String> pins = new HashSet<>();
    for (String pin : layout.layout().pins().keySet()) {
      if (names.contains(pin + ".x") || names.contains(pin + ".z")) {
        pins.add(pin);
      }
    }
    return pins;
  }

  private List<Freedom> freedoms(double[] x) {
    return Solver.solveAndDiagnose(free.withStart(x), SETTINGS)
        .diagnosis()
        .orElseThrow()
        .freedoms();
  }

  /** The place in {@link #at} of each variable by its name. */
  private Map<String, Integer> rows() {
    Map<String, Integer> rows = new HashMap<>();
    for (int k = 0; k < variables.length; k++) {
      rows.put(free.variables().get(variables[k]).name(), k);
    }
    return rows;
  }

  /** Gram and Schmidt, longest first. */
  private static double[][] orthonormal(List<double[]> columns) {
    List<double[]> basis = new ArrayList<>();
    List<double[]> left = new ArrayList<>(columns);
    double longest = left.stream().mapToDouble(Mover::length).max().orElse(0);
    while (!left.isEmpty()) {
      double[] next = left.get(0);
      for (double[] c : left) {
        if (length(c) > length(next) * (1 + 1e-9)) {
          next = c;
        }
      }
      left.remove(next);
      double size = length(next);
      if (!(size > NOTHING * longest)) {
        break;
      }
      double[] unit = new double[next.length];
      for (int i = 0; i < unit.length; i++) {
        unit[i] = next[i] / size;
      }
      basis.add(unit);
      for (double[] c : left) {
        double along = 0;
        for (int i = 0; i < unit.length; i++) {
          along += unit[i] * c[i];
        }
        for (int i = 0; i < unit.length; i++) {
          c[i] -= along * unit[i];
        }
      }
    }
    return basis.toArray(double[][]::new);
  }

  private static double length(double[] v) {
    double sum = 0;
    for (double e : v) {
      sum += e * e;
    }
    return Math.sqrt(sum);
  }

  /** A new place as a wish; the targets are shared with the mover. */
  private record Go(int variable, int place, double[] targets) implements Relation {
    @Override
    public int[] variables() {
      return new int[] {variable};
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      if (gradient != null) {
        gradient[0] = 1;
      }
      return x[variable] - targets[place];
    }
  }
}
