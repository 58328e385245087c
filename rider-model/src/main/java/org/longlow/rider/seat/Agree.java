package org.longlow.rider.seat;

/**
 * Steps towards a state that a round of work leaves unchanged: Broyden's good method (C. G. Broyden
 * 1965, Math. Comp. 19:577-593) on the change f(x) that a round makes, started from the plain step
 * x + f. Falls back to the plain step when a step makes things worse.
 */
final class Agree {

  private final int n;
  private final double[] x;
  private final double[] lastChange;
  private final double[] step;
  private final double[][] inverse;
  private double lastSize = Double.POSITIVE_INFINITY;
  private boolean started;

  Agree(int n) {
    this.n = n;
    x = new double[n];
    lastChange = new double[n];
    step = new double[n];
    inverse = new double[n][n];
    reset();
  }

  double[] state() {
    return x.clone();
  }

  /** Goes on from another state, where the inverse of the change's slope is known. */
  void begin(double[] state, double[][] inverseSlope) {
    begin(state);
    for (int i = 0; i < n; i++) {
      System.arraycopy(inverseSlope[i], 0, inverse[i], 0, n);
    }
  }

  /** Goes on from another state. */
  void begin(double[] state) {
    System.arraycopy(state, 0, x, 0, n);
    lastSize = Double.POSITIVE_INFINITY;
    reset();
  }

  /**
   * Takes the change that a round made of the state and moves the state.
   *
   * @return the greatest change before moving
   */
  double move(double[] change) {
    double size = 0;
    for (double f : change) {
      size = Math.max(size, Math.abs(f));
    }
    if (size > 2 * lastSize) {
      reset();
    } else if (started) {
      learn(change);
    }
    for (int i = 0; i < n; i++) {
      step[i] = 0;
      for (int j = 0; j < n; j++) {
        step[i] -= inverse[i][j] * change[j];
      }
    }
    for (int i = 0; i < n; i++) {
      x[i] += step[i];
      lastChange[i] = change[i];
    }
    lastSize = size;
    started = true;
    return size;
  }

  private void learn(double[] change) {
    double[] turned = new double[n];
    double[] row = new double[n];
    double scale = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        turned[i] += inverse[i][j] * (change[j] - lastChange[j]);
        row[i] += step[j] * inverse[j][i];
      }
      scale += step[i] * turned[i];
    }
    double length = 0;
    for (double s : step) {
      length += s * s;
    }
    if (!(Math.abs(scale) > 0.05 * length)) {
      return;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        inverse[i][j] += (step[i] - turned[i]) * row[j] / scale;
      }
    }
  }

  private void reset() {
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        inverse[i][j] = i == j ? -1 : 0;
      }
    }
    started = false;
  }
}
