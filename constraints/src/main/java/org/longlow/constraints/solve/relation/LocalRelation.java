package org.longlow.constraints.solve.relation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;

/**
 * A relation written over its inputs alone; the chain rule to the variables of the problem is done
 * here, once for all.
 *
 * <p>Inputs may share variables, be constants or be formulas.
 */
final class LocalRelation implements Relation {
  /** A function of the inputs and, unless {@code du} is null, its derivatives by each of them. */
  @FunctionalInterface
  interface Function {
    double value(double[] u, double[] du);
  }

  private static final int CONSTANT = -1;
  private static final int FORMULA = -2;

  private final Function function;
  private final Quantity[] inputs;
  private final double[] constants;
  private final int[] variables;

  /** For each input: index of its variable in the problem, or CONSTANT, or FORMULA. */
  private final int[] source;

  /**
   * For each input that is a variable or formula: places of its variables in {@link #variables}.
   */
  private final int[][] places;

  private final int widest;

  private LocalRelation(Function function, List<Quantity> inputs) {
    this.function = function;
    this.inputs = inputs.toArray(Quantity[]::new);
    int count = this.inputs.length;
    constants = new double[count];
    source = new int[count];
    places = new int[count][];
    Map<Integer, Integer> order = new LinkedHashMap<>();
    int most = 0;
    for (int i = 0; i < count; i++) {
      int[] used = this.inputs[i].variables();
      places[i] = new int[used.length];
      for (int k = 0; k < used.length; k++) {
        Integer place = order.putIfAbsent(used[k], order.size());
        places[i][k] = place == null ? order.size() - 1 : place;
      }
      if (this.inputs[i] instanceof Quantity.Constant constant) {
        source[i] = CONSTANT;
        constants[i] = constant.value();
      } else if (this.inputs[i] instanceof Quantity.Variable variable) {
        source[i] = variable.index();
      } else {
        source[i] = FORMULA;
        most = Math.max(most, used.length);
      }
    }
    widest = most;
    variables = order.keySet().stream().mapToInt(Integer::intValue).toArray();
  }

  /** A relation over inputs given as {@link Pt} (x, then z) and {@link Quantity}, in that order. */
  static Relation of(Function function, Object... inputs) {
    List<Quantity> flat = new ArrayList<>();
    for (Object input : inputs) {
      if (input instanceof Pt point) {
        flat.add(point.x());
        flat.add(point.z());
      } else if (input instanceof Quantity quantity) {
        flat.add(quantity);
      } else {
        throw new IllegalArgumentException("an input is a point or a quantity, got " + input);
      }
    }
    return new LocalRelation(function, flat);
  }

  /** The second input less the first, less an offset. */
  static Relation difference(Quantity a, Quantity b, Quantity offset) {
    return of(LocalRelation::difference, a, b, offset);
  }

  private static double difference(double[] u, double[] du) {
    if (du != null) {
      du[0] = -1;
      du[1] = 1;
      du[2] = -1;
    }
    return u[1] - u[0] - u[2];
  }

  /** Two points are one. */
  static Relation[] coincide(Pt a, Pt b) {
    Quantity zero = Quantity.of(0);
    return new Relation[] {difference(a.x(), b.x(), zero), difference(a.z(), b.z(), zero)};
  }

  @Override
  public int[] variables() {
    return variables;
  }

  @Override
  public double evaluate(double[] x, double[] gradient) {
    int count = inputs.length;
    double[] u = new double[count];
    for (int i = 0; i < count; i++) {
      int from = source[i];
      u[i] = from >= 0 ? x[from] : from == CONSTANT ? constants[i] : inputs[i].value(x, null);
    }
    if (gradient == null) {
      return function.value(u, null);
    }
    double[] du = new double[count];
    double value = function.value(u, du);
    for (int k = 0; k < variables.length; k++) {
      gradient[k] = 0;
    }
    double[] inner = widest > 0 ? new double[widest] : null;
    for (int i = 0; i < count; i++) {
      int from = source[i];
      if (from >= 0) {
        gradient[places[i][0]] += du[i];
      } else if (from == FORMULA) {
        inputs[i].value(x, inner);
        for (int k = 0; k < places[i].length; k++) {
          gradient[places[i][k]] += du[i] * inner[k];
        }
      }
    }
    return value;
  }
}
