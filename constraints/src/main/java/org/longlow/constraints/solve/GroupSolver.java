package org.longlow.constraints.solve;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Finds the position of one group: quick Newton steps where they contract, else restoration and
 * descent on the ties.
 *
 * <p>Quick: each step goes to the point nearest the anchor on the linearised ties, limits and
 * wishes. While the steps shrink well this ends at the nearest solution after a few of them.
 * Otherwise the group is first restored to its ties (see {@link Restoration}) and then moved along
 * them ({@link Descent}) until nothing nearer can be found.
 */
final class GroupSolver {
  private static final int QUICK_STEPS = 16;
  private static final int COSTLY_QUICK_STEPS = 6;
  private static final double QUICK_CONTRACTION = 0.5;
  private static final double AIM_SHARE = 0.01;
  private static final double ROUNDING = 1e3;
  private static final double NEARNESS_SHARE = 1e-11;
  private static final int ONE_TIE_STEPS = 30;
  private static final int LIMIT_SHARE = 3;
  private static final int ONWARD_STEPS = 4;

  private final GroupSystem system;
  private Problem problem;
  private final Restoration restoration;
  private final Descent descent;
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
  private SolveStatus status;

  /**
   * @param problem that the system is of
   */
  GroupSolver(GroupSystem system, Problem problem) {
    this.system = system;
    this.problem = problem;
    restoration = new Restoration(system, true);
    descent = new Descent(system, new Restoration(system, false));
    begin = new double[system.n];
    anchor = new double[system.n];
    target = new double[system.n];
    bendAtBegin = new double[system.watch.count()];
    bendAtEnd = new double[system.watch.count()];
  }

  /** Takes the relations and weights of another problem of the same structure. */
  void bind(Problem next) {
    problem = next;
    system.bind(next);
  }

  GroupSystem system() {
    return system;
  }

  /** Whether from now on quick steps must do, or else nothing is found. */
  void setHasty(boolean value) {
    hasty = value;
  }

  /** Whether from now on no long search is made where limits are costly. */
  void setBrief(boolean value) {
    brief = value;
  }

  /** Asks from now on only whether ties and limits can hold, no matter where. */
  void holdAnywhere() {
    anywhere = true;
  }

  int iterations() {
    return iterations;
  }

  boolean wasShaken() {
    return shaken;
  }

  SolveStatus status() {
    return status;
  }

  double[] bendAtBegin() {
    return bendAtBegin;
  }

  /**
   * Solves for the variables of the group in place.
   *
   * @param x values of all variables of the problem
   * @param anchorAll values to stay near to, of all variables
   */
  SolveStatus solve(double[] x, double[] anchorAll, SolverSettings asked) {
    return solve(x, anchorAll, asked, 0);
  }

