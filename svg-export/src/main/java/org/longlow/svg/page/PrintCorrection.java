package org.longlow.svg.page;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What to multiply a print by so that it comes out true: nominal length divided by measured length,
 * one factor across the paper and one along it, both of the paper as it is fed: upright, or with
 * the width of a roll across. A sheet drawn with its long side across is turned by the printer, and
 * the factors with it.
 *
 * @param printer name of the printer; empty if the user did not give one
 * @param sx factor across, in [0.95, 1.05]
 * @param sy factor along, in [0.95, 1.05]
 */
public record PrintCorrection(String printer, double sx, double sy) {

  /**
   * Furthest a factor may be from 1. More means "fit to page" was on, which is to be switched off,
   * not corrected.
   */
  public static final double FURTHEST = 0.05;

  /** Prints as drawn. */
  public static final PrintCorrection NONE = new PrintCorrection(1, 1);

  /** Length of the bars on every sheet, mm. */
  static final double BAR_MM = 100;

  /** Length of the long bars of a calibration page, mm. */
  static final double LONG_BAR_MM = 200;

  /** What measures more was the long bar; no bar of either length is printed so far off, mm. */
  private static final double BETWEEN_BARS_MM = 150;

  public PrintCorrection {
    Objects.requireNonNull(printer, "name of a printer (may be empty)");
    check("across", sx);
    check("along", sy);
  }

  /** A correction of a printer without a name. */
  public PrintCorrection(double sx, double sy) {
    this("", sx, sy);
  }

  /**
   * Returns the correction for bars that measured the given lengths on paper, mm; each is that of
   * 100 or of 200 mm, whichever is nearer.
   */
  public static PrintCorrection measured(double acrossMm, double alongMm) {
    return new PrintCorrection(factor(acrossMm), factor(alongMm));
  }

  /** Returns the length that a bar has which measures so long, mm: 100 or 200. */
  public static double barMm(double measuredMm) {
    return measuredMm > BETWEEN_BARS_MM ? LONG_BAR_MM : BAR_MM;
  }

  private static double factor(double measuredMm) {
    return barMm(measuredMm) / measuredMm;
  }

  /** Returns why a print cannot be corrected whose bar measures so long, mm; empty if it can. */
  public static Optional<String> refusal(double measuredMm) {
    double bar = barMm(measuredMm);
    return isNear(factor(measuredMm))
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%s mm; a bar of %.0f mm can be corrected where it measures %.1f to %.1f mm."
                    + " More than 5 %% off, it was printed \"fit to page\": print at actual size"
                    + " (100 %%) and measure again",
                measuredMm,
                bar,
                bar / (1 + FURTHEST),
                bar / (1 - FURTHEST)));
  }

  private static boolean isNear(double factor) {
    return Math.abs(factor - 1) <= FURTHEST;
  }

  /** Returns whether there is nothing to correct, for a printer that nobody named. */
  public boolean isNone() {
    return printer.isEmpty() && sx == 1 && sy == 1;
  }

  /** Returns a copy that names the printer. */
  public PrintCorrection of(String name) {
    return new PrintCorrection(name, sx, sy);
  }

  /** Returns the factors of a sheet that the printer turns by a quarter. */
  PrintCorrection turned() {
    return new PrintCorrection(printer, sy, sx);
  }

  /** Returns the same in words, such as {@code Corrected for Attic: 1.004 across, 0.998 along}. */
  public String words() {
    return printer.isEmpty()
        ? isNone()
            ? "no print correction"
            : String.format(Locale.ROOT, "print correction %.4f across, %.4f up", sx, sy)
        : String.format(Locale.ROOT, "Corrected for %s: %.3f across, %.3f along", printer, sx, sy);
  }

  private static void check(String way, double factor) {
    if (!isNear(factor)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "print correction %s is %s; allowed: %s to %s. Print at actual size (100 %%), measure"
                  + " the bar again",
              way,
              factor,
              1 - FURTHEST,
              1 + FURTHEST));
    }
  }
}
