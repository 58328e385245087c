package org.longlow.constraints.solve.linear;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.decomposition.qr.QRColPivDecompositionHouseholderColumn_DDRM;

/**
 * QR factorisation with column pivoting of the transposed Jacobian of a group (rows of the Jacobian
 * as columns).
 *
 * <p>Rank is the number of rows of which more than a stated share of their length is new. Null
 * space, dependencies of rows and the gain of each row all come from the one factorisation.
 */
public final class RankFactor {
  private final int n;
  private final int m;
  private final int rank;
  private final DMatrixRMaj q;
  private final DMatrixRMaj r;
  private final int[] pivots;

  /**
   * @param rows rows about 1 long, evaluated
   * @param n number of variables
   * @param tolerance share of the longest row
   */
  public RankFactor(RowSet rows, int n, double tolerance) {
    this(transposed(rows, n), tolerance);
  }

  /**
   * @param a the rows as columns; used up
   * @param tolerance share of the longest row
   */
  public RankFactor(DMatrixRMaj a, double tolerance) {
    n = a.numRows;
    m = a.numCols;
    if (m == 0 || n == 0) {
      rank = 0;
      q = n == 0 ? new DMatrixRMaj(0, 0) : CommonOps_DDRM.identity(n);
      r = new DMatrixRMaj(n, m);
      pivots = new int[m];
      for (int i = 0; i < m; i++) {
        pivots[i] = i;
      }
      return;
    }
    QRColPivDecompositionHouseholderColumn_DDRM qr =
        new QRColPivDecompositionHouseholderColumn_DDRM();
    // EJML stops early below its own threshold; keep that far under ours so that R is complete to
    // the rank.
    qr.setSingularThreshold(1e-3 * tolerance);
    qr.decompose(a);
    q = qr.getQ(null, false);
    r = qr.getR(null, false);
    pivots = qr.getColPivots();
    int most = Math.min(Math.min(n, m), qr.getRank());
    int count = 0;
    while (count < most && Math.abs(r.get(count, count)) > tolerance) {
      count++;
    }
    rank = count;
  }

  private static DMatrixRMaj transposed(RowSet rows, int n) {
    DMatrixRMaj a = new DMatrixRMaj(n, rows.count);
    for (int i = 0; i < rows.count; i++) {
      for (int e = rows.start[i]; e < rows.start[i + 1]; e++) {
        a.add(rows.column[e], i, rows.entry[e]);
      }
    }
    return a;
  }

  public int rank() {
    return rank;
  }

  /** Basis of the motions that keep all rows, one vector of n values each. */
  public double[][] nullSpace() {
    double[][] basis = new double[n - rank][n];
    for (int k = rank; k < n; k++) {
      for (int j = 0; j < n; j++) {
        basis[k - rank][j] = q.get(j, k);
      }
    }
    return basis;
  }

  /** Basis of the combinations of rows that vanish, one vector of m values each. */
  public double[][] dependencies() {
    double[][] basis = new double[m - rank][m];
    for (int k = rank; k < m; k++) {
      double[] y = new double[rank];
      for (int i = rank - 1; i >= 0; i--) {
        double s = -r.get(i, k);
        for (int j = i + 1; j < rank; j++) {
          s -= r.get(i, j) * y[j];
        }
        y[i] = s / r.get(i, i);
      }
      for (int i = 0; i < rank; i++) {
        basis[k - rank][pivots[i]] = y[i];
      }
      basis[k - rank][pivots[k]] = 1;
    }
    return basis;
  }

  /**
   * For each row the most that a unit change of it moves any variable in the least-change answer; 0
   * for rows left out.
   */
  public double[] gains() {
    double[] gains = new double[m];
    double[] answer = new double[n];
    double[] y = new double[rank];
    for (int k = 0; k < rank; k++) {
      answer(k, y, answer);
      double most = 0;
      for (double a : answer) {
        most = Math.max(most, Math.abs(a));
      }
      gains[pivots[k]] = most;
    }
    return gains;
  }

  /**
   * For each row the least change of the variables that answers a unit change of it, n values each;
   * zeros for rows left out.
   */
  public double[][] answers() {
    double[][] answers = new double[m][n];
    double[] y = new double[rank];
    for (int k = 0; k < rank; k++) {
      answer(k, y, answers[pivots[k]]);
    }
    return answers;
  }

  /** Answer to the row of pivot k: column k of the inverse of R11 transposed, back through Q. */
  private void answer(int k, double[] y, double[] out) {
    for (int i = 0; i < rank; i++) {
      double s = i == k ? 1 : 0;
      for (int j = k; j < i; j++) {
        s -= r.get(j, i) * y[j];
      }
      y[i] = i < k ? 0 : s / r.get(i, i);
    }
    for (int j = 0; j < n; j++) {
      double s = 0;
      for (int i = k; i < rank; i++) {
        s += q.get(j, i) * y[i];
      }
      out[j] = s;
    }
  }
}
