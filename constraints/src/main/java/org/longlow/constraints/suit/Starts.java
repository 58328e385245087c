package org.longlow.constraints.suit;

/**
 * Where searches start: the present place, then places spread evenly round it.
 *
 * <p>Halton's sequence (Numerische Mathematik 2, 1960) fills a box more evenly than dice do, and is
 * the same everywhere.
 */
final class Starts {

  private static final int[] PRIMES = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};

  private Starts() {}

  /**
   * Returns the coordinates of start {@code number}.
   *
   * @param number 0 for the present place
   * @param home present coordinates, mm
   * @param ways directions to spread along
   * @param spreadMm how far at most along each
   */
  static double[] of(int number, double[] home, double[][] ways, double spreadMm) {
    double[] target = home.clone();
    for (int w = 0; number > 0 && w < ways.length; w++) {
      int base = PRIMES[w % PRIMES.length];
      double by = spreadMm * (2 * radicalInverse(number + w / PRIMES.length, base) - 1);
      for (int k = 0; k < target.length; k++) {
        target[k] += by * ways[w][k];
      }
    }
    return target;
  }

  /** The digits of {@code n} to {@code base}, mirrored at the point; in (0, 1). */
  private static double radicalInverse(int n, int base) {
    double value = 0;
    double place = 1.0 / base;
    for (int rest = n; rest > 0; rest /= base) {
      value += rest % base * place;
      place /= base;
    }
    return value;
  }
}
