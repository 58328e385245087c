package org.longlow.constraints.solve.linear;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.longlow.constraints.solve.problem.Work;

/**
 * Bends a step so that the linearised limits hold: a dual active-set method.
 *
 * <p>Given the minimiser p0 of a strictly convex quadratic under the ties and, for each limit, the
 * response u of the step to a unit push along its normal, finds multipliers mu &gt;= 0 with gap +
 * normal.p + C (mu - mu before) &gt;= 0, the product with mu being zero, for p = p0 + sum mu u.
 * Follows Goldfarb and Idnani (1983): take the most broken limit in, walk along the dual path, drop
 * any whose multiplier reaches zero first. The compliance C makes the dual strictly convex, so
 * limits that cannot hold together give a compromise instead of a failure.
 */
public final class LimitStep {
  /** What the step answers to a unit push along the normal of a limit. */
  @FunctionalInterface
  public interface Response {
    void fill(int limit, double[] response);
  }

  private static final double COMPLIANCE = 1e-12;

  /** From so many broken limits on they are taken in together. */
  private static final int MANY = 12;

  private final RowSet limits;
  private final int variables;
  private final double[][] response;
  private final boolean[] known;
  private final double[] multiplier;
  private final double[] shifted;
  private final double[] atStart;
  private int[] working = new int[8];
  private int size;

  /** Rows of the factor of the working set, the pivot last, and how many of them are valid. */
  private double[][] lower = new double[8][];

  private int factored;
  private Work work = Work.unbounded();

  public LimitStep(RowSet limits, int variables) {
    this.limits = limits;
    this.variables = variables;
    response = new double[limits.count][];
    known = new boolean[limits.count];
    multiplier = new double[limits.count];
    shifted = new double[limits.count];
    atStart = new double[limits.count];
  }

  /** Counts what is done from now on. */
  public void charge(Work other) {
    work = other;
  }

  /** Forgets which limits were active. */
  public void reset() {
    size = 0;
    Arrays.fill(multiplier, 0);
  }

  /** Multiplier of each limit after the last {@link #bend}. */
  public double[] multipliers() {
    return multiplier;
  }

  public int activeCount() {
    return size;
  }

  public int active(int k) {
    return working[k];
  }

  public double[] response(int limit) {
    return response[limit];
  }

  /**
   * Bends {@code p}.
   *
   * @param p the step without limits on entry, with limits on return
   * @param damping extra compliance, as for the ties, &gt;= 0
   * @param keepMultipliers whether the multipliers of last time take the load off the compliance
   * @return whether any limit is active
   */
  public boolean bend(double[] p, double damping, boolean keepMultipliers, Response answer) {
    int count = limits.count;
    if (count == 0) {
      return false;
    }
    Arrays.fill(known, false);
    factored = 0;
    for (int i = 0; i < count; i++) {
      double before = keepMultipliers ? multiplier[i] : 0;
      shifted[i] = limits.value[i] - compliance(i, damping) * before;
      atStart[i] = shifted[i] + limits.dot(i, p);
    }
    // Warm start: the limits of last time, less those that would have to pull.
    double[] mu = new double[Math.max(8, size + 1)];
    while (size > 0) {
      double[] target = target(damping, answer);
      int worst = -1;
      for (int k = 0; k < size; k++) {
        if (target[k] < 0 && (worst < 0 || target[k] < target[worst])) {
          worst = k;
        }
      }
      if (worst < 0) {
        System.arraycopy(target, 0, mu, 0, size);
        break;
      }
      drop(worst, mu);
    }
    mu = takeInMany(p, damping, answer, mu);
    int budget = 20 + 4 * count;
    double[] q = new double[variables];
    while (budget-- > 0) {
      work.addProducts((long) size * variables + limits.entry.length);
      System.arraycopy(p, 0, q, 0, variables);
      for (int k = 0; k < size; k++) {
        add(q, mu[k], response[working[k]]);
      }
      int enter = -1;
      double lowest = 0;
      for (int i = 0; i < count; i++) {
        double gap = shifted[i] + limits.dot(i, q);
        if (gap < -slack(i) && gap < lowest && !isWorking(i)) {
          lowest = gap;
          enter = i;
        }
      }
      if (enter < 0) {
        break;
      }
      if (size == working.length) {
        working = Arrays.copyOf(working, 2 * size);
      }
      if (size + 1 >= mu.length) {
        mu = Arrays.copyOf(mu, 2 * mu.length);
      }
      working[size] = enter;
      mu[size] = 0;
      size++;
      while (true) {
        double[] target = target(damping, answer);
        double share = 1;
        int block = -1;
        for (int k = 0; k < size; k++) {
          if (target[k] < 0) {
            double s = mu[k] / (mu[k] - target[k]);
            if (s < share) {
              share = s;
              block = k;
            }
          }
        }
        for (int k = 0; k < size; k++) {
          mu[k] += share * (target[k] - mu[k]);
        }
        if (block < 0) {
          break;
        }
        drop(block, mu);
      }
    }
    Arrays.fill(multiplier, 0);
    for (int k = 0; k < size; k++) {
      multiplier[working[k]] = mu[k];
      add(p, mu[k], response[working[k]]);
    }
    return size > 0;
  }

