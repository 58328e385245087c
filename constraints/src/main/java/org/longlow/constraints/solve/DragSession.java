package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverWish;

/**
 * Moves variables after a pointer while everything else holds.
 *
 * <p>In each step the dragged variables go as near to the pointer as ties and limits let them
 * without leaping over what limits keep them from, then the other wishes are minimised, then the
 * rest moves as little as possible from where it was. Limits are slid along. Each step starts from
 * the last, so a dragged linkage stays on its branch.
 */
public final class DragSession {
  /** How much more the pointer counts than the strongest wish. */
  private static final double POINTER_PRIORITY = 1e4;

  /** With limits about, a step is no longer than this many times the pointer's. */
  private static final double LEAP = 4;

  private static final double LEAST_STEP_MM = 1;
  private static final double SMALL_MM = 5;
  private static final double LEAST_PROGRESS = 0.02;

  /** Steps for which quick ways are not tried once they led nowhere. */
  private static final int PAUSE = 20;

  /** Bound on the steps of a solve whose relations are costly. */
  private static final int COSTLY_STEPS = 40;

  private static final double[] QUICK_WAYS_MM = {Double.POSITIVE_INFINITY, 60, 15};

  /** So many quick ways in one step at most; what is left then follows with the next. */
  private static final int MOST_WAYS = 4;

  /** A pointer that has gone farther since last time is followed piece by piece. */
  private static final double PIECE_MM = 25;

  private static final int MOST_PIECES = 16;

  private final SolveSession session;
  private final int[] dragged;
  private final boolean limited;
  private final boolean costly;
  private final double[] targets;
  private final double[] pointer;
  private int pause;

  /** Whether the last quick way went for the pointer itself. */
  private boolean straight;

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
    dragged = variables.clone();
    limited = !problem.limits().isEmpty();
    costly = problem.limits().stream().flatMap(l -> l.gaps().stream()).anyMatch(Relation::costly);
    targets = new double[variables.length];
    double heaviest = problem.wishes().stream().mapToDouble(SolverWish::weight).max().orElse(0);
    List<SolverWish> wishes = new ArrayList<>(problem.wishes());
    for (int k = 0; k < variables.length; k++) {
      int v = variables[k];
      if (v < 0 || v >= problem.size()) {
        throw new IllegalArgumentException(
            "there is no variable " + v + "; give 0 to " + (problem.size() - 1));
      }
      targets[k] = solution[v];
      double weight = heaviest > 0 ? POINTER_PRIORITY * heaviest : 1;
      wishes.add(new SolverWish("pointer " + k, weight, new Follow(v, k, targets)));
    }
    pointer = targets.clone();
    x = solution.clone();
    int most = costly ? Math.min(COSTLY_STEPS, settings.maxIterations()) : settings.maxIterations();
    session =
        new SolveSession(
            problem.withWishes(wishes).withStart(x), settings.withMaxIterations(most), inBlocks);
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
    double[] from = pointer.clone();
    double way = distance(from, target);
    int pieces = limited ? (int) Math.min(MOST_PIECES, Math.max(1, Math.ceil(way / PIECE_MM))) : 1;
    for (int k = 1; k <= pieces; k++) {
      System.arraycopy(mix(from, target, (double) k / pieces), 0, pointer, 0, pointer.length);
      last = follow(Math.max(LEAST_STEP_MM, way / pieces));
    }
    return last;
  }

  /**
   * One step. What is held back by limits may have its nearest place far off, on the other side of
   * what it cannot pass: there it goes on by small ways, as far as they lead.
   */
  private SolveReport follow(double reach) {
    if (costly && pause-- <= 0) {
      SolveReport quick = null;
      boolean goesOn = true;
      for (int k = 0; k < MOST_WAYS && goesOn; k++) {
        double[] at = draggedOf(x);
        SolveReport next = quickly(reach);
        goesOn = next != null && !straight && distance(at, draggedOf(next.x())) > LEAST_STEP_MM;
        quick = next != null ? next : quick;
        x = next != null ? next.x().clone() : x;
      }
      if (quick != null) {
        return quick;
      }
      pause = PAUSE;
    }
    SolveReport report = solve(pointer);
    if (limited && leaps(report, reach)) {
      double small = Math.max(reach, SMALL_MM);
      for (int k = 0; k < MOST_PIECES; k++) {
        double[] at = draggedOf(x);
        double share = Math.min(1, small / distance(at, pointer));
        report = solve(mix(at, pointer, share));
        if (leaps(report, small)) {
          report = solve(at);
        }
        if (!report.status().holds()
            || distance(at, draggedOf(report.x())) < LEAST_PROGRESS * small) {
          break;
        }
        x = report.x().clone();
      }
    }
    if (report.status().holds()) {
      x = report.x().clone();
    }
    return report;
  }

  /**
   * One step by quick steps alone, straight to the pointer or some way towards it; null if none
   * leads there. A pointer far out of reach bends what the quick steps take for straight; one that
   * is near by does not.
   */
  private SolveReport quickly(double reach) {
    double[] at = draggedOf(x);
    double far = distance(at, pointer);
    for (double way : QUICK_WAYS_MM) {
      if (way < far || way == QUICK_WAYS_MM[0]) {
        double share = far > way ? way / far : 1;
        System.arraycopy(mix(at, pointer, share), 0, targets, 0, targets.length);
        SolveReport report = session.solveQuickly(x, x);
        straight = way >= far;
        if (report.status().holds() && !leaps(report, Math.max(reach, SMALL_MM))) {
          return report;
        }
      }
    }
    return null;
  }

  private static double[] mix(double[] from, double[] to, double share) {
    double[] mixed = new double[from.length];
    for (int i = 0; i < mixed.length; i++) {
      mixed[i] = share == 1 ? to[i] : from[i] + share * (to[i] - from[i]);
    }
    return mixed;
  }

  private double[] draggedOf(double[] values) {
    double[] some = new double[dragged.length];
    for (int i = 0; i < some.length; i++) {
      some[i] = values[dragged[i]];
    }
    return some;
  }

  private SolveReport solve(double[] towards) {
    System.arraycopy(towards, 0, targets, 0, targets.length);
    return session.solve(x, x);
  }

  private boolean leaps(SolveReport report, double reach) {
    return report.status().holds() && distance(draggedOf(report.x()), draggedOf(x)) > LEAP * reach;
  }

  private static double distance(double[] a, double[] b) {
    double square = 0;
    for (int i = 0; i < a.length; i++) {
      square += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(square);
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
