package org.longlow.constraints.solve.step;

import java.util.Arrays;
import org.longlow.constraints.solve.linear.RowSet;

/**
 * Brings a group onto its ties and limits by damped least-change steps (Levenberg 1944, Marquardt
 * 1963).
 *
 * <p>Each step is the shortest that zeroes the linearised ties and keeps the linearised limits; it
 * is shortened by damping until it pays. Ends when everything holds, when no direction helps any
 * more, or when the steps allowed are used up.
 */
public final class Restoration {
  /** How a restoration ended. */
  public enum End {
    HOLDS,
    STUCK,
    RAN_OUT
  }

  /** The sum of squares counts as least when its gradient is this share of its root. */
  private static final double STATIONARY = 1e-6;

  /**
   * A run of so many steps that leaves more than this share of the sum of squares is going nowhere.
   */
  private static final int PATIENCE = 20;

  private static final double STALLED = 0.95;

  /** The same where each step is costly: what can hold is mostly reached within a dozen steps. */
  private static final int COSTLY_PATIENCE = 6;

  private static final double COSTLY_STALLED = 0.8;
  private static final int REWEIGH_EVERY = 10;

  /** Least share of a plain step that is tried before damping. */
  private static final double LEAST_SHARE = 1.0 / 16;

  private static final double COSTLY_LEAST_SHARE = 1.0 / 4;

  private final GroupSystem system;
  private final double[] trial;
  private final double[] tieTrial;
  private final double[] limitTrial;
  private final double[] bendBefore;
  private final double[] bendAfter;
  private final double[] slope;
  private final boolean reweighs;
  private int steps;
  private boolean heldBack;

  /** Whether the last step changed any value, and the sum of squares where it led. */
  private boolean stirred;

  private double reached;

  /**
   * @param reweighs whether rows whose gradient has changed its length much get a new weight on the
   *     way; not where multipliers must keep their meaning
   */
  public Restoration(GroupSystem system, boolean reweighs) {
    this.system = system;
    this.reweighs = reweighs;
    trial = new double[system.n];
    tieTrial = new double[system.rows.count];
    limitTrial = new double[system.limits.count];
    bendBefore = new double[system.watch.count()];
    bendAfter = new double[system.watch.count()];
    slope = new double[system.n];
  }

  /** Steps taken by the last run. */
  int steps() {
    return steps;
  }

  /** Whether the last run refused a step only because it leapt over straight. */
  boolean wasHeldBack() {
    return heldBack;
  }

  /**
   * Runs on the values of the group in {@code x}.
   *
   * @param aimMm a tie holds when it misses by no more
   * @param withLimits whether limits count
   * @param guarded whether steps that leap over straight are refused
   */
  public End run(double[] x, double aimMm, int most, boolean withLimits, boolean guarded) {
    RowSet rows = system.rows;
    RowSet limits = system.limits;
    int[] variables = system.group.variables();
    int n = system.n;
    double damping = 0;
    boolean watch = guarded && system.watch.count() > 0;
    system.restoringLimits.reset();
    heldBack = false;
    boolean fresh = true;
    int refused = 0;
    double checked = Double.POSITIVE_INFINITY;
    int checkedAt = 0;
    boolean costly = withLimits && system.isCostly();
    int patience = costly ? COSTLY_PATIENCE : PATIENCE;
    double stalled = costly ? COSTLY_STALLED : STALLED;
    for (steps = 0; steps <= most; ) {
      if (system.work().isSpent()) {
        return End.RAN_OUT;
      }
      if (fresh) {
        boolean finite = rows.evaluate(x, system.ties);
        if (withLimits) {
          finite &= limits.evaluate(x);
        }
        if (!finite) {
          return End.STUCK;
        }
        fresh = false;
        if (reweighs && steps % REWEIGH_EVERY == 0) {
          rows.equilibrate(system.ties);
        }
      }
      if (holds(aimMm, withLimits)) {
        return End.HOLDS;
      }
      double now = merit(rows.value, limits.value, withLimits);
      if (isStationary(now, withLimits)) {
        return End.STUCK;
      }
      if (reweighs && steps % REWEIGH_EVERY == 0 && steps - checkedAt < patience) {
        // The sum of squares has a new measure; give it time anew, but not for ever.
        checked = Math.max(checked, now);
      }
      if (steps - checkedAt >= patience) {
        if (now > stalled * checked) {
          return End.STUCK;
        }
        checked = now;
        checkedAt = steps;
      }
      if (steps == most) {
        return End.RAN_OUT;
      }
      steps++;
      system.factor(damping, false);
      system.restoringStep(damping, withLimits);
      double promised = now - promisedMerit(withLimits);
      for (int j = 0; j < n; j++) {
        trial[j] = x[variables[j]];
      }
      boolean accept = go(x, 1, now - 1e-3 * promised, now, withLimits, watch);
      boolean moved = stirred;
      if (accept) {
        damping = reached < 0.25 * now ? (damping < 1e-8 ? 0 : damping * 0.05) : damping * 0.5;
      }
      // Damping holds back the long smooth motions of a chain most of all; a plain step made
      // shorter
      // goes the same way.
      double least = costly ? COSTLY_LEAST_SHARE : LEAST_SHARE;
      for (double share = 0.5; !accept && moved && damping == 0 && share >= least; share *= 0.5) {
        accept = go(x, share, (1 - 0.5 * share) * now, now, withLimits, watch);
      }
      if (accept) {
        fresh = true;
        refused = 0;
      } else {
        for (int j = 0; j < n; j++) {
          x[variables[j]] = trial[j];
        }
        damping = Math.max(damping * 6, 1e-4);
        if (++refused > 40 || !moved) {
          return End.STUCK;
        }
      }
    }
    return End.RAN_OUT;
  }

