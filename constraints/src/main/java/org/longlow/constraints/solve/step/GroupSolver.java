package org.longlow.constraints.solve.step;

import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;

/**
 * Finds the position of one group: quick Newton steps where they contract, else restoration and
 * descent on the ties.
 *
 * <p>Quick: each step goes to the point nearest the anchor on the linearised ties, limits and
 * wishes. While the steps shrink well this ends at the nearest solution after a few of them.
 * Otherwise the group is first restored to its ties (see {@link Restoration}) and then moved along
 * them ({@link Descent}) until nothing nearer can be found.
 */
public final class GroupSolver {
  private static final int QUICK_STEPS = 16;
  private static final int COSTLY_QUICK_STEPS = 6;
  private static final double QUICK_CONTRACTION = 0.5;
  private static final double AIM_SHARE = 0.01;
  private static final double ROUNDING = 1e3;
  private static final double NEARNESS_SHARE = 1e-11;
  private static final int LIMIT_SHARE = 3;
  private static final int ONWARD_STEPS = 4;

  private final GroupSystem system;
  private Problem problem;
  private final Restoration restoration;
  private final Attempts attempts;
  private final Descent descent;
  private final LeastBroken leastBroken;
  private final double[] begin;
  private final double[] anchor;
  private final double[] target;
  private final double[] bendAtBegin;
  private final double[] bendAtEnd;
  private double aimMm;
  private int iterations;
  private boolean shaken;

  /** Whether ties and limits hold where the work allowed came to its end. */
  private boolean heldAtTheEnd;

  private boolean anywhere;
  private boolean hasty;
  private boolean brief;

  /**
   * @param problem that the system is of
   */
  public GroupSolver(GroupSystem system, Problem problem) {
    this.system = system;
    this.problem = problem;
    restoration = new Restoration(system, true);
    attempts = new Attempts(system, restoration);
    Restoration plain = new Restoration(system, false);
    descent = new Descent(system, plain);
    leastBroken = new LeastBroken(system, plain);
    begin = new double[system.n];
    anchor = new double[system.n];
    target = new double[system.n];
    bendAtBegin = new double[system.watch.count()];
    bendAtEnd = new double[system.watch.count()];
  }

  /** Takes the relations and weights of another problem of the same structure. */
  public void bind(Problem next) {
    problem = next;
    system.bind(next);
  }

  public GroupSystem system() {
    return system;
  }

  /** Whether from now on quick steps must do, or else nothing is found. */
  public void setHasty(boolean value) {
    hasty = value;
  }

  /** Whether from now on no long search is made where limits are costly. */
  public void setBrief(boolean value) {
    brief = value;
  }

  /** Asks from now on only whether ties and limits can hold, no matter where. */
  public void holdAnywhere() {
    anywhere = true;
  }

  public int iterations() {
    return iterations;
  }

  public boolean wasShaken() {
    return shaken;
  }

  public double[] bendAtBegin() {
    return bendAtBegin;
  }

  /**
   * Solves for the variables of the group in place.
   *
   * @param x values of all variables of the problem
   * @param anchorAll values to stay near to, of all variables
   */
  public SolveStatus solve(double[] x, double[] anchorAll, SolverSettings asked) {
    return solve(x, anchorAll, asked, 0);
  }

  /**
   * As {@link #solve(double[], double[], SolverSettings)} where relations read variables of others.
   *
   * @param least size of the largest value they read, at least
   */
  public SolveStatus solve(double[] x, double[] anchorAll, SolverSettings asked, double least) {
    iterations = 0;
    shaken = false;
    heldAtTheEnd = false;
    int[] variables = system.group.variables();
    double largest = least;
    for (int j = 0; j < system.n; j++) {
      begin[j] = x[variables[j]];
      anchor[j] = anchorAll[variables[j]] / system.rows.scaleOf(j);
      largest = Math.max(largest, Math.abs(begin[j]));
    }
    aimMm = aimMm(asked, largest);
    double near = nearnessMm(asked, largest);
    SolverSettings settings = near > asked.nearnessMm() ? asked.withNearnessMm(near) : asked;
    system.watch.bends(x, bendAtBegin);
    Arrays.fill(system.rows.weight, 1);
    Arrays.fill(system.limits.weight, 1);
    boolean finite = system.rows.evaluate(x) & system.limits.evaluate(x);
    if (finite) {
      system.rows.equilibrate(system.ties);
      system.limits.equilibrate(system.limits.count);
      if (!anywhere
          && ((system.hasFewWishes() && wishing(x, settings))
              || quick(x, settings)
              || (!hasty && onward(x, settings)))) {
        return SolveStatus.SOLVED;
      }
      if (heldAtTheEnd) {
        return SolveStatus.SOLVED_ROUGHLY;
      }
      system.put(begin, x);
      if (hasty && anywhere) {
        boolean holds =
            restoration.run(x, aimMm, settings.maxIterations(), true, false)
                == Restoration.End.HOLDS;
        iterations += restoration.steps();
        return holds ? SolveStatus.SOLVED : SolveStatus.NOT_DECIDED;
      }
      if (hasty || (brief && system.isCostly())) {
        return SolveStatus.NOT_DECIDED;
      }
    }
    return thorough(x, anchorAll, settings, finite);
  }

