package org.longlow.rider.effort;

/**
 * How much a seated person feels shaking of a frequency, over that felt most (ISO 2631-1, corners
 * from memory; within 1 % of the standard's table as remembered).
 */
public enum Weighting {
  /** Up and down, Wk. */
  UP(12.5, 12.5) {
    @Override
    double step(double f) {
      return second(f, STEP_FROM, STEP_Q) / second(f, STEP_TO, STEP_Q);
    }
  },
  /** To and fro, Wd. */
  ALONG(2, 2) {
    @Override
    double step(double f) {
      return 1;
    }
  };

  private static final double BAND_LOW = 0.4;
  private static final double BAND_HIGH = 100;
  private static final double Q = 0.63;
  private static final double STEP_FROM = 2.37;
  private static final double STEP_TO = 3.35;
  private static final double STEP_Q = 0.91;

  private final double f3;
  private final double f4;

  Weighting(double f3, double f4) {
    this.f3 = f3;
    this.f4 = f4;
  }

  abstract double step(double f);

  /**
   * Returns the weight of a frequency.
   *
   * @param f Hz, &gt; 0
   */
  public double at(double f) {
    double low = f * f / Math.sqrt(power(f) + power(BAND_LOW));
    double high = BAND_HIGH * BAND_HIGH / Math.sqrt(power(f) + power(BAND_HIGH));
    double fade = Math.hypot(f, f3) / f3 * f4 * f4 * Q / second(f, f4, Q);
    return low * high * fade * step(f);
  }

  /** |corner² − f² + i f corner / q| q, of second order. */
  static double second(double f, double corner, double q) {
    double real = (corner * corner - f * f) * q;
    return Math.hypot(real, f * corner);
  }

  private static double power(double f) {
    return f * f * f * f;
  }
}
