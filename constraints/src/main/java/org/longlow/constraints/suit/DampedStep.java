package org.longlow.constraints.suit;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** The step of a damped least-squares problem, after Levenberg and Marquardt. */
final class DampedStep {

  /** Keeps directions that change nothing from being taken. */
  private static final double FLOOR = 1e-12;

  private DampedStep() {}

  /**
   * Returns the s that makes |slopes·s + residuals|² + damping·|D s|² least, D the lengths of the
   * columns.
   */
  static double[] of(double[][] slopes, double[] residuals, double damping) {
    int n = slopes[0].length;
    DMatrixRMaj j = new DMatrixRMaj(slopes);
    DMatrixRMaj normal = new DMatrixRMaj(n, n);
    CommonOps_DDRM.multInner(j, normal);
    DMatrixRMaj right = new DMatrixRMaj(n, 1);
    CommonOps_DDRM.multTransA(j, DMatrixRMaj.wrap(residuals.length, 1, residuals.clone()), right);
    CommonOps_DDRM.scale(-1, right);
    for (int i = 0; i < n; i++) {
      normal.add(i, i, damping * normal.get(i, i) + FLOOR);
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(n);
    DMatrixRMaj step = new DMatrixRMaj(n, 1);
    if (!solver.setA(normal)) {
      return new double[n];
    }
    solver.solve(right, step);
    return step.getData().clone();
  }
}