  /** What ties are aimed at among values up to {@code largest}, mm. */
  public static double aimMm(SolverSettings asked, double largest) {
    return Math.max(AIM_SHARE * asked.tieToleranceMm(), Math.min(64 * Math.ulp(largest), 1e-6));
  }

  /**
   * Length of a step that no longer counts, mm: coordinates of 100 m carry rounding that no
   * nearness of 1e-7 mm can be told through.
   */
  public static double nearnessMm(SolverSettings asked, double largest) {
    return Math.max(asked.nearnessMm(), NEARNESS_SHARE * largest);
  }

  /** Quick steps to the wishes first and near the anchor then; where that fails, x is as it was. */
  private boolean wishing(double[] x, SolverSettings settings) {
    int[] variables = system.group.variables();
    double before = Double.POSITIVE_INFINITY;
    boolean contracts = true;
    double slowest = 0;
    for (int k = 0; k < QUICK_STEPS && contracts; k++) {
      iterations++;
      for (int j = 0; j < system.n; j++) {
        target[j] = anchor[j] - x[variables[j]] / system.rows.scaleOf(j);
      }
      if (!system.wishingStep(target, k > 0)) {
        break;
      }
      double longest = 0;
      for (int j = 0; j < system.n; j++) {
        longest = Math.max(longest, Math.abs(system.step[j]));
        x[variables[j]] += system.step[j] * system.rows.scaleOf(j);
      }
      contracts = longest <= QUICK_CONTRACTION * before;
      // what is left to go after this step, if it shrinks as it did when it shrank least
      slowest = k == 0 ? 0 : Math.max(slowest, longest / before);
      double left = contracts && k > 1 ? longest * slowest : longest;
      before = longest;
      if (!(system.rows.evaluate(x) & system.limits.evaluate(x))) {
        break;
      }
      // rounding alone may keep the steps from shrinking further
      double arrived = (contracts ? 1 : ROUNDING) * settings.nearnessMm();
      if (left <= arrived && restoration.holds(aimMm, true)) {
        if (!system.watch.turned(bendAtBegin, bendsNow(x))) {
          return true;
        }
        break;
      }
    }
    system.put(begin, x);
    system.rows.evaluate(x);
    system.limits.evaluate(x);
    return false;
  }

  private boolean quick(double[] x, SolverSettings settings) {
    int[] variables = system.group.variables();
    double[] home = anchor.clone();
    system.measureWishes();
    system.limitStep.reset();
    double before = Double.POSITIVE_INFINITY;
    double wandered = 0;
    int rounds = 0;
    int most = system.hasCostlyWishes() ? COSTLY_QUICK_STEPS : QUICK_STEPS;
    for (int k = 0; k < most; k++) {
      if (k > 0 && !(system.rows.evaluate(x) & system.limits.evaluate(x))) {
        return false;
      }
      if (before <= settings.nearnessMm() && restoration.holds(aimMm, true)) {
        if (!system.hasWishes() || wandered <= settings.nearnessMm() || rounds >= 8) {
          return !system.watch.turned(bendAtBegin, bendsNow(x));
        }
        // Take away the pull of the anchor against the wishes: stay near where we are instead.
        rounds++;
        for (int j = 0; j < system.n; j++) {
          home[j] = x[variables[j]] / system.rows.scaleOf(j);
        }
        wandered = 0;
        before = Double.POSITIVE_INFINITY;
      }
      iterations++;
      for (int j = 0; j < system.n; j++) {
        target[j] = home[j] - x[variables[j]] / system.rows.scaleOf(j);
      }
      system.factor(0, true);
      system.nearingStep(target, k > 0);
      double longest = 0;
      for (int j = 0; j < system.n; j++) {
        longest = Math.max(longest, Math.abs(system.step[j]));
      }
      if (!(longest <= Math.max(QUICK_CONTRACTION * before, settings.nearnessMm()))) {
        // Where a layout is long and slender, rounding of the ties alone keeps the steps from
        // shrinking further.
        if (!(longest <= ROUNDING * settings.nearnessMm()) || !restoration.holds(aimMm, true)) {
          return false;
        }
        return !system.watch.turned(bendAtBegin, bendsNow(x));
      }
      for (int j = 0; j < system.n; j++) {
        x[variables[j]] += system.step[j] * system.rows.scaleOf(j);
      }
      before = longest;
      wandered = Math.max(wandered, longest);
    }
    return false;
  }

