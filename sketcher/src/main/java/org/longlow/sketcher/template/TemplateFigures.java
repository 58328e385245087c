package org.longlow.sketcher.template;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.longlow.constraints.machine.shop.Drill;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;
import org.longlow.svg.page.SheetLengths;

/**
 * Figures on templates.
 *
 * @param units in which they are said
 */
record TemplateFigures(Units units) {

  /** Stations along a datum are this far apart: round figures of the units. */
  double stationMm() {
    return units == Units.MM ? 50 : 2 * Units.INCH_MM;
  }

  /** Returns a station's figure, a whole one. */
  String station(double mm) {
    return Decimals.upTo(0, units == Units.MM ? mm : mm / Units.INCH_MM);
  }

  /** Returns how the sheets themselves write lengths. */
  SheetLengths sheets() {
    return units == Units.MM ? SheetLengths.MM : new SheetLengths(this::mm, true);
  }

  /** Returns a length without its unit. */
  String bare(double mm) {
    return units.bare(mm, FigureSort.LENGTH);
  }

  /** Returns a length. */
  String mm(double mm) {
    return units.says(mm, FigureSort.LENGTH);
  }

  /** Returns the drill nearest to a hole, without its unit; empty for what is sawn or bored. */
  String drill(double diameterMm) {
    if (units == Units.MM) {
      OptionalDouble metric = Drill.metricMm(diameterMm);
      return metric.isPresent() ? bare(metric.getAsDouble()) : "";
    }
    OptionalInt parts = Drill.sixtyFourths(diameterMm);
    return parts.isPresent() ? sixtyFourths(parts.getAsInt()) : "";
  }

  private static String sixtyFourths(int parts) {
    int over = parts;
    int under = 64;
    while (over % 2 == 0) {
      over /= 2;
      under /= 2;
    }
    return over + "/" + under;
  }

  /** Returns a tube's section: 1.65 mm of wall is another tube than 1.7 mm. */
  String tube(double diameterMm, double wallMm) {
    return units == Units.MM
        ? bare(diameterMm) + " x " + Decimals.upTo(2, wallMm) + " mm"
        : units.given(diameterMm) + " x " + units.given(wallMm);
  }

  /** Returns a mass with both hundredths. */
  String mass(double kg) {
    return units.says(kg, FigureSort.MASS_IN_HUNDREDTHS);
  }

  /** Returns a text of ours whose figures are written in mm. */
  String own(String text) {
    return Words.read(text).in(units);
  }
}
