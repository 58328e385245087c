package org.longlow.constraints.shape;

/**
 * A smooth run through values that nowhere leaves what lies between two neighbours (Fritsch and
 * Butland 1984): cubic Hermite from one to the next.
 */
final class Monotone {

  private Monotone() {}

  /**
   * Returns the slope at a value that runs on without a kink: 0 at the greatest and least, else the
   * harmonic mean of those on both sides.
   */
  static double slope(double before, double after) {
    return before * after <= 0 ? 0 : 2 * before * after / (before + after);
  }

  /**
   * Returns the value on the way from one to another.
   *
   * @param share 0 at its start, 1 at its end
   * @param width from its start to its end
   * @param slopeFrom slope at its start; that of the straight line where nothing bends it
   * @param slopeTo slope at its end
   */
  static double at(
      double share, double width, double from, double to, double slopeFrom, double slopeTo) {
    double straight = (to - from) / width;
    return from
        + share * (to - from)
        + share
            * (1 - share)
            * width
            * ((1 - share) * (slopeFrom - straight) - share * (slopeTo - straight));
  }
}
