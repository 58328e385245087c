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
          "(?<![\\w.])([-+]?\\d+(?:\\.\\d*)?)\\s*(N/mm|kg/m\\^3|kPa|kN|kg|mm|cm|m|g|N)(?![\\w/^])");

  /** So many decimals of an inch tell 0.01 mm from the next. */
  private static final int OF_INCHES = 4;

  private static final int OF_POUNDS = 3;

  private record Sort(Shown shown, double factor) {}

  private static final Map<String, Sort> SORTS =
      Map.of(
          "mm", new Sort(Shown.LENGTH, 1),
          "cm", new Sort(Shown.LENGTH, 10),
          "m", new Sort(Shown.LENGTH, 1000),
          "kg", new Sort(Shown.MASS, 1),
          "g", new Sort(Shown.MASS, 0.001),
          "N", new Sort(Shown.FORCE, 1),
          "kN", new Sort(Shown.FORCE, 1000),
          "N/mm", new Sort(Shown.RATE, 1),
          "kPa", new Sort(Shown.PRESSURE, 1),
          "kg/m^3", new Sort(Shown.DENSITY, 1));

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
    Shown shown = SORTS.get(figure.group(2)).shown();
    int decimals = shown.isLength() ? OF_INCHES : OF_POUNDS;
    return Decimals.upTo(decimals, value(figure) * Units.IN.factor(shown)) + Units.IN.sign(shown);
  }
}
