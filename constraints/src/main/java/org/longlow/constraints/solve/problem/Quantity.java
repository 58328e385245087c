package org.longlow.constraints.solve.problem;

import java.util.Arrays;
import java.util.Locale;

/**
 * A number that a relation takes as an input: a constant, a variable, or a formula over variables.
 *
 * <p>The value has the unit of its use: mm for lengths, rad for angles, none for ratios.
 */
public interface Quantity {
  /** Distinct indices of the variables it depends on, in the order of the gradient. */
  int[] variables();

  /**
   * Evaluates the quantity.
   *
   * @param x values of all variables; not modified
   * @param gradient receives the partial derivatives in the order of {@link #variables()}, or null
   */
  double value(double[] x, double[] gradient);

  /** A constant. */
  static Quantity of(double value) {
    return new Constant(value);
  }

  /** The value of one variable. */
  static Quantity variable(int index) {
    return new Variable(index);
  }

  /**
   * Any function of variables. The function gets all values and, when wanted, an array for its
   * gradient.
   */
  static Quantity formula(int[] variables, Formula formula) {
    return new FormulaQuantity(variables.clone(), formula);
  }

  /**
   * A function of all values with its gradient in the order of the variables it was declared with.
   */
  @FunctionalInterface
  interface Formula {
    /** Returns the value; fills {@code gradient} unless it is null. */
    double value(double[] x, double[] gradient);
  }

  /** A finite number. */
  record Constant(double value) implements Quantity {
    private static final int[] NONE = {};

    public Constant {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(
            String.format(Locale.ROOT, "a constant quantity needs a finite value, got %s", value));
      }
    }

    @Override
    public int[] variables() {
      return NONE;
    }

    @Override
    public double value(double[] x, double[] gradient) {
      return value;
    }
  }

  /** One variable of the problem. */
  record Variable(int index) implements Quantity {
    public Variable {
      if (index < 0) {
        throw new IllegalArgumentException("a variable index is >= 0, got " + index);
      }
    }

    @Override
    public int[] variables() {
      return new int[] {index};
    }

    @Override
    public double value(double[] x, double[] gradient) {
      if (gradient != null) {
        gradient[0] = 1;
      }
      return x[index];
    }
  }

  /** A formula over variables; equal only to itself. */
  final class FormulaQuantity implements Quantity {
    private final int[] variables;
    private final Formula formula;

    private FormulaQuantity(int[] variables, Formula formula) {
      this.variables = variables;
      this.formula = formula;
    }

    @Override
    public int[] variables() {
      return variables.clone();
    }

    @Override
    public double value(double[] x, double[] gradient) {
      return formula.value(x, gradient);
    }

    @Override
    public String toString() {
      return "formula of variables " + Arrays.toString(variables);
    }
  }
}
