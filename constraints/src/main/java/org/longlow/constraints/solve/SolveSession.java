package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.longlow.constraints.solve.block.BlockSolver;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Link;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.step.GroupSystem;

/**
 * Solves problems of one structure again and again, keeping what depends on structure only.
 *
 * <p>Structure is: which variables each relation depends on and which are fixed. A problem of
 * another structure is taken too and starts afresh. Not safe for several threads at once; a session
 * is cheap to make.
 */
public final class SolveSession {
  private final SolverSettings settings;
  private final boolean inBlocks;
  private Problem problem;
  private List<BlockSolver> groups;
  private boolean[] settled;
  private int inOrder;
  private Work shared;

  /** Prepares for problems of this structure. */
  public SolveSession(Problem problem, SolverSettings settings) {
    this(problem, settings, true);
  }

  /** One of several searches that together may cost no more than {@code shared} allows. */
  SolveSession(Problem problem, SolverSettings settings, Work shared) {
    this(problem, settings, true);
    this.shared = shared;
  }

  /**
   * @param inBlocks whether connected groups are solved block after block where that pays; without,
   *     each is solved whole, which is what tests and benchmarks compare with
   */
  SolveSession(Problem problem, SolverSettings settings, boolean inBlocks) {
    this.settings = settings;
    this.inBlocks = inBlocks;
    prepare(problem);
  }

  private void prepare(Problem fresh) {
    problem = fresh;
    groups = new ArrayList<>();
    settled = new boolean[fresh.size()];
    int[] localOf = GroupSystem.noneOf(fresh);
    for (Group group : Group.split(fresh)) {
      groups.add(new BlockSolver(group, fresh, localOf, inBlocks));
      for (int v : group.variables()) {
        settled[v] = true;
      }
    }
  }

  /** As {@link #solve(double[], double[])} by quick steps alone; they may find nothing. */
  SolveReport solveQuickly(double[] start, double[] anchor) {
    groups.forEach(group -> group.setHasty(true));
    SolveReport report = solve(start, anchor);
    groups.forEach(group -> group.setHasty(false));
    return report;
  }

  /** Asks only whether ties and limits can hold, from {@code start}, no matter where. */
  SolveReport hold(double[] start) {
    groups.forEach(BlockSolver::holdAnywhere);
    return solve(start, start);
  }

  /** As {@link #hold} by plain steps from there alone; they may find nothing. */
  SolveReport holdNearby(double[] start) {
    groups.forEach(group -> group.setHasty(true));
    SolveReport found = hold(start);
    groups.forEach(group -> group.setHasty(false));
    return found;
  }

  /** Solves the problem the session has, from its start values. */
  public SolveReport solve() {
    return solve(problem.start(), problem.anchor());
  }

  /**
   * Solves another problem, from its start values; quick when its structure is that of the last
   * one.
   */
  public SolveReport solve(Problem next) {
    take(next);
    return solve();
  }

  /** Solves another problem from values of our own instead of its start and anchor values. */
  public SolveReport solve(Problem next, double[] start, double[] anchor) {
    take(next);
    return solve(start, anchor);
  }

  private void take(Problem next) {
    if (sameStructure(problem, next)) {
      problem = next;
      for (BlockSolver group : groups) {
        group.bind(next);
      }
    } else {
      prepare(next);
    }
  }

  /**
   * Solves the problem the session has.
   *
   * @param start values to begin at, of all variables, finite
   * @param anchor values to stay near to
   */
  public SolveReport solve(double[] start, double[] anchor) {
    double[] x = start.clone();
    for (int i = 0; i < x.length; i++) {
      if (!Double.isFinite(x[i]) || !Double.isFinite(anchor[i])) {
        throw new IllegalArgumentException(
            "start and anchor values must be finite; variable '"
                + problem.variables().get(i).name()
                + "' is not");
      }
      if (!settled[i] && !problem.variables().get(i).fixed()) {
        x[i] = anchor[i];
      }
    }
    double[] begin = x.clone();
    SolveStatus status = SolveStatus.SOLVED;
    int iterations = 0;
    List<String> shaken = new ArrayList<>();
    List<String> turned = new ArrayList<>();
    inOrder = 0;
    Work work = shared != null ? shared : new Work(settings.workAllowed());
    for (BlockSolver group : groups) {
      group.charge(work);
      status = worse(status, group.solve(begin, x, anchor, settings));
      iterations += group.iterations();
      inOrder += group.wasInBlocks() ? 1 : 0;
      if (group.wasShaken()) {
        for (int v : group.system().group.variables()) {
          shaken.add(problem.variables().get(v).name());
        }
      }
      double[] after = new double[group.system().watch.count()];
      group.system().watch.bends(x, after);
      for (int pin : group.system().watch.turnedPins(group.bendAtBegin(), after)) {
        turned.add(problem.variables().get(pin).name());
      }
    }
    return report(x, status, iterations, work.done(), shaken, turned);
  }

