package org.longlow.constraints.solve.step;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.longlow.constraints.solve.linear.LimitStep;
import org.longlow.constraints.solve.linear.RowSet;
import org.longlow.constraints.solve.problem.SolverSettings;

/**
 * Moves a group along its ties to where its broken limits fail least: Gauss-Newton steps with the
 * broken limits as wishes, damped more where a step does not help.
 */
final class LeastBroken {
  private static final int COUNTING_ROUNDS = 8;

  /** As {@link Descent#COSTLY_PATIENCE} where a step costs little. */
  private static final int PATIENCE = 20;

  private static final double STALLED = 0.999;

  private final GroupSystem system;
  private final Restoration restoration;
  private final double[] from;
  private int steps;

  LeastBroken(GroupSystem system, Restoration restoration) {
    this.system = system;
    this.restoration = restoration;
    from = new double[system.n];
  }

  int steps() {
    return steps;
  }

  /**
   * From a layout whose ties hold to where the sum of squares of the broken limits is least;
   * whether all then hold.
   */
  boolean run(double[] x, SolverSettings settings, double aimMm) {
    steps = 0;
    int[] variables = system.group.variables();
    RowSet limits = system.limits;
    double damping = 1e-6;
    double[] slope = new double[system.n];
    double[] trialGaps = new double[limits.count];
    int refused = 0;
    int patience = system.isCostly() ? Descent.COSTLY_PATIENCE : PATIENCE;
    double stalled = system.isCostly() ? Descent.COSTLY_STALLED : STALLED;
    double checked = Double.POSITIVE_INFINITY;
    int taken = patience;
    for (int k = 0; k < settings.maxIterations() && refused < 30; k++) {
      if (system.work().isSpent() || !(system.rows.evaluate(x, system.ties) & limits.evaluate(x))) {
        return false;
      }
      double now = broken(limits.value);
      if (restoration.holds(Math.max(aimMm, settings.tieToleranceMm()), true)) {
        return true;
      }
      if (taken == patience) {
        if (now > stalled * checked) {
          break;
        }
        checked = now;
        taken = 0;
      }
      steps++;
      system.factor(0, false);
      // Gauss-Newton on the broken limits within the ties: they are the wishes here.
      double longest = brokenStep(damping, slope);
      if (longest <= settings.nearnessMm() * 1e-2) {
        break;
      }
      for (int j = 0; j < system.n; j++) {
        from[j] = x[variables[j]];
        x[variables[j]] += slope[j] * system.rows.scaleOf(j);
      }
      boolean accept =
          restoration.run(x, aimMm, Descent.RESTORE_STEPS, false, false) == Restoration.End.HOLDS
              && limits.values(x, 0, limits.count, trialGaps)
              && broken(trialGaps) < now * (1 - 1e-12);
      if (accept) {
        damping = Math.max(damping / 10, 1e-9);
        refused = 0;
        taken++;
        if (broken(trialGaps) > now * (1 - 1e-10)) {
          break;
        }
      } else {
        for (int j = 0; j < system.n; j++) {
          x[variables[j]] = from[j];
        }
        damping *= 8;
        refused++;
      }
    }
    return false;
  }

  private static double broken(double[] gaps) {
    double sum = 0;
    for (double g : gaps) {
      sum += g < 0 ? g * g : 0;
    }
    return sum;
  }

  /**
   * Step that mends broken limits as soft rows within the ties; returns its longest part. Limits
   * that the step would break count too, and those it would more than mend do not.
   */
  private double brokenStep(double damping, double[] out) {
    RowSet limits = system.limits;
    boolean[] counts = new boolean[limits.count];
    for (int i = 0; i < limits.count; i++) {
      counts[i] = limits.value[i] < 0;
    }
    for (int round = 0; round < COUNTING_ROUNDS; round++) {
      mend(counts, damping, out);
      boolean same = true;
      for (int i = 0; i < limits.count; i++) {
        boolean breaks = limits.value[i] + limits.dot(i, out) < 0;
        same &= breaks == counts[i];
        counts[i] = breaks;
      }
      if (same) {
        break;
      }
    }
    double longest = 0;
    for (double d : out) {
      longest = Math.max(longest, Math.abs(d));
    }
    return longest;
  }

  private void mend(boolean[] counts, double damping, double[] out) {
    RowSet limits = system.limits;
    int[] broken = IntStream.range(0, limits.count).filter(i -> counts[i]).toArray();
    int k = broken.length;
    double[][] response = new double[k][system.n];
    double[][] m = new double[k][k];
    double[] b = new double[k];
    for (int i = 0; i < k; i++) {
      limits.addRow(broken[i], 1, response[i]);
      system.project(response[i], response[i]);
      b[i] = -limits.value[broken[i]];
      for (int j = 0; j <= i; j++) {
        m[i][j] = limits.dot(broken[i], response[j]);
      }
      m[i][i] += damping * Math.max(limits.square[broken[i]], 1e-6);
    }
    system.work().addProducts((long) k * k * (k + system.n));
    LimitStep.solveSymmetric(m, b);
    Arrays.fill(out, 0);
    for (int j = 0; j < system.n; j++) {
      for (int i = 0; i < k; i++) {
        out[j] += b[i] * response[i][j];
      }
    }
  }
}
