package org.longlow.sketcher.shop;

import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/**
 * Sizes of stock and pieces as words.
 *
 * @param units in which they are said
 */
public record SizeWords(Units units) {

  private static final double SQUARE_FOOT_MM2 = 304.8 * 304.8;

  /** Returns a length with its unit. */
  public String mm(double value) {
    return units.says(value, FigureSort.LENGTH);
  }

  /** Returns a length without its unit. */
  public String bareMm(double value) {
    return units.bare(value, FigureSort.LENGTH);
  }

  /** Returns two sides of a rectangle. */
  public String flat(double longMm, double wideMm) {
    return bareMm(longMm) + " × " + mm(wideMm);
  }

  /** Returns the section of a tube, such as {@code 28 × 2.5 mm}. */
  public String tube(double diameterMm, double wallMm) {
    return units == Units.MM
        ? Decimals.upTo(1, diameterMm) + " × " + Decimals.upTo(2, wallMm) + " mm"
        : units.given(diameterMm) + " × " + units.given(wallMm);
  }

  /** Returns the pitch of a chain as it is sold: 15.875 mm, {@code 5/8"}. */
  public String pitch(double value) {
    return units == Units.MM ? Decimals.upTo(3, value) + " mm" : units.given(value);
  }

  /** Returns an area of sheet. */
  public String sheet(double mm2) {
    return units == Units.MM
        ? Decimals.upTo(3, mm2 / 1e6) + " m²"
        : Decimals.upTo(2, mm2 / SQUARE_FOOT_MM2) + " ft²";
  }

  /** Returns a force with its unit. */
  public String newtons(double value) {
    return units.says(value, FigureSort.FORCE);
  }

  /** Returns a mass with two decimals. */
  public String kg(double value) {
    return Decimals.upTo(2, value * units.factor(FigureSort.MASS)) + units.sign(FigureSort.MASS);
  }
}
