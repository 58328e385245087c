package org.longlow.constraints.solve;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import org.ejml.data.DGrowArray;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.data.IGrowArray;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.longlow.constraints.solve.linear.NormalFactor;
import org.longlow.constraints.solve.linear.RowSet;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.step.GroupSystem;

/**
 * One factor and one solve of A A' + C, by {@link NormalFactor} and by EJML's sparse Cholesky with
 * its structure locked, CPU microseconds. EJML is given the rows in the same order of least fill.
 */
public final class FactorTimeTable {
  private FactorTimeTable() {}

  /** Prints the table. */
  public static void main(String[] args) {
    System.out.println("unknowns  rows  own us  ejml us  times  greatest difference");
    for (int size : new int[] {30, 50, 100, 205, 430, 870}) {
      Problem problem = ChassisLayout.of(size, 300);
      Group group = Group.split(problem).get(0);
      GroupSystem system = new GroupSystem(group, problem);
      RowSet rows = system.rows;
      rows.evaluate(problem.start());
      int m = rows.count;
      double[] compliance = new double[m];
      for (int i = 0; i < m; i++) {
        compliance[i] = GroupSystem.TIE_COMPLIANCE * rows.square[i];
      }
      double[] b = new double[m];
      Arrays.setAll(b, i -> Math.sin(i + 1));
      double[] x = new double[m];
      NormalFactor factor = new NormalFactor(rows, system.n);
      int times = Math.max(200, 200_000 / size);
      double own =
          CpuTimeTable.best(
              times,
              k -> {
                factor.factor(compliance);
                factor.solve(b, x);
              });

      int[] order = factor.order;
      DMatrixSparseTriplet triplet = new DMatrixSparseTriplet(m, system.n, rows.entry.length);
      for (int i = 0; i < m; i++) {
        int row = order[i];
        for (int e = rows.start[row]; e < rows.start[row + 1]; e++) {
          triplet.addItem(i, rows.column[e], rows.entry[e]);
        }
      }
      DMatrixSparseCSC jacobian = DConvertMatrixStruct.convert(triplet, (DMatrixSparseCSC) null);
      DMatrixSparseCSC identity = CommonOps_DSCC.diag(compliance(order, compliance));
      DMatrixSparseCSC turned = new DMatrixSparseCSC(system.n, m);
      DMatrixSparseCSC product = new DMatrixSparseCSC(m, m);
      DMatrixSparseCSC normal = new DMatrixSparseCSC(m, m);
      IGrowArray gw = new IGrowArray();
      DGrowArray gx = new DGrowArray();
      LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
          LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
      DMatrixRMaj right = new DMatrixRMaj(m, 1);
      for (int i = 0; i < m; i++) {
        right.set(i, 0, b[order[i]]);
      }
      DMatrixRMaj found = new DMatrixRMaj(m, 1);
      CommonOps_DSCC.transpose(jacobian, turned, gw);
      CommonOps_DSCC.mult(jacobian, turned, product, gw, gx);
      CommonOps_DSCC.add(1, product, 1, identity, normal, gw, gx);
      normal.sortIndices(null);
      solver.setA(normal);
      solver.setStructureLocked(true);
      double theirs =
          CpuTimeTable.best(
              times,
              k -> {
                CommonOps_DSCC.transpose(jacobian, turned, gw);
                CommonOps_DSCC.mult(jacobian, turned, product, gw, gx);
                CommonOps_DSCC.add(1, product, 1, identity, normal, gw, gx);
                solver.setA(normal);
                solver.solve(right, found);
              });
      double apart = 0;
      double most = 0;
      for (int i = 0; i < m; i++) {
        apart = Math.max(apart, Math.abs(found.get(i, 0) - x[order[i]]));
        most = Math.max(most, Math.abs(x[order[i]]));
      }
      System.out.println(
          String.format(
              Locale.ROOT,
              "%8d %5d %7.1f %8.1f %6.1f %20.1e",
              problem.size(),
              m,
              own,
              theirs,
              theirs / own,
              apart / most));
    }
    System.out.println(ManagementFactory.getRuntimeMXBean().getVmVersion());
  }

  private static double[] compliance(int[] order, double[] compliance) {
    return Arrays.stream(order).mapToDouble(i -> compliance[i]).toArray();
  }
}
