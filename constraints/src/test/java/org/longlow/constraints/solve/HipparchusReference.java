package org.longlow.constraints.solve;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.longlow.constraints.solve.problem.Relation;

/**
 * The reference: Levenberg-Marquardt of Hipparchus on all relations with an analytic dense
 * Jacobian.
 */
final class HipparchusReference {
  /** Where it ended and the root of the sum of squares there. */
  record Answer(double[] x, double cost) {}

  private HipparchusReference() {}

  static Answer solve(List<Relation> relations, double[] start) {
    int m = relations.size();
    int n = start.length;
    MultivariateJacobianFunction model =
        point -> {
          double[] x = point.toArray();
          double[] value = new double[m];
          double[][] jacobian = new double[m][n];
          double[] gradient = new double[n];
          for (int i = 0; i < m; i++) {
            Relation relation = relations.get(i);
            value[i] = relation.evaluate(x, gradient);
            int[] used = relation.variables();
            for (int k = 0; k < used.length; k++) {
              jacobian[i][used[k]] = gradient[k];
            }
          }
          RealVector v = new ArrayRealVector(value, false);
          RealMatrix j = new Array2DRowRealMatrix(jacobian, false);
          return new Pair<>(v, j);
        };
    LeastSquaresOptimizer.Optimum optimum =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(start)
                    .target(new double[m])
                    .model(model)
                    .maxEvaluations(2000)
                    .maxIterations(2000)
                    .build());
    return new Answer(optimum.getPoint().toArray(), optimum.getResiduals().getNorm());
  }
}
