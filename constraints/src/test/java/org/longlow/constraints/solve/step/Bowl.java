package org.longlow.constraints.solve.step;

import java.util.Random;
import java.util.stream.IntStream;
import org.longlow.constraints.solve.problem.Relation;

/** A row with constant curvature, half of x · H x, plus a · x − b, with every variable in it. */
record Bowl(double[][] h, double[] a, double b) implements Relation {

  /** Returns a row with slopes up to 1 and second derivatives up to {@code bend}. */
  static Bowl random(Random random, int n, double b, double bend) {
    double[][] h = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        h[i][j] = bend * (2 * random.nextDouble() - 1);
        h[j][i] = h[i][j];
      }
    }
    return new Bowl(h, random.doubles(n, -1, 1).toArray(), b);
  }

  @Override
  public int[] variables() {
    return IntStream.range(0, a.length).toArray();
  }

  @Override
  public double evaluate(double[] x, double[] gradient) {
    double sum = -b;
    for (int i = 0; i < a.length; i++) {
      double hx = 0;
      for (int j = 0; j < a.length; j++) {
        hx += h[i][j] * x[j];
      }
      sum += (a[i] + hx / 2) * x[i];
      if (gradient != null) {
        gradient[i] = a[i] + hx;
      }
    }
    return sum;
  }

  double[] slope(double[] x) {
    double[] g = new double[a.length];
    evaluate(x, g);
    return g;
  }
}
