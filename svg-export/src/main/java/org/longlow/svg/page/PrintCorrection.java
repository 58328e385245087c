package org.longlow.svg.page;

import java.util.Locale;

/**
 * What to multiply a print by so that it comes out true: nominal length divided by measured length,
 * one factor across the sheet and one along it.
 *
 * @param sx factor across (horizontal on the sheet), in [0.95, 1.05]
 * @param sy factor along (vertical on the sheet), in [0.95, 1.05]
 */
public record PrintCorrection(double sx, double sy) {

  /**
   * Furthest a factor may be from 1. More means "fit to page" was on, which is to be switched off,
   * not corrected.
   */
  public static final double FURTHEST = 0.05;

  /** Prints as drawn. */
  public static final PrintCorrection NONE = new PrintCorrection(1, 1);

  public PrintCorrection {
    check("across", sx);
    check("along", sy);
  }

  /** Returns the correction for bars of 100 mm that measured the given lengths on paper, mm. */
  public static PrintCorrection measured(double acrossMm, double alongMm) {
    return new PrintCorrection(ScaleBar.LENGTH_MM / acrossMm, ScaleBar.LENGTH_MM / alongMm);
  }

  /** Returns whether a print can be corrected whose bar of 100 mm measures so long, mm. */
  public static boolean corrects(double measuredMm) {
    return isNear(ScaleBar.LENGTH_MM / measuredMm);
  }

  private static boolean isNear(double factor) {
    return Math.abs(factor - 1) <= FURTHEST;
  }

  /** Returns whether there is nothing to correct. */
  public boolean isNone() {
    return sx == 1 && sy == 1;
  }

  private static void check(String way, double factor) {
    if (!isNear(factor)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "print correction %s is %s; allowed: %s to %s. Print at actual size (100 %%), measure the bar again",
              way,
              factor,
              1 - FURTHEST,
              1 + FURTHEST));
    }
  }
}
