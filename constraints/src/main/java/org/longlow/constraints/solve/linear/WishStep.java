package org.longlow.constraints.solve.linear;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The step that comes nearest to a few wishes within the ties and otherwise to a target, wishes
 * first: nothing is traded between the two.
 *
 * <p>As a soft row a wish counts a stated amount more than staying near; where one pin moves a long
 * machine that is not enough, and it creeps up in many rounds. Here the slopes of the wishes, less
 * what ties hold of them, span the few ways in which wishes can be met at all, and the least
 * squares over those are solved outright.
 */
public final class WishStep {
  /** So many wishes are few. */
  public static final int FEW = 8;

  /** Takes from a vector what ties hold of it; both may be the same. */
  public interface Projection {
    void project(double[] v, double[] out);
  }

  /** A slope of which ties leave a smaller share of its length is held by them. */
  private static final double HELD = 1e-5;

  private final RowSet rows;
  private final int ties;
  private final double[] weights;
  private final double[][] ways;
  private final double[] rest;
  private int free;

  /**
   * @param rows ties, then wishes
   * @param weights of the wishes
   * @param n number of variables
   */
  public WishStep(RowSet rows, int ties, double[] weights, int n) {
    this.rows = rows;
    this.ties = ties;
    this.weights = weights;
    ways = new double[rows.count - ties][n];
    rest = new double[n];
  }

  /** Finds the ways in which wishes can be met. The Jacobian is at hand, the ties are factored. */
  public void look(Projection within) {
    free = 0;
    for (int row = ties; row < rows.count; row++) {
      Arrays.fill(rest, 0);
      rows.addRow(row, 1, rest);
      within.project(rest, ways[free]);
      if (isNew(free, Math.sqrt(rows.square[row]))) {
        free++;
      }
    }
    for (int k = 0; k < free; k++) {
      // ties give a little in the factor, and that must not be taken for a way
      within.project(ways[k], ways[k]);
    }
  }

  /** Bends the step of the system, which meets the ties and no wish, to the wishes. */
  public void bend(double[] step) {
    int wishes = rows.count - ties;
    if (free == 0) {
      return;
    }
    DMatrixRMaj slopes = new DMatrixRMaj(wishes, free);
    DMatrixRMaj missed = new DMatrixRMaj(wishes, 1);
    for (int i = 0; i < wishes; i++) {
      int row = ties + i;
      double weight = Math.sqrt(weights[i]);
      missed.set(i, 0, -weight * (rows.value[row] + rows.dot(row, step)));
      for (int k = 0; k < free; k++) {
        slopes.set(i, k, weight * rows.dot(row, ways[k]));
      }
    }
    DMatrixRMaj along = new DMatrixRMaj(free, 1);
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.leastSquares(wishes, free);
    if (solver.setA(slopes)) {
      solver.solve(missed, along);
      for (int k = 0; k < free; k++) {
        add(along.get(k, 0), ways[k], step);
      }
    }
  }

  /** Makes a way square to those before it and of length 1; false where little of it is left. */
  private boolean isNew(int way, double whole) {
    double[] v = ways[way];
    for (int round = 0; round < 2; round++) { // twice is enough (W. Kahan)
      for (int k = 0; k < way; k++) {
        add(-dot(ways[k], v), ways[k], v);
      }
    }
    double length = Math.sqrt(dot(v, v));
    if (!(length > HELD * whole)) {
      return false;
    }
    for (int j = 0; j < v.length; j++) {
      v[j] /= length;
    }
    return true;
  }

  private static void add(double factor, double[] v, double[] to) {
    for (int j = 0; j < v.length; j++) {
      to[j] += factor * v[j];
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }
}
