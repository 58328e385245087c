package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Moves variables after a pointer while everything else holds.
 *
 * <p>In each step the dragged variables go as near to the pointer as ties and limits let them (to
 * first order, along a continuous path), then the other wishes are minimised, then the rest moves
 * as little as possible from where it was. Limits are slid along. Each step starts from the last,
 * so a dragged linkage stays on its branch.
 */
public final class DragSession {
  /** How much more the pointer counts than the strongest wish. */
  private static final double POINTER_PRIORITY = 1e4;

  private final SolveSession session;
  private final double[] targets;
  private double[] x;
  private SolveReport last;

  DragSession(Problem problem, double[] solution, SolverSettings settings, int... variables) {
    this(problem, solution, settings, true, variables);
  }

  DragSession(
      Problem problem,
      double[] solution,
      SolverSettings settings,
      boolean inBlocks,
      int... variables) {
    if (variables.length == 0) {
      throw new IllegalArgumentException("name at least one variable to drag");
    }
    if (solution.length != problem.size()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the solution has %d values, the problem %d variables",
              solution.length,
              problem.size()));
    }
    targets = new double[variables.length];
    double heaviest = problem.wishes().stream().mapToDouble(Wish::weight).max().orElse(0);
    List<Wish> wishes = new ArrayList<>(problem.wishes());
    for (int k = 0; k < variables.length; k++) {
      int v = variables[k];
      if (v < 0 || v >= problem.size()) {
        throw new IllegalArgumentException(
            "there is no variable " + v + "; give 0 to " + (problem.size() - 1));
      }
      targets[k] = solution[v];
      double weight = heaviest > 0 ? POINTER_PRIORITY * heaviest : 1;
      wishes.add(new Wish("pointer " + k, weight, new Follow(v, k, targets)));
    }
    x = solution.clone();
    session = new SolveSession(problem.withWishes(wishes).withStart(x), settings, inBlocks);
  }

  /**
   * Moves the dragged variables towards the pointer.
   *
   * @param target one value for each dragged variable, in their order, finite
   * @return the report of this step; its positions hold all ties even where the pointer is out of
   *     reach
   */
  public SolveReport moveTo(double... target) {
    if (target.length != targets.length) {
      throw new IllegalArgumentException(
          "give " + targets.length + " target values, got " + target.length);
    }
    for (double t : target) {
      if (!Double.isFinite(t)) {
        throw new IllegalArgumentException("a target must be finite, got " + t);
      }
    }
    System.arraycopy(target, 0, targets, 0, target.length);
    SolveReport report = session.solve(x, x);
    if (report.status().holds()) {
      x = report.x().clone();
    }
    last = report;
    return report;
  }

  /** Values of all variables after the last step that held. */
  public double[] positions() {
    return x.clone();
  }

  /** The report of the last step, or null before the first. */
  public SolveReport lastReport() {
    return last;
  }

  /** The pointer as a wish; the target array is shared with the session. */
  private record Follow(int variable, int place, double[] targets) implements Relation {
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