  /** From where quick steps ceased to shrink: they have mostly come near. */
  private boolean onward(double[] x, SolverSettings settings) {
    if (restoration.run(x, aimMm, ONWARD_STEPS, true, true) != Restoration.End.HOLDS) {
      return false;
    }
    iterations += restoration.steps();
    if (system.watch.turned(bendAtBegin, bendsNow(x))) {
      return false;
    }
    boolean nearest = descent.run(x, anchor, settings, aimMm);
    iterations += descent.steps();
    boolean turned = system.watch.turned(bendAtBegin, bendsNow(x));
    heldAtTheEnd = !turned && system.work().isSpent();
    return nearest && !turned;
  }

  private double[] bendsNow(double[] x) {
    system.watch.bends(x, bendAtEnd);
    return bendAtEnd;
  }

  private SolveStatus thorough(
      double[] x, double[] anchorAll, SolverSettings settings, boolean finite) {
    boolean limited = system.limits.count > 0;
    boolean keepTurns = settings.keepTurns() && system.watch.count() > 0;
    List<Try> plain = Try.plain(keepTurns);
    List<Try> all = Try.all(keepTurns, settings.restarts());
    Restoration.End end =
        finite ? restore(x, settings, limited, limited ? plain : all) : Restoration.End.STUCK;
    if (end != Restoration.End.HOLDS && system.isCostly()) {
      SolveStatus soft = softly(x, anchorAll, settings);
      if (soft != SolveStatus.SOLVED) {
        return soft;
      }
    } else if (end != Restoration.End.HOLDS && limited) {
      // What the ties alone allow is cheaper to ask than more of both, and may be all the answer.
      end = restoration.run(x, aimMm, settings.maxIterations(), false, false);
      if (end != Restoration.End.HOLDS) {
        system.put(begin, x);
        end = restore(x, settings, false, all);
      }
      if (end == Restoration.End.HOLDS && !meetLimits(x, settings)) {
        return system.work().isSpent() ? SolveStatus.NOT_DECIDED : SolveStatus.LIMIT_FAILS;
      }
    }
    if (end != Restoration.End.HOLDS && !system.isCostly()) {
      boolean open = end == Restoration.End.RAN_OUT || system.work().isSpent();
      return open ? SolveStatus.NOT_DECIDED : SolveStatus.CONTRADICTS;
    }
    if (anywhere) {
      return SolveStatus.SOLVED;
    }
    boolean nearest = descent.run(x, anchor, settings, aimMm);
    iterations += descent.steps();
    return nearest ? SolveStatus.SOLVED : SolveStatus.SOLVED_ROUGHLY;
  }

  /** Where costly limits fail least while all else is kept; SOLVED if they hold there too. */
  private SolveStatus softly(double[] x, double[] anchorAll, SolverSettings settings) {
    system.put(begin, x);
    Softened soft = new Softened(system.group, problem, system.work());
    GroupSolver inner = new GroupSolver(soft.system(), soft.problem());
    SolveStatus found = inner.solve(x, anchorAll, settings);
    iterations += inner.iterations();
    shaken |= inner.wasShaken();
    if (!found.holds()) {
      return found;
    }
    double[] least = system.take(x);
    if (restoration.run(x, aimMm, settings.maxIterations(), true, false) == Restoration.End.HOLDS) {
      return SolveStatus.SOLVED;
    }
    system.put(least, x);
    return system.work().isSpent() ? SolveStatus.NOT_DECIDED : SolveStatus.LIMIT_FAILS;
  }

  /** From where the ties hold to where the limits do too, or to where they fail least. */
  private boolean meetLimits(double[] x, SolverSettings settings) {
    boolean met = leastBroken.run(x, settings, aimMm);
    iterations += leastBroken.steps();
    if (!met && !system.work().isSpent()) {
      double[] least = system.take(x);
      List<Try> shaken = Try.shaken(settings.restarts() / LIMIT_SHARE);
      met = restore(x, settings, true, shaken) == Restoration.End.HOLDS;
      if (!met) {
        system.put(least, x);
      }
    }
    return met;
  }

  /** As {@link Attempts#restore} from the beginning. */
  private Restoration.End restore(
      double[] x, SolverSettings settings, boolean withLimits, List<Try> tries) {
    Restoration.End end = attempts.restore(x, begin, aimMm, settings, withLimits, tries);
    iterations += attempts.steps();
    shaken |= attempts.wasShaken();
    return end;
  }
}
