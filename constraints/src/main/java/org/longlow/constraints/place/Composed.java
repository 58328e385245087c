package org.longlow.constraints.place;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.longlow.constraints.solve.problem.Quantity;

/** A quantity made of others; the chain rule to the variables of the problem is done here. */
interface Composed {

  double value(double[] u);

  /** Returns the partial derivatives by each of the inputs. */
  double[] slopes(double[] u);

  /** Returns the quantity that {@code function} makes of {@code inputs}. */
  static Quantity of(List<Quantity> inputs, Composed function) {
    int[] all =
        inputs.stream()
            .flatMapToInt(q -> IntStream.of(q.variables()))
            .distinct()
            .sorted()
            .toArray();
    if (all.length == 0) {
      return Quantity.of(function.value(values(inputs, null)));
    }
    return Quantity.formula(
        all,
        (x, gradient) -> {
          double[] u = values(inputs, x);
          if (gradient != null) {
            Arrays.fill(gradient, 0, all.length, 0);
            double[] du = function.slopes(u);
            for (int i = 0; i < du.length; i++) {
              int[] vars = inputs.get(i).variables();
              double[] g = new double[vars.length];
              inputs.get(i).value(x, g);
              for (int k = 0; k < vars.length; k++) {
                gradient[Arrays.binarySearch(all, vars[k])] += du[i] * g[k];
              }
            }
          }
          return function.value(u);
        });
  }

  private static double[] values(List<Quantity> inputs, double[] x) {
    return inputs.stream().mapToDouble(q -> q.value(x, null)).toArray();
  }
}
