package org.longlow.constraints.solve;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Several tries to bring a group onto its ties and limits: plainly, from shaken starts, with ties
 * taken in one after the other. The same tries every time.
 */
final class Attempts {
  private static final int ONE_TIE_STEPS = 30;

  private final GroupSystem system;
  private final Restoration restoration;
  private double[] begin;
  private double aimMm;
  private int steps;
  private boolean shaken;

  Attempts(GroupSystem system, Restoration restoration) {
    this.system = system;
    this.restoration = restoration;
  }

  /** Steps taken by the last run. */
  int steps() {
    return steps;
  }

  /** Whether the last run found its answer from a shaken start. */
  boolean wasShaken() {
    return shaken;
  }

  /**
   * Restores with turns kept, then without, then from shaken starts, some of them taking the ties
   * in one after the other; leaves the best attempt in x.
   *
   * @param from values of the group to begin at
   * @param aim a tie holds when it misses by no more, mm
   * @param first the first attempt: 0 keeps turns, 1 does not, the others shake
   */
  Restoration.End restore(
      double[] x,
      double[] from,
      double aim,
      SolverSettings settings,
      boolean withLimits,
      int first,
      int last) {
    begin = from;
    aimMm = aim;
    steps = 0;
    shaken = false;
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
        system.put(fromBest ? bestX : begin, x);
      }
      boolean[] failing = attempt == 4 ? failing(x, best) : null;
      boolean shake = attempt >= 2 && attempt != 3;
      if (shake) {
        shake(x, extent * (fromBest ? 0.05 : 0.2 * (1 + attempt % 5)), attempt);
      }
      if (failing != null) {
        System.arraycopy(failing, 0, system.tieOn, 0, system.ties);
        restoration.run(x, aimMm, settings.maxIterations(), false, false);
        steps += restoration.steps();
        Arrays.fill(system.tieOn, true);
      } else if (attempt >= 3 && attempt % 2 == 1) {
        takeInOneByOne(x, attempt);
      }
      Restoration.End end =
          restoration.run(x, aimMm, settings.maxIterations(), withLimits, attempt == 0);
      steps += restoration.steps();
      if (end == Restoration.End.HOLDS) {
        shaken |= shake;
        return end;
      }
      double miss = miss(x, withLimits);
      if (miss < best * (1 - 1e-6)) {
        best = miss;
        bestX = system.take(x);
        bestEnd = end;
      }
    }
    if (bestX != null) {
      system.put(bestX, x);
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
      steps += restoration.steps();
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
}
