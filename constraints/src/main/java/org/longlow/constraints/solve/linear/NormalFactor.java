package org.longlow.constraints.solve.linear;

import java.util.Arrays;

/**
 * Sparse factor of A A' + C for the rows A of a {@link RowSet} and a positive diagonal C.
 *
 * <p>Ordering, fill and the list of products are found once; {@link #factor} then runs over flat
 * arrays. The factor is L D L', row by row (T. A. Davis, Algorithm 849: a concise sparse Cholesky
 * factorization package, ACM TOMS 31, 2005), with the pattern of each row kept instead of found
 * again.
 */
public final class NormalFactor {
  private final int n;
  private final RowSet rows;
  public final int[] order;

  /**
   * Lower triangle of the permuted matrix by rows: columns, and for each entry a run of pairs of
   * Jacobian entries.
   */
  private final int[] rowStart;

  private final int[] rowColumn;
  private final int[] pairStart;
  private final int[] pairFirst;
  private final int[] pairSecond;

  /** Pattern of each row of L in the order of elimination, and L by columns. */
  private final int[] reachStart;

  private final int[] reach;
  private final int[] columnStart;
  private final int[] columnRow;
  private final double[] columnValue;
  private final int[] filled;
  private final double[] pivot;
  private final double[] work;
  private final long factorProducts;

  public NormalFactor(RowSet rows, int variables) {
    this.rows = rows;
    n = rows.count;
    int[][] rowsOf = rowsOfVariables(rows, variables);
    order = MinimumDegree.order(adjacency(rows, rowsOf));
    int[] inverse = new int[n];
    for (int k = 0; k < n; k++) {
      inverse[order[k]] = k;
    }
    // Products that make up each entry, sorted by row and column of the permuted lower triangle.
    int products = 0;
    for (int[] list : rowsOf) {
      products += list.length * (list.length + 1) / 2;
    }
    long[] key = new long[products];
    int[] first = new int[products];
    int[] second = new int[products];
    int[][] entriesOf = entriesOfVariables(rows, variables);
    int next = 0;
    for (int v = 0; v < variables; v++) {
      for (int a = 0; a < rowsOf[v].length; a++) {
        for (int b = 0; b <= a; b++) {
          int i = inverse[rowsOf[v][a]];
          int j = inverse[rowsOf[v][b]];
          key[next] = (long) Math.max(i, j) * n + Math.min(i, j);
          first[next] = entriesOf[v][a];
          second[next++] = entriesOf[v][b];
        }
      }
    }
    Integer[] sorted = new Integer[products];
    Arrays.setAll(sorted, i -> i);
    Arrays.sort(sorted, (a, b) -> Long.compare(key[a], key[b]));
    pairFirst = new int[products];
    pairSecond = new int[products];
    int entries = 0;
    for (int s = 0; s < products; s++) {
      entries += s == 0 || key[sorted[s]] != key[sorted[s - 1]] ? 1 : 0;
    }
    rowStart = new int[n + 1];
    // A row without variables still needs its diagonal; it is handled apart because C alone makes
    // it.
    rowColumn = new int[entries];
    pairStart = new int[entries + 1];
    int entry = -1;
    for (int s = 0; s < products; s++) {
      long k = key[sorted[s]];
      if (s == 0 || k != key[sorted[s - 1]]) {
        entry++;
        rowColumn[entry] = (int) (k % n);
        rowStart[(int) (k / n) + 1]++;
        pairStart[entry] = s;
      }
      pairFirst[s] = first[sorted[s]];
      pairSecond[s] = second[sorted[s]];
    }
    pairStart[entries] = products;
    for (int i = 0; i < n; i++) {
      rowStart[i + 1] += rowStart[i];
    }

    int[] parent = new int[n];
    int[] mark = new int[n];
    int[] columnCount = new int[n];
    int[][] reaches = new int[n][];
    int[] found = new int[n];
    Arrays.fill(mark, -1);
    Arrays.fill(parent, -1);
    for (int k = 0; k < n; k++) {
      mark[k] = k;
      int size = 0;
      for (int e = rowStart[k]; e < rowStart[k + 1]; e++) {
        for (int i = rowColumn[e]; mark[i] != k; i = parent[i]) {
          if (parent[i] < 0) {
            parent[i] = k;
          }
          columnCount[i]++;
          found[size++] = i;
          mark[i] = k;
        }
      }
      // Ascending order is an order of elimination.
      reaches[k] = Arrays.copyOf(found, size);
      Arrays.sort(reaches[k]);
    }
    reachStart = new int[n + 1];
    columnStart = new int[n + 1];
    for (int k = 0; k < n; k++) {
      reachStart[k + 1] = reachStart[k] + reaches[k].length;
      columnStart[k + 1] = columnStart[k] + columnCount[k];
    }
    reach = new int[reachStart[n]];
    for (int k = 0; k < n; k++) {
      System.arraycopy(reaches[k], 0, reach, reachStart[k], reaches[k].length);
    }
    long sum = pairFirst.length;
    for (int count : columnCount) {
      sum += (long) count * count;
    }
    factorProducts = sum;
    columnRow = new int[columnStart[n]];
    columnValue = new double[columnStart[n]];
    filled = new int[n];
    pivot = new double[n];
    work = new double[n];
  }