  /**
   * Where many limits are broken, takes them all in and then drops those that would have to pull,
   * instead of one after the other; what the working set then has is as good a place to go on from.
   *
   * @param p the step without limits
   * @return multipliers of the working set, with room for more
   */
  private double[] takeInMany(double[] p, double damping, Response answer, double[] mu) {
    double[] q = p.clone();
    for (int k = 0; k < size; k++) {
      add(q, mu[k], response[working[k]]);
    }
    int[] broken =
        IntStream.range(0, limits.count)
            .filter(i -> !isWorking(i) && shifted[i] + limits.dot(i, q) < -slack(i))
            .toArray();
    if (broken.length < MANY) {
      return mu;
    }
    working = Arrays.copyOf(working, Math.max(working.length, size + broken.length));
    System.arraycopy(broken, 0, working, size, broken.length);
    size += broken.length;
    double[] target = target(damping, answer);
    while (Arrays.stream(target).anyMatch(t -> t < 0)) {
      for (int k = size - 1; k >= 0; k--) {
        if (target[k] < 0) {
          drop(k, target);
        }
      }
      target = target(damping, answer);
    }
    return Arrays.copyOf(target, size + 8);
  }

  private double slack(int limit) {
    return 1e-11 * (1 + Math.abs(limits.value[limit]));
  }

  public double compliance(int i, double damping) {
    return (COMPLIANCE + damping) * Math.max(limits.square[i], 1e-6);
  }

  private boolean isWorking(int limit) {
    for (int k = 0; k < size; k++) {
      if (working[k] == limit) {
        return true;
      }
    }
    return false;
  }

  private void drop(int k, double[] mu) {
    for (int j = k; j + 1 < size; j++) {
      working[j] = working[j + 1];
      mu[j] = mu[j + 1];
    }
    size--;
    factored = Math.min(factored, k);
  }

  /**
   * Multipliers that close all gaps of the working set exactly. The factor L D L' of their matrix
   * is kept: one more limit is one more row of it, and one less spoils only the rows behind.
   */
  private double[] target(double damping, Response answer) {
    for (; factored < size; factored++) {
      appendRow(factored, damping, answer);
    }
    int k = size;
    double[] b = new double[k];
    for (int i = 0; i < k; i++) {
      double sum = -atStart[working[i]];
      for (int c = 0; c < i; c++) {
        sum -= lower[i][c] * b[c];
      }
      b[i] = sum;
    }
    for (int i = k - 1; i >= 0; i--) {
      double sum = b[i] / lower[i][i];
      for (int j = i + 1; j < k; j++) {
        sum -= lower[j][i] * b[j];
      }
      b[i] = sum;
    }
    work.addProducts((long) k * k);
    return b;
  }

  private void appendRow(int i, double damping, Response answer) {
    int limit = working[i];
    if (!known[limit]) {
      if (response[limit] == null) {
        response[limit] = new double[variables];
      }
      answer.fill(limit, response[limit]);
      known[limit] = true;
    }
    if (i >= lower.length) {
      lower = Arrays.copyOf(lower, Math.max(8, 2 * i));
    }
    double[] row = lower[i] != null ? lower[i] : new double[i + 1];
    lower[i] = row;
    for (int j = 0; j < i; j++) {
      double sum = limits.dot(limit, response[working[j]]);
      for (int c = 0; c < j; c++) {
        sum -= row[c] * lower[j][c] * lower[c][c];
      }
      row[j] = sum / lower[j][j];
    }
    double before = limits.dot(limit, response[limit]) + compliance(limit, damping);
    double d = before;
    for (int c = 0; c < i; c++) {
      d -= row[c] * row[c] * lower[c][c];
    }
    row[i] = Math.max(d, 1e-13 * Math.abs(before) + Double.MIN_NORMAL);
    work.addProducts((long) i * i);
  }

  /** Dense L D L' in place of the lower triangle; the solution replaces {@code b}. */
  public static void solveSymmetric(double[][] m, double[] b) {
    int k = b.length;
    for (int j = 0; j < k; j++) {
      double before = m[j][j];
      double d = before;
      for (int c = 0; c < j; c++) {
        d -= m[j][c] * m[j][c] * m[c][c];
      }
      m[j][j] = Math.max(d, 1e-13 * Math.abs(before) + Double.MIN_NORMAL);
      for (int i = j + 1; i < k; i++) {
        double s = m[i][j];
        for (int c = 0; c < j; c++) {
          s -= m[i][c] * m[j][c] * m[c][c];
        }
        m[i][j] = s / m[j][j];
      }
    }
    for (int i = 0; i < k; i++) {
      for (int c = 0; c < i; c++) {
        b[i] -= m[i][c] * b[c];
      }
    }
    for (int i = k - 1; i >= 0; i--) {
      b[i] /= m[i][i];
      for (int j = i + 1; j < k; j++) {
        b[i] -= m[j][i] * b[j];
      }
    }
  }

  private static void add(double[] to, double factor, double[] from) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * from[i];
    }
  }
}