  /**
   * As {@link #solve(double[], double[], SolverSettings)} where relations read variables of others.
   *
   * @param least size of the largest value they read, at least
   */
  SolveStatus solve(double[] x, double[] anchorAll, SolverSettings asked, double least) {
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
      if (!anywhere && (quick(x, settings) || (!hasty && onward(x, settings)))) {
        return status = SolveStatus.SOLVED;
      }
      if (heldAtTheEnd) {
        return status = SolveStatus.SOLVED_ROUGHLY;
      }
      put(begin, x);
      if (hasty && anywhere) {
        boolean holds =
            restoration.run(x, aimMm, settings.maxIterations(), true, false)
                == Restoration.End.HOLDS;
        iterations += restoration.steps();
        return status = holds ? SolveStatus.SOLVED : SolveStatus.NOT_DECIDED;
      }
      if (hasty || (brief && system.isCostly())) {
        return status = SolveStatus.NOT_DECIDED;
      }
    }
    return status = thorough(x, anchorAll, settings, finite);
  }

  /** What ties are aimed at among values up to {@code largest}, mm. */
  static double aimMm(SolverSettings asked, double largest) {
    return Math.max(AIM_SHARE * asked.tieToleranceMm(), Math.min(64 * Math.ulp(largest), 1e-6));
  }

  /**
   * Length of a step that no longer counts, mm: coordinates of 100 m carry rounding that no
   * nearness of 1e-7 mm can be told through.
   */
  static double nearnessMm(SolverSettings asked, double largest) {
    return Math.max(asked.nearnessMm(), NEARNESS_SHARE * largest);
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
    int first = settings.keepTurns() && system.watch.count() > 0 ? 0 : 1;
    int last = settings.restarts() + 1;
    Restoration.End end =
        finite ? restore(x, settings, limited, first, limited ? 1 : last) : Restoration.End.STUCK;
    if (end != Restoration.End.HOLDS && system.isCostly()) {
      SolveStatus soft = softly(x, anchorAll, settings);
      if (soft != SolveStatus.SOLVED) {
        return soft;
      }
    } else if (end != Restoration.End.HOLDS && limited) {
      // What the ties alone allow is cheaper to ask than more of both, and may be all the answer.
      end = restoration.run(x, aimMm, settings.maxIterations(), false, false);
      if (end != Restoration.End.HOLDS) {
        put(begin, x);
        end = restore(x, settings, false, first, last);
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
    put(begin, x);
    Softened soft = new Softened(system.group, problem, system.work());
    GroupSolver inner = new GroupSolver(soft.system(), soft.problem());
    SolveStatus found = inner.solve(x, anchorAll, settings);
    iterations += inner.iterations();
    shaken |= inner.wasShaken();
    if (!found.holds()) {
      return found;
    }
    double[] least = take(x);
    if (restoration.run(x, aimMm, settings.maxIterations(), true, false) == Restoration.End.HOLDS) {
      return SolveStatus.SOLVED;
    }
    put(least, x);
    return system.work().isSpent() ? SolveStatus.NOT_DECIDED : SolveStatus.LIMIT_FAILS;
  }

  /** From where the ties hold to where the limits do too, or to where they fail least. */
  private boolean meetLimits(double[] x, SolverSettings settings) {
    boolean met = descent.leastLimitFailure(x, settings, aimMm);
    iterations += descent.steps();
    if (!met && !system.work().isSpent()) {
      double[] least = take(x);
      int last = settings.restarts() / LIMIT_SHARE + 1;
      met = restore(x, settings, true, 2, last) == Restoration.End.HOLDS;
      if (!met) {
        put(least, x);
      }
    }
    return met;
  }

  /**
   * Restores with turns kept, then without, then from shaken starts, some of them taking the ties
   * in one after the other; leaves the best attempt in x.
   *
   * @param first the first attempt: 0 keeps turns, 1 does not, the others shake
   */
  private Restoration.End restore(
      double[] x, SolverSettings settings, boolean withLimits, int first, int last) {
    double[] bestX = null;
    double best = Double.POSITIVE_INFINITY;
    Restoration.End bestEnd = Restoration.End.STUCK;
    double extent = 0;
    for (int attempt = first; attempt <= last && !system.work().isSpent(); attempt++) {
      if (attempt == 2) {
        extent = extent(best);
      }
      if (attempt == 1 && first == 0 && !restoration.wasHeldBack()) {
        continue; // without the guard it would go the same way
      }
      boolean fromBest = (attempt == 2 || attempt == 4) && bestX != null;
      if (attempt > 0) {
        put(fromBest ? bestX : begin, x);
      }
      boolean[] failing = attempt == 4 ? failing(x, best) : null;
      boolean shake = attempt >= 2 && attempt != 3;
      if (shake) {
        shake(x, extent * (fromBest ? 0.05 : 0.2 * (1 + attempt % 5)), attempt);
      }
      if (failing != null) {
        System.arraycopy(failing, 0, system.tieOn, 0, system.ties);
        restoration.run(x, aimMm, settings.maxIterations(), false, false);
        iterations += restoration.steps();
        Arrays.fill(system.tieOn, true);
      } else if (attempt >= 3 && attempt % 2 == 1) {
        takeInOneByOne(x, attempt);
      }
      Restoration.End end =
          restoration.run(x, aimMm, settings.maxIterations(), withLimits, attempt == 0);
      iterations += restoration.steps();
      if (end == Restoration.End.HOLDS) {
        shaken |= shake;
        return end;
      }
      double miss = miss(x, withLimits);
      if (miss < best * (1 - 1e-6)) {
        best = miss;
        bestX = take(x);
        bestEnd = end;
      }
    }
    if (bestX != null) {
      put(bestX, x);
    }
    return bestEnd;
  }

  /**
   * Rows that are off at x by a share of the whole that counts; the rest may only have stood in the
   * way.
   */
  private boolean[] failing(double[] x, double miss) {
    boolean[] off = new boolean[system.ties];
    if (system.rows.evaluate(x, system.ties)) {
      for (int i = 0; i < system.ties; i++) {
        off[i] = Math.abs(system.rows.missMm(i)) > 1e-5 * miss;
      }
    }
    return off;
  }

  /**
   * Holds the ties row after row, as if they had been added one at a time: in their order, later in
   * others.
   */
  private void takeInOneByOne(double[] x, int attempt) {
    int[] order = new int[system.ties];
    Arrays.setAll(order, i -> i);
    if (attempt > 3) {
      SplittableRandom random = new SplittableRandom(attempt);
      for (int i = order.length - 1; i > 0; i--) {
        int j = random.nextInt(i + 1);
        int kept = order[i];
        order[i] = order[j];
        order[j] = kept;
      }
    }
    Arrays.fill(system.tieOn, false);
    for (int i : order) {
      if (system.work().isSpent()) {
        break;
      }
      system.tieOn[i] = true;
      if (restoration.run(x, 1e4 * aimMm, ONE_TIE_STEPS, false, false) != Restoration.End.HOLDS) {
        system.tieOn[i] = false;
      }
      iterations += restoration.steps();
    }
    Arrays.fill(system.tieOn, true);
  }

  /** How far the group spreads or is off, whichever is more, in scaled variables. */
  private double extent(double miss) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < system.n; j++) {
      double value = begin[j] / system.rows.scaleOf(j);
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    double off = Double.isInfinite(miss) ? 1 : miss;
    return Math.max(high - low, off);
  }

  /** Root of the sum of squares of what is missed, mm. */
  private double miss(double[] x, boolean withLimits) {
    if (!system.rows.evaluate(x, system.ties) || (withLimits && !system.limits.evaluate(x))) {
      return Double.POSITIVE_INFINITY;
    }
    double sum = 0;
    for (int i = 0; i < system.ties; i++) {
      sum += system.rows.missMm(i) * system.rows.missMm(i);
    }
    if (withLimits) {
      for (int i = 0; i < system.limits.count; i++) {
        double gap = Math.min(0, system.limits.missMm(i));
        sum += gap * gap;
      }
    }
    return Math.sqrt(sum);
  }

  /** Moves every variable of the group a little, the same way every time. */
  private void shake(double[] x, double amount, long seed) {
    SplittableRandom random = new SplittableRandom(0x10_1040L + seed);
    int[] variables = system.group.variables();
    for (int j = 0; j < system.n; j++) {
      x[variables[j]] += amount * (2 * random.nextDouble() - 1) * system.rows.scaleOf(j);
    }
  }

  private double[] take(double[] x) {
    double[] values = new double[system.n];
    for (int j = 0; j < system.n; j++) {
      values[j] = x[system.group.variables()[j]];
    }
    return values;
  }

  private void put(double[] values, double[] x) {
    for (int j = 0; j < system.n; j++) {
      x[system.group.variables()[j]] = values[j];
    }
  }
}