  private static int[][] rowsOfVariables(RowSet rows, int variables) {
    int[] count = new int[variables];
    for (int c : rows.column) {
      count[c]++;
    }
    int[][] result = new int[variables][];
    for (int v = 0; v < variables; v++) {
      result[v] = new int[count[v]];
    }
    int[] next = new int[variables];
    for (int i = 0; i < rows.count; i++) {
      for (int e = rows.start[i]; e < rows.start[i + 1]; e++) {
        int v = rows.column[e];
        result[v][next[v]++] = i;
      }
    }
    return result;
  }

  private static int[][] entriesOfVariables(RowSet rows, int variables) {
    int[][] result = rowsOfVariables(rows, variables);
    int[] next = new int[variables];
    for (int e = 0; e < rows.column.length; e++) {
      int v = rows.column[e];
      result[v][next[v]++] = e;
    }
    return result;
  }

  private static int[][] adjacency(RowSet rows, int[][] rowsOf) {
    int n = rows.count;
    int[][] result = new int[n][];
    int[] mark = new int[n];
    Arrays.fill(mark, -1);
    int[] found = new int[n];
    for (int i = 0; i < n; i++) {
      mark[i] = i;
      int size = 0;
      for (int e = rows.start[i]; e < rows.start[i + 1]; e++) {
        for (int other : rowsOf[rows.column[e]]) {
          if (mark[other] != i) {
            mark[other] = i;
            found[size++] = other;
          }
        }
      }
      result[i] = Arrays.copyOf(found, size);
      Arrays.sort(result[i]);
    }
    return result;
  }

  /** Products of numbers that one {@link #factor} takes. */
  public long products() {
    return factorProducts;
  }

  /** Products of numbers that one {@link #solve} takes. */
  public long solveProducts() {
    return 2L * columnRow.length + n;
  }

  /**
   * Factorises A A' + C with the entries the row set holds now.
   *
   * @param compliance the diagonal C by row, each &gt; 0
   */
  public void factor(double[] compliance) {
    double[] y = work;
    double[] a = rows.entry;
    System.arraycopy(columnStart, 0, filled, 0, n);
    for (int k = 0; k < n; k++) {
      double d = compliance[order[k]];
      for (int e = rowStart[k]; e < rowStart[k + 1]; e++) {
        double sum = 0;
        for (int s = pairStart[e]; s < pairStart[e + 1]; s++) {
          sum += a[pairFirst[s]] * a[pairSecond[s]];
        }
        int c = rowColumn[e];
        if (c == k) {
          d += sum;
        } else {
          y[c] = sum;
        }
      }
      double floor = 1e-17 * d;
      for (int r = reachStart[k]; r < reachStart[k + 1]; r++) {
        int i = reach[r];
        double yi = y[i];
        y[i] = 0;
        int end = filled[i];
        for (int p = columnStart[i]; p < end; p++) {
          y[columnRow[p]] -= columnValue[p] * yi;
        }
        double l = yi / pivot[i];
        d -= l * yi;
        columnRow[end] = k;
        columnValue[end] = l;
        filled[i] = end + 1;
      }
      // Rounding may eat a dependent row's compliance; it never gets below it in exact arithmetic.
      pivot[k] = Math.max(d, Math.max(compliance[order[k]], floor));
    }
  }

  /**
   * How many of the first rows have more than a share of the square of their length left when the
   * rows eliminated before them are taken out.
   */
  public int fresh(double share, int first) {
    int count = 0;
    for (int k = 0; k < n; k++) {
      count += order[k] < first && pivot[k] > share * rows.square[order[k]] ? 1 : 0;
    }
    return count;
  }

  /** Solves (A A' + C) x = b; {@code b} and {@code x} may be the same array. */
  public void solve(double[] b, double[] x) {
    double[] y = work;
    for (int k = 0; k < n; k++) {
      y[k] = b[order[k]];
    }
    for (int k = 0; k < n; k++) {
      double yk = y[k];
      if (yk != 0) {
        for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
          y[columnRow[p]] -= columnValue[p] * yk;
        }
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      double yk = y[k] / pivot[k];
      for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
        yk -= columnValue[p] * y[columnRow[p]];
      }
      y[k] = yk;
    }
    for (int k = 0; k < n; k++) {
      x[order[k]] = y[k];
    }
    Arrays.fill(y, 0);
  }
}
