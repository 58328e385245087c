package org.longlow.constraints.start;

import java.util.function.ToDoubleFunction;

/**
 * Looks for the least of a rough function of few numbers: steps along each, halved as they fail.
 */
final class Seek {

  private static final int MOST_TRIES = 400;

  private Seek() {}

  /**
   * Returns the best found.
   *
   * @param start where to begin
   * @param steps first step along each number
   * @param least step along each at which the search ends
   */
  static double[] least(
      double[] start, double[] steps, double[] least, ToDoubleFunction<double[]> of) {
    double[] best = start.clone();
    double[] step = steps.clone();
    double value = of.applyAsDouble(best);
    int tries = 1;
    while (tries < MOST_TRIES) {
      boolean better = false;
      for (int k = 0; k < best.length && tries < MOST_TRIES; k++) {
        for (int sign = -1; sign <= 1; sign += 2) {
          double[] other = best.clone();
          other[k] += sign * step[k];
          double there = of.applyAsDouble(other);
          tries++;
          if (there < value) {
            best = other;
            value = there;
            better = true;
            break;
          }
        }
      }
      if (better) {
        continue;
      }
      boolean done = true;
      for (int k = 0; k < step.length; k++) {
        if (step[k] > least[k]) {
          step[k] /= 2;
          done = false;
        }
      }
      if (done) {
        break;
      }
    }
    return best;
  }
}
