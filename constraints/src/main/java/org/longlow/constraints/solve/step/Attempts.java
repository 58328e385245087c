package org.longlow.constraints.solve.step;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.longlow.constraints.solve.problem.SolverSettings;

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
   * Goes through tries until one holds; leaves the best in x.
   *
   * @param from values of the group to begin at
   * @param aim a tie holds when it misses by no more, mm
   */
  Restoration.End restore(
      double[] x,
      double[] from,
      double aim,
      SolverSettings settings,
      boolean withLimits,
      List<Try> tries) {
    begin = from;
    aimMm = aim;
    steps = 0;
    shaken = false;
    double[] bestX = null;
    double best = Double.POSITIVE_INFINITY;
    Restoration.End bestEnd = Restoration.End.STUCK;
    double extent = Double.NaN;
    Try before = null;
    for (Try way : tries) {
      if (system.work().isSpent()) {
        break;
      }
      boolean same = before != null && before.keepsTurns() && !restoration.wasHeldBack();
      before = way;
      if (same) {
        continue; // without the guard it would go the same way
      }
      boolean fromBest = way.fromBest() && bestX != null;
      system.put(fromBest ? bestX : begin, x);
      boolean[] failing = way.ties() == Try.Ties.FAILING_LAST ? failing(x, best) : null;
      boolean shake = way.shakeShare() > 0;
      if (shake) {
        extent = Double.isNaN(extent) ? extent(best) : extent;
        double share = way.fromBest() && !fromBest ? Try.farShare(way.seed()) : way.shakeShare();
        shake(x, extent * share, way.seed());
      }
      switch (way.ties()) {
        case FAILING_LAST -> without(failing, x, settings);
        case IN_THEIR_ORDER, IN_ANY_ORDER -> takeInOneByOne(x, way);
        case ALL_AT_ONCE -> {}
      }
      Restoration.End end =
          restoration.run(x, aimMm, settings.maxIterations(), withLimits, way.keepsTurns());
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

  /** Restores the ties but those that fail. */
  private void without(boolean[] failing, double[] x, SolverSettings settings) {
    System.arraycopy(failing, 0, system.tieOn, 0, system.ties);
    restoration.run(x, aimMm, settings.maxIterations(), false, false);
    steps += restoration.steps();
    Arrays.fill(system.tieOn, true);
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

  /** Holds the ties row after row, as if they had been added one at a time. */
  private void takeInOneByOne(double[] x, Try way) {
    int[] order = new int[system.ties];
    Arrays.setAll(order, i -> i);
    if (way.ties() == Try.Ties.IN_ANY_ORDER) {
      SplittableRandom random = new SplittableRandom(way.seed());
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
