package org.longlow.constraints.solve.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Turns a basis into one whose vectors touch few entries each, so that a freedom can be shown as an
 * arrow at a pin.
 *
 * <p>Gauss-Jordan elimination gives each vector one entry of its own; motions that have nothing to
 * do with each other come apart whatever the choice. Entries are then exchanged while that makes
 * the basis sparser.
 */
public final class LocalBasis {
  private static final double NOTHING = 1e-9;
  private static final int MOST_WORK = 40_000;

  private LocalBasis() {}

  /**
   * Rows that span the same space, each with an entry 1 where all others are 0. The input is not
   * modified.
   */
  public static double[][] localise(double[][] basis) {
    int f = basis.length;
    if (f == 0) {
      return basis;
    }
    int n = basis[0].length;
    double[][] z = copy(basis);
    int[] own = new int[f];
    boolean[] used = new boolean[n];
    for (int k = 0; k < f; k++) {
      int row = k;
      int column = -1;
      double best = 0;
      for (int i = k; i < f; i++) {
        for (int j = 0; j < n; j++) {
          if (!used[j] && Math.abs(z[i][j]) > best * (1 + 1e-9)) {
            best = Math.abs(z[i][j]);
            row = i;
            column = j;
          }
        }
      }
      double[] swap = z[k];
      z[k] = z[row];
      z[row] = swap;
      own[k] = column;
      used[column] = true;
      eliminate(z, k, column);
    }
    if ((long) f * n <= MOST_WORK) {
      exchange(z, own);
    }
    return z;
  }

  /**
   * Same span; the pivot of each row is its last entry that counts, and is 1 and alone in its
   * column.
   */
  public static double[][] reduceFromLast(double[][] basis) {
    double[][] z = copy(basis);
    int f = z.length;
    int k = 0;
    for (int j = f == 0 ? -1 : z[0].length - 1; j >= 0 && k < f; j--) {
      int row = -1;
      double best = 1e-6;
      for (int i = k; i < f; i++) {
        double size = Arrays.stream(z[i]).map(Math::abs).max().orElse(0);
        if (Math.abs(z[i][j]) > best * size) {
          best = Math.abs(z[i][j]) / size;
          row = i;
        }
      }
      if (row < 0) {
        for (int i = k; i < f; i++) {
          z[i][j] = 0;
        }
        continue;
      }
      double[] swap = z[k];
      z[k] = z[row];
      z[row] = swap;
      eliminate(z, k, j);
      k++;
    }
    return z;
  }

  /** Last entry of a row that counts. */
  public static int lastPivot(double[] row) {
    for (int j = row.length - 1; j >= 0; j--) {
      if (Math.abs(row[j]) > 1e-6) {
        return j;
      }
    }
    return 0;
  }

  private static void eliminate(double[][] z, int k, int column) {
    double pivot = z[k][column];
    for (int j = 0; j < z[k].length; j++) {
      z[k][j] = clean(z[k][j] / pivot);
    }
    z[k][column] = 1;
    for (int i = 0; i < z.length; i++) {
      double factor = z[i][column];
      if (i != k && factor != 0) {
        for (int j = 0; j < z[i].length; j++) {
          z[i][j] = clean(z[i][j] - factor * z[k][j]);
        }
        z[i][column] = 0;
      }
    }
  }

  private static double clean(double v) {
    return Math.abs(v) < NOTHING ? 0 : v;
  }

  private static void exchange(double[][] z, int[] own) {
    int budget = 4 * z.length + 8;
    boolean better = true;
    while (better && budget-- > 0) {
      better = false;
      int now = filled(z);
      for (int k = 0; k < z.length && !better; k++) {
        List<Integer> candidates = new ArrayList<>();
        double largest = Arrays.stream(z[k]).map(Math::abs).max().orElse(0);
        for (int j = 0; j < z[k].length; j++) {
          if (j != own[k] && Math.abs(z[k][j]) > 0.05 * largest) {
            candidates.add(j);
          }
        }
        for (int j : candidates) {
          double[][] trial = copy(z);
          eliminate(trial, k, j);
          if (filled(trial) < now) {
            System.arraycopy(trial, 0, z, 0, z.length);
            own[k] = j;
            better = true;
            break;
          }
        }
      }
    }
  }

  private static int filled(double[][] z) {
    int count = 0;
    for (double[] row : z) {
      for (double v : row) {
        count += v != 0 ? 1 : 0;
      }
    }
    return count;
  }

  private static double[][] copy(double[][] z) {
    return Arrays.stream(z).map(double[]::clone).toArray(double[][]::new);
  }
}