  /**
   * Goes a share of the step from {@code trial}; whether that leaves no more than {@code most} of
   * the sum of squares, which was {@code now}, and leaps over nothing.
   */
  private boolean go(
      double[] x, double share, double most, double now, boolean withLimits, boolean watch) {
    int[] variables = system.group.variables();
    stirred = false;
    for (int j = 0; j < system.n; j++) {
      double next = trial[j] + share * system.step[j] * system.rows.scaleOf(j);
      stirred |= next != trial[j];
      x[variables[j]] = next;
    }
    if (!stirred
        || !system.rows.values(x, 0, system.ties, tieTrial)
        || (withLimits && !system.limits.values(x, 0, system.limits.count, limitTrial))) {
      return false;
    }
    reached = merit(tieTrial, limitTrial, withLimits);
    if (!(reached <= most && reached < now)) {
      return false;
    }
    boolean leaps = watch && leaps(x);
    heldBack |= leaps;
    return !leaps;
  }

  /** Whether the way from {@code trial} to x leaps over straight. */
  private boolean leaps(double[] x) {
    system.watch.bends(x, bendAfter);
    swap(x);
    system.watch.bends(x, bendBefore);
    swap(x);
    return system.watch.leaps(bendBefore, bendAfter);
  }

  private void swap(double[] x) {
    int[] variables = system.group.variables();
    for (int j = 0; j < system.n; j++) {
      double kept = x[variables[j]];
      x[variables[j]] = trial[j];
      trial[j] = kept;
    }
  }

  private double merit(double[] tie, double[] gap, boolean withLimits) {
    double sum = 0;
    for (int i = 0; i < system.ties; i++) {
      sum += system.tieOn[i] ? tie[i] * tie[i] : 0;
    }
    if (withLimits) {
      for (double g : gap) {
        sum += g < 0 ? g * g : 0;
      }
    }
    return sum;
  }

  private double promisedMerit(boolean withLimits) {
    double sum = 0;
    for (int i = 0; i < system.ties; i++) {
      if (system.tieOn[i]) {
        double r = system.rows.value[i] + system.rows.dot(i, system.step);
        sum += r * r;
      }
    }
    if (withLimits) {
      for (int i = 0; i < system.limits.count; i++) {
        double g = system.limits.value[i] + system.limits.dot(i, system.step);
        sum += g < 0 ? g * g : 0;
      }
    }
    return sum;
  }

  private boolean isStationary(double merit, boolean withLimits) {
    Arrays.fill(slope, 0);
    for (int i = 0; i < system.ties; i++) {
      if (system.tieOn[i]) {
        system.rows.addRow(i, system.rows.value[i], slope);
      }
    }
    if (withLimits) {
      for (int i = 0; i < system.limits.count; i++) {
        if (system.limits.value[i] < 0) {
          system.limits.addRow(i, system.limits.value[i], slope);
        }
      }
    }
    double sum = 0;
    for (double s : slope) {
      sum += s * s;
    }
    return sum <= STATIONARY * STATIONARY * merit;
  }

  /** Whether ties and, if wanted, limits hold at the point evaluated last. */
  boolean holds(double aimMm, boolean withLimits) {
    for (int i = 0; i < system.ties; i++) {
      if (system.tieOn[i] && !(Math.abs(system.rows.missMm(i)) <= aimMm)) {
        return false;
      }
    }
    if (withLimits) {
      for (int i = 0; i < system.limits.count; i++) {
        if (!(system.limits.missMm(i) >= -aimMm)) {
          return false;
        }
      }
    }
    return true;
  }
}
