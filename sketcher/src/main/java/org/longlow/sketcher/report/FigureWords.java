package org.longlow.sketcher.report;

import java.util.Locale;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.shop.SizeWords;

/**
 * Figures as words, always with a point and without useless zeros.
 *
 * @param units in which they are said
 */
record FigureWords(Units units) {

  static FigureWords of(Study study) {
    return new FigureWords(study.layout().units());
  }

  String says(double value, FigureUnit unit) {
    return unit.says(value, units);
  }

  String mm(double value) {
    return units.says(value, FigureSort.LENGTH);
  }

  /** Returns a length without its unit. */
  String bareMm(double value) {
    return units.bare(value, FigureSort.LENGTH);
  }

  /** Returns the section of a tube, such as {@code 28 × 2.5 mm}. */
  String tube(double diameterMm, double wallMm) {
    return sizes().tube(diameterMm, wallMm);
  }

  /** Returns an area of sheet. */
  String sheet(double mm2) {
    return sizes().sheet(mm2);
  }

  /** Returns a mass with two decimals. */
  String kg(double value) {
    return sizes().kg(value);
  }

  private SizeWords sizes() {
    return new SizeWords(units);
  }

  /** Returns a moment of inertia, of so many kg m². */
  String inertia(double value) {
    return units.says(value, FigureSort.INERTIA);
  }

  static String deg(double rad) {
    return FigureUnit.DEG.says(Math.toDegrees(rad));
  }

  /** Returns a figure with at most so many decimals. */
  static String fixed(double value, int decimals) {
    return Decimals.upTo(decimals, value);
  }

  /** Splits a name such as {@code trunkThigh} into words. */
  static String words(String camel) {
    return camel.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
  }
}
