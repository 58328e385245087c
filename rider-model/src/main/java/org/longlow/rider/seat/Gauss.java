package org.longlow.rider.seat;

/** Gauss-Legendre nodes on [−1, 1], by Newton's method on the Legendre polynomial. */
final class Gauss {

  static final int N = 8;
  static final double[] NODE = new double[N];
  static final double[] WEIGHT = new double[N];

  static {
    for (int i = 0; i < N; i++) {
      double x = Math.cos(Math.PI * (i + 0.75) / (N + 0.5));
      double slope = 1;
      for (int step = 0; step < 20; step++) {
        double p0 = 1;
        double p1 = x;
        for (int k = 2; k <= N; k++) {
          double p2 = ((2 * k - 1) * x * p1 - (k - 1) * p0) / k;
          p0 = p1;
          p1 = p2;
        }
        slope = N * (x * p1 - p0) / (x * x - 1);
        x -= p1 / slope;
      }
      NODE[i] = x;
      WEIGHT[i] = 2 / ((1 - x * x) * slope * slope);
    }
  }

  private Gauss() {}
}
