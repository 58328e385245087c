package org.longlow.constraints.solve.step;

import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.longlow.constraints.solve.problem.Relation;

/** A linear row a · x − b, with every variable in it. */
record Row(double[] a, double b, boolean costly) implements Relation {
  @Override
  public int[] variables() {
    return IntStream.range(0, a.length).toArray();
  }

  @Override
  public double evaluate(double[] x, double[] gradient) {
    double sum = -b;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * x[i];
      if (gradient != null) {
        gradient[i] = a[i];
      }
    }
    return sum;
  }

  /** Returns a row of length 1 with at most so many coefficients. */
  static Row random(Random random, int n, int parts) {
    double[] a = new double[n];
    for (int k = 0; k < parts; k++) {
      a[random.nextInt(n)] += random.nextGaussian();
    }
    RealVector unit = new ArrayRealVector(a).unitVector();
    return new Row(unit.toArray(), 50 * random.nextGaussian(), false);
  }

  /** Returns the row shifted so that it is nothing at {@code x}. */
  Row through(double[] x) {
    return new Row(a, b + evaluate(x, null), costly);
  }
}
