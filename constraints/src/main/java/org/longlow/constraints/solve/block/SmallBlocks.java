package org.longlow.constraints.solve.block;

import java.util.List;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;

/**
 * Newton's method on small square blocks, dense.
 *
 * <p>A pin on two bars is a system of two; forming the normal equations of such blocks one by one
 * costs more than it solves. Rows are made 1 long and eliminated with row exchange. The first step
 * is taken from the start of all blocks, with what earlier blocks have moved since put in to first
 * order: a pin on bars is carried along when they move far, instead of being looked for from where
 * they were. Where steps do not shrink as those of Newton's method near an answer do, the block is
 * left to others.
 *
 * <p>Holds workspace, so one instance serves one thread.
 */
final class SmallBlocks {
  /**
   * A block counts as regular when each row brings at least this share of its length that is new.
   * Well above what the compliance of ties (1e-12 of the square) can blur.
   */
  static final double NEW_SHARE = 1e-4;

  /** Up to so many unknowns elimination without regard to zeros is the quickest. */
  static final int MOST = 12;

  /** Answer of {@link #solve} where the steps do not settle; the values are as they were. */
  static final int UNSETTLED = -1;

  /** Answer of {@link #solve} where ties depend on each other. */
  static final int SINGULAR = -2;

  private static final int MOST_STEPS = 16;
  private static final double CONTRACTION = 0.5;
  private static final double ROUNDING = 1e3;

  private final int[] first;
  private final int[] variable;
  private final double[] scale;
  private final int[][] tieRow;
  private final Relation[] relation;
  private final int[] entryStart;
  private final int[] column;
  private final int[] place;

  private final double[] matrix = new double[MOST * MOST];
  private final double[] right = new double[MOST];
  private final double[] gradient;
  private double worst;
  private boolean led;

  /**
   * @param blocks square groups of at most {@link #MOST} variables
   * @param localOf workspace, as many as the problem has variables, all -1; left so
   */
  SmallBlocks(List<Group> blocks, Problem problem, int[] localOf) {
    first = new int[blocks.size() + 1];
    int entries = 0;
    int widest = 1;
    for (int b = 0; b < blocks.size(); b++) {
      first[b + 1] = first[b] + blocks.get(b).variables().length;
      for (Relation r : blocks.get(b).tieRelations(problem)) {
        entries += r.variables().length;
        widest = Math.max(widest, r.variables().length);
      }
    }
    int n = first[blocks.size()];
    variable = new int[n];
    scale = new double[n];
    tieRow = new int[n][];
    relation = new Relation[n];
    entryStart = new int[n + 1];
    int[] someColumn = new int[entries];
    int[] somePlace = new int[entries];
    gradient = new double[widest];
    int next = 0;
    for (int b = 0; b < blocks.size(); b++) {
      Group group = blocks.get(b);
      for (int j = 0; j < group.variables().length; j++) {
        int v = group.variables()[j];
        localOf[v] = j;
        variable[first[b] + j] = v;
        scale[first[b] + j] = problem.variables().get(v).scale();
        tieRow[first[b] + j] = group.tieRows()[j];
      }
      for (int i = first[b]; i < first[b + 1]; i++) {
        int[] used = problem.ties().get(tieRow[i][0]).relations().get(tieRow[i][1]).variables();
        for (int k = 0; k < used.length; k++) {
          if (localOf[used[k]] >= 0) {
            someColumn[next] = localOf[used[k]];
            somePlace[next++] = k;
          }
        }
        entryStart[i + 1] = next;
      }
      for (int v : group.variables()) {
        localOf[v] = -1;
      }
    }
    column = java.util.Arrays.copyOf(someColumn, next);
    place = java.util.Arrays.copyOf(somePlace, next);
    bind(problem);
  }

  /** Takes the relations of another problem of the same structure. */
  void bind(Problem problem) {
    for (int i = 0; i < relation.length; i++) {
      relation[i] = problem.ties().get(tieRow[i][0]).relations().get(tieRow[i][1]);
    }
  }

