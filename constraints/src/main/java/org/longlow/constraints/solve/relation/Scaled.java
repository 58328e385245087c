package org.longlow.constraints.solve.relation;

import org.longlow.constraints.solve.problem.Relation;

/** A multiple of a relation. */
record Scaled(Relation relation, double factor) implements Relation {
  @Override
  public int[] variables() {
    return relation.variables();
  }

  @Override
  public double evaluate(double[] x, double[] gradient) {
    double value = relation.evaluate(x, gradient);
    if (gradient != null) {
      for (int i = 0; i < relation.variables().length; i++) {
        gradient[i] *= factor;
      }
    }
    return factor * value;
  }

  @Override
  public double scale() {
    return relation.scale();
  }
}
