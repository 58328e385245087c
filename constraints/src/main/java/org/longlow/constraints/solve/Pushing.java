package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Which ties and limits push where limits fail least: those with a multiplier there.
 *
 * <p>At such a point the slopes of the broken limits are held in balance by ties and by limits that
 * are just kept. What does not push has no part in the failure, to first order, so these few are
 * the place to look for a contradiction.
 */
final class Pushing {

  private static final double KEPT_MM = 1e-4;
  private static final double SHARE = 1e-5;

  private Pushing() {}

  /**
   * Finds them in one group.
   *
   * @param begin values from which the search began
   * @param x values at which the limits fail least
   * @return pairs of row and whether it is a limit's, as {@code {row, 0 or 1}}
   */
  static List<int[]> rows(GroupSystem system, double[] begin, double[] x) {
    RowSet limits = system.limits;
    // the measure in which the limits fail least was taken where the search began
    boolean finite = limits.evaluate(begin) & system.rows.evaluate(begin, system.ties);
    limits.equilibrate(limits.count);
    system.rows.equilibrate(system.ties);
    finite &= limits.evaluate(x) & system.rows.evaluate(x, system.ties);
    List<int[]> pushing = new ArrayList<>();
    if (!finite) {
      return pushing;
    }
    double[] push = new double[system.n];
    List<int[]> holding = new ArrayList<>();
    for (int i = 0; i < limits.count; i++) {
      if (limits.missMm(i) < -KEPT_MM) {
        limits.addRow(i, -limits.value[i], push);
        pushing.add(new int[] {i, 1});
      } else if (limits.missMm(i) < KEPT_MM) {
        holding.add(new int[] {i, 1});
      }
    }
    for (int i = 0; i < system.ties; i++) {
      holding.add(new int[] {i, 0});
    }
    double[] answer = balance(system, holding, push);
    double most = 0;
    for (double a : answer) {
      most = Math.max(most, Math.abs(a));
    }
    for (int k = 0; k < answer.length; k++) {
      if (Math.abs(answer[k]) > SHARE * most) {
        pushing.add(holding.get(k));
      }
    }
    return pushing;
  }

  /** Multipliers that balance a push, limits only pushing; those that would pull are let go. */
  private static double[] balance(GroupSystem system, List<int[]> holding, double[] push) {
    boolean[] out = new boolean[holding.size()];
    double[] answer = new double[holding.size()];
    for (int round = 0; round <= holding.size(); round++) {
      answer = leastSquares(system, holding, out, push);
      int worst = -1;
      for (int k = 0; k < answer.length; k++) {
        boolean pulls = holding.get(k)[1] == 1 && answer[k] > 0;
        if (pulls && (worst < 0 || answer[k] > answer[worst])) {
          worst = k;
        }
      }
      if (worst < 0) {
        break;
      }
      out[worst] = true;
    }
    return answer;
  }

  private static double[] leastSquares(
      GroupSystem system, List<int[]> holding, boolean[] out, double[] push) {
    DMatrixRMaj rows = new DMatrixRMaj(system.n, holding.size());
    for (int k = 0; k < holding.size(); k++) {
      if (!out[k]) {
        double[] row = new double[system.n];
        int[] at = holding.get(k);
        (at[1] == 1 ? system.limits : system.rows).addRow(at[0], 1, row);
        for (int j = 0; j < system.n; j++) {
          rows.set(j, k, row[j]);
        }
      }
    }
    DMatrixRMaj inverse = new DMatrixRMaj(holding.size(), system.n);
    CommonOps_DDRM.pinv(rows, inverse);
    DMatrixRMaj answer = new DMatrixRMaj(holding.size(), 1);
    CommonOps_DDRM.mult(inverse, new DMatrixRMaj(system.n, 1, true, push), answer);
    return answer.getData();
  }
}