  /**
   * Solves for the variables of a block in place.
   *
   * @param begin values of all variables of the problem before the first block was solved
   * @param x values now; those of the block are as in {@code begin}
   * @param aimMm a tie holds when it misses by no more
   * @param nearnessMm the block is solved when a step is no longer
   * @return the number of steps, or {@link #UNSETTLED}, or {@link #SINGULAR}
   */
  int solve(int block, double[] begin, double[] x, double aimMm, double nearnessMm) {
    int from = first[block];
    int n = first[block + 1] - from;
    double before = Double.POSITIVE_INFINITY;
    boolean singular = false;
    for (int steps = 0; steps <= MOST_STEPS; steps++) {
      if (!evaluate(from, n, steps == 0 ? begin : x, x)) {
        break;
      }
      boolean holds = worst <= aimMm;
      if (holds && before <= nearnessMm) {
        return singular ? SINGULAR : steps;
      }
      singular = !eliminate(n);
      double longest = 0;
      for (int j = 0; j < n; j++) {
        longest = Math.max(longest, Math.abs(right[j]));
      }
      if (!(longest <= Math.max(CONTRACTION * before, nearnessMm))) {
        if (!(longest <= ROUNDING * nearnessMm) || !holds) {
          break;
        }
        return singular ? SINGULAR : steps;
      }
      for (int j = 0; j < n; j++) {
        x[variable[from + j]] -= right[j] * scale[from + j];
      }
      // The way carried along says nothing about how the next step should shrink.
      before = led ? Double.POSITIVE_INFINITY : longest;
      if (steps == 0 && holds && !led && longest <= nearnessMm) {
        // Nothing it reads has moved and it held already.
        return singular ? SINGULAR : 1;
      }
    }
    for (int j = 0; j < n; j++) {
      x[variable[from + j]] = begin[variable[from + j]];
    }
    return UNSETTLED;
  }

  /**
   * Rows 1 long at {@code x} and what they miss at {@code now}, to first order; false when
   * something is not finite.
   */
  private boolean evaluate(int from, int n, double[] x, double[] now) {
    worst = 0;
    led = false;
    for (int i = 0; i < n; i++) {
      Relation r = relation[from + i];
      double unit = r.scale();
      double value = r.evaluate(x, gradient) * unit;
      for (int j = 0; j < n; j++) {
        matrix[i * n + j] = 0;
      }
      double square = 0;
      for (int e = entryStart[from + i]; e < entryStart[from + i + 1]; e++) {
        double g = gradient[place[e]] * unit * scale[from + column[e]];
        matrix[i * n + column[e]] = g;
        square += g * g;
      }
      if (value - value != 0 || square - square != 0) {
        return false;
      }
      if (x != now) {
        double carried = 0;
        int[] used = r.variables();
        for (int k = 0; k < used.length; k++) {
          double way = now[used[k]] - x[used[k]];
          carried += gradient[k] * way;
          led |= way != 0;
        }
        value += carried * unit;
      }
      double length = Math.sqrt(square);
      worst = Math.max(worst, Math.abs(value) / Math.max(1, length));
      double weight = 1 / Math.max(length, 1e-300);
      right[i] = value * weight;
      for (int j = 0; j < n; j++) {
        matrix[i * n + j] *= weight;
      }
    }
    return true;
  }

  /** Solves for {@link #right} in place; false when too little of some row is new. */
  private boolean eliminate(int n) {
    double[] m = matrix;
    boolean regular = true;
    for (int k = 0; k < n; k++) {
      int best = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(m[i * n + k]) > Math.abs(m[best * n + k])) {
          best = i;
        }
      }
      if (best != k) {
        for (int j = k; j < n; j++) {
          double kept = m[k * n + j];
          m[k * n + j] = m[best * n + j];
          m[best * n + j] = kept;
        }
        double kept = right[k];
        right[k] = right[best];
        right[best] = kept;
      }
      double pivot = m[k * n + k];
      regular &= Math.abs(pivot) > NEW_SHARE;
      for (int i = k + 1; i < n; i++) {
        double f = m[i * n + k] / pivot;
        if (f != 0) {
          for (int j = k + 1; j < n; j++) {
            m[i * n + j] -= f * m[k * n + j];
          }
          right[i] -= f * right[k];
        }
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      double s = right[k];
      for (int j = k + 1; j < n; j++) {
        s -= m[k * n + j] * right[j];
      }
      right[k] = s / m[k * n + k];
    }
    return regular;
  }
}
