package org.longlow.rider.seat;

import java.util.List;

/**
 * Pressure against compression of a stack's springy layers, tabulated once so that a contact can be
 * integrated in microseconds.
 *
 * <p>Knots lie evenly in w = p / (p + p₀) from 0 to 1, which stays smooth up to lock-up (w = 1 at p
 * = ∞); at each knot the compression and its slope are exact. Between knots w(c) is a cubic Hermite
 * polynomial. Measured error against the exact inverse: below 1e-5 of the pressure up to 50 kPa,
 * 5e-5 beyond (see the test).
 */
final class StackCurve {

  private static final int KNOTS = 192;
  private static final int BINS = 384;

  private final double[] c = new double[KNOTS + 1];
  private final double[] w = new double[KNOTS + 1];
  private final double[] dw = new double[KNOTS + 1];
  private final int[] guide = new int[BINS + 1];
  private final double limitMm;

  /** p₀, Pa: twice the pressure at which the softest layer is half way to lock-up. */
  private final double scalePa;

  StackCurve(List<FoamLayer> layers) {
    List<FoamLayer> springy =
        layers.stream().filter(l -> l.foam().kind() != Foam.Kind.MEMORY).toList();
    double limit = 0;
    double tail = 0;
    double softest = Double.POSITIVE_INFINITY;
    double[] strain = new double[springy.size()];
    double[] slope = new double[springy.size()];
    double before = 0;
    for (FoamLayer layer : springy) {
      limit += layer.thicknessMm() * layer.foam().lockStrain();
      softest = Math.min(softest, layer.foam().aPa() + layer.foam().bPa());
      tail += layer.thicknessMm() * layer.foam().bPa() * layer.foam().lockStrain();
    }
    limitMm = limit;
    scalePa = 2 * softest;
    for (int j = 0; j < KNOTS; j++) {
      w[j] = (double) j / KNOTS;
      double p = scalePa * w[j] / (1 - w[j]);
      double compression = 0;
      double compliance = 0;
      for (int i = 0; i < strain.length; i++) {
        FoamLayer layer = springy.get(i);
        // The curve bends down: the tangent at the last knot lands a little past the next.
        double guess = strain[i] + (p - before) / slope[i];
        strain[i] = j == 0 ? 0 : layer.foam().strainAt(p, guess);
        slope[i] = layer.foam().slopePa(strain[i]);
        compression += layer.thicknessMm() * strain[i];
        compliance += layer.thicknessMm() / slope[i];
      }
      before = p;
      c[j] = compression;
      double shrink = scalePa / ((p + scalePa) * (p + scalePa));
      dw[j] = shrink / compliance;
    }
    c[KNOTS] = limit;
    w[KNOTS] = 1;
    dw[KNOTS] = tail > 0 ? scalePa / tail : 0;
    int j = 0;
    for (int b = 0; b <= BINS; b++) {
      double at = limit * b / BINS;
      while (j < KNOTS - 1 && c[j + 1] <= at) {
        j++;
      }
      guide[b] = j;
    }
  }

  /** Returns the compression at which every layer is solid, mm. */
  double limitMm() {
    return limitMm;
  }

  /** Returns the pressure at a compression, Pa; +∞ at or past the limit, 0 at or below zero. */
  double pressurePa(double compressionMm) {
    if (!(compressionMm > 0)) {
      return 0;
    }
    if (compressionMm >= limitMm) {
      return Double.POSITIVE_INFINITY;
    }
    int j = knot(compressionMm);
    double h = c[j + 1] - c[j];
    double t = (compressionMm - c[j]) / h;
    double s = 1 - t;
    double value =
        s * s * ((1 + 2 * t) * w[j] + t * h * dw[j])
            + t * t * ((1 + 2 * s) * w[j + 1] - s * h * dw[j + 1]);
    return scalePa * value / (1 - value);
  }

  /**
   * Reads pressure and slope together.
   *
   * @param out receives p (Pa) at 0 and dp/dc (Pa/mm) at 1
   */
  void read(double compressionMm, double[] out) {
    double at = Math.max(0, compressionMm);
    if (at >= limitMm) {
      out[0] = Double.POSITIVE_INFINITY;
      out[1] = Double.POSITIVE_INFINITY;
      return;
    }
    int j = knot(at);
    double h = c[j + 1] - c[j];
    double t = (at - c[j]) / h;
    double s = 1 - t;
    double value =
        s * s * ((1 + 2 * t) * w[j] + t * h * dw[j])
            + t * t * ((1 + 2 * s) * w[j + 1] - s * h * dw[j + 1]);
    double slope =
        6 * t * s * (w[j + 1] - w[j]) / h + s * (1 - 3 * t) * dw[j] + t * (1 - 3 * s) * dw[j + 1];
    double rest = 1 / (1 - value);
    out[0] = scalePa * value * rest;
    out[1] = scalePa * slope * rest * rest;
  }

  private int knot(double compressionMm) {
    int j = guide[(int) (BINS * (compressionMm / limitMm))];
    while (j < KNOTS - 1 && c[j + 1] <= compressionMm) {
      j++;
    }
    return j;
  }
}