  /** How many groups the last solve got by their blocks. */
  int solvedInBlocks() {
    return inOrder;
  }

  private SolveReport report(
      double[] x,
      SolveStatus status,
      int iterations,
      long work,
      List<String> shaken,
      List<String> turned) {
    double worst = 0;
    boolean[] tieFails = new boolean[problem.ties().size()];
    double[] shortBy = new double[problem.limits().size()];
    boolean[] active = new boolean[problem.limits().size()];
    for (BlockSolver solver : groups) {
      GroupSystem system = solver.system();
      system.rows.evaluate(x, system.ties);
      system.limits.evaluate(x);
      for (int i = 0; i < system.ties; i++) {
        // the user's own millimetres, not those of the pins that would have to move
        worst = Math.max(worst, sayable(Math.abs(system.rows.ownMm(i))));
        tieFails[system.group.tieRows()[i][0]] |=
            sayable(Math.abs(system.rows.missMm(i))) > settings.tieToleranceMm();
      }
      for (int i = 0; i < system.limits.count; i++) {
        double gap = system.limits.missMm(i);
        int limit = system.group.limitRows()[i][0];
        if (!(gap >= -settings.tieToleranceMm())) {
          shortBy[limit] = Math.max(shortBy[limit], sayable(-system.limits.ownMm(i)));
        } else if (gap <= settings.tieToleranceMm()) {
          active[limit] = true;
        }
      }
    }
    List<LimitFailure> failures = new ArrayList<>();
    for (int i = 0; i < shortBy.length; i++) {
      if (shortBy[i] > 0) {
        failures.add(new LimitFailure(problem.limits().get(i).name(), shortBy[i]));
      }
    }
    failures.sort(
        Comparator.comparingDouble((LimitFailure f) -> -f.shortfallMm())
            .thenComparing(LimitFailure::limit));
    List<String> activeNames = new ArrayList<>();
    for (int i = 0; i < active.length; i++) {
      if (active[i] && shortBy[i] == 0) {
        activeNames.add(problem.limits().get(i).name());
      }
    }
    List<String> tieNames = new ArrayList<>();
    for (int i = 0; i < tieFails.length; i++) {
      if (tieFails[i]) {
        tieNames.add(problem.ties().get(i).name());
      }
    }
    SolveStatus verdict = status;
    if (status.holds() && !tieNames.isEmpty()) {
      verdict = SolveStatus.NOT_DECIDED;
    } else if (status.holds() && !failures.isEmpty()) {
      verdict = SolveStatus.LIMIT_FAILS;
    }
    return new SolveReport(
        verdict,
        x,
        iterations,
        work,
        worst,
        failures,
        activeNames,
        tieNames,
        shaken,
        turned,
        java.util.Optional.empty());
  }

  /** A relation that gives no number is missed by as much as can be said. */
  private static double sayable(double missMm) {
    return Double.isFinite(missMm) ? missMm : Double.MAX_VALUE;
  }

  /** The verdict that the whole takes from its groups. */
  private static SolveStatus worse(SolveStatus a, SolveStatus b) {
    return rank(a) >= rank(b) ? a : b;
  }

  private static int rank(SolveStatus status) {
    return switch (status) {
      case SOLVED -> 0;
      case SOLVED_ROUGHLY -> 1;
      case LIMIT_FAILS -> 2;
      case NOT_DECIDED -> 3;
      case CONTRADICTS -> 4;
    };
  }

  private static boolean sameStructure(Problem a, Problem b) {
    if (a == b) {
      return true;
    }
    if (a.size() != b.size()
        || a.ties().size() != b.ties().size()
        || a.limits().size() != b.limits().size()
        || a.wishes().size() != b.wishes().size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.variables().get(i).fixed() != b.variables().get(i).fixed()
          || a.variables().get(i).scale() != b.variables().get(i).scale()) {
        return false;
      }
    }
    for (int i = 0; i < a.ties().size(); i++) {
      if (differ(a.ties().get(i).relations(), b.ties().get(i).relations())) {
        return false;
      }
    }
    for (int i = 0; i < a.limits().size(); i++) {
      if (differ(a.limits().get(i).gaps(), b.limits().get(i).gaps())) {
        return false;
      }
    }
    for (int i = 0; i < a.wishes().size(); i++) {
      if (differ(a.wishes().get(i).residual(), b.wishes().get(i).residual())) {
        return false;
      }
    }
    return true;
  }

  private static boolean differ(List<Relation> a, List<Relation> b) {
    if (a.size() != b.size()) {
      return true;
    }
    for (int k = 0; k < a.size(); k++) {
      if (differ(a.get(k), b.get(k))) {
        return true;
      }
    }
    return false;
  }

  private static boolean differ(Relation a, Relation b) {
    return a != b
        && (a instanceof Link != b instanceof Link || !Arrays.equals(a.variables(), b.variables()));
  }
}
