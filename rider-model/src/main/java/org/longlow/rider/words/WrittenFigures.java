package org.longlow.rider.words;

import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures in quantities and formulas as people write them. A figure that stands in the units asked
 * for already, such as {@code 63 1/2 in}, stays letter by letter; one in the other units is turned,
 * finely enough to be known again. Within a formula it is a decimal, so that it can be read there.
 */
final class WrittenFigures {

  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<![\\w.])([-+]?\\d+(?:\\.\\d*)?)\\s*(N/mm|kg/m\\^3|km/h|kPa|kN|kg|mm|cm|m|g|N)(?![\\w/^])");

  /** So many decimals of an inch tell 0.01 mm from the next. */
  private static final int OF_INCHES = 4;

  private static final int OF_POUNDS = 3;

  private record Sort(FigureSort shown, double factor) {}

  private static final Map<String, Sort> SORTS =
      Map.ofEntries(
          Map.entry("mm", new Sort(FigureSort.LENGTH, 1)),
          Map.entry("cm", new Sort(FigureSort.LENGTH, 10)),
          Map.entry("m", new Sort(FigureSort.LENGTH, 1000)),
          Map.entry("kg", new Sort(FigureSort.MASS, 1)),
          Map.entry("g", new Sort(FigureSort.MASS, 0.001)),
          Map.entry("N", new Sort(FigureSort.FORCE, 1)),
          Map.entry("kN", new Sort(FigureSort.FORCE, 1000)),
          Map.entry("N/mm", new Sort(FigureSort.RATE, 1)),
          Map.entry("kPa", new Sort(FigureSort.PRESSURE, 1)),
          Map.entry("kg/m^3", new Sort(FigureSort.DENSITY, 1)),
          Map.entry("km/h", new Sort(FigureSort.SPEED, 1)));

  private WrittenFigures() {}

  static String in(Units units, String text) {
    if (units == Units.MM) {
      return text;
    }
    Matcher figure = FIGURE.matcher(text);
    return figure.matches() && SORTS.get(figure.group(2)).shown().isLength()
        ? Units.IN.given(value(figure))
        : figure.reset().replaceAll(WrittenFigures::otherwise);
  }

  private static double value(MatchResult figure) {
    return Double.parseDouble(figure.group(1)) * SORTS.get(figure.group(2)).factor();
  }

  private static String otherwise(MatchResult figure) {
    FigureSort shown = SORTS.get(figure.group(2)).shown();
    int decimals = shown.isLength() ? OF_INCHES : OF_POUNDS;
    return Decimals.upTo(decimals, value(figure) * Units.IN.factor(shown)) + Units.IN.sign(shown);
  }
}
