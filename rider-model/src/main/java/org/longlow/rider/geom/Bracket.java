package org.longlow.rider.geom;

import java.util.function.DoubleUnaryOperator;

/**
 * Roots between two places where a function has different signs: false position with the stale end
 * halved (the Illinois rule), and the middle now and then, so that it never creeps. Some 8 to 12
 * evaluations to the last digits of a smooth function.
 */
public final class Bracket {

  /** Every so many steps the middle is taken. */
  private static final int MIDDLE_EVERY = 4;

  /** Halving alone comes from any bracket to neighbouring doubles in so many middles. */
  private static final int MOST_STEPS = 64 * MIDDLE_EVERY;

  private Bracket() {}

  /**
   * Returns a place at which the function has the sign it has at {@code high}, or is 0, no farther
   * than {@code within} from one at which it has the sign it has at {@code low}.
   *
   * @param within &gt; 0; a bracket of neighbouring doubles is always near enough
   * @throws IllegalArgumentException if both ends have the same sign
   */
  public static double root(DoubleUnaryOperator f, double low, double high, double within) {
    double a = low;
    double b = high;
    double fa = f.applyAsDouble(a);
    double fb = f.applyAsDouble(b);
    if (fa == 0) {
      return a;
    }
    if (fa > 0 == fb > 0 && fb != 0) {
      throw new IllegalArgumentException(
          "no change of sign from " + low + " (" + fa + ") to " + high + " (" + fb + ")");
    }
    boolean positive = fa > 0;
    int side = 0;
    for (int i = 1; i < MOST_STEPS && b - a > within && fb != 0; i++) {
      double c = i % MIDDLE_EVERY == 0 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
      if (!(c > a && c < b)) {
        c = (a + b) / 2;
        if (c <= a || c >= b) {
          break;
        }
      }
      double fc = f.applyAsDouble(c);
      if (fc != 0 && fc > 0 == positive) {
        a = c;
        fa = fc;
        fb = side == 1 ? fb / 2 : fb;
        side = 1;
      } else {
        b = c;
        fb = fc;
        fa = side == -1 ? fa / 2 : fa;
        side = -1;
      }
    }
    return b;
  }
}
