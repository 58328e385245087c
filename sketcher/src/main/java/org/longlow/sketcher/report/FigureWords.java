package org.longlow.sketcher.report;

import java.util.Locale;
import org.longlow.constraints.check.finding.FigureUnit;

/** Figures as words, always with a point and without useless zeros. */
final class FigureWords {

  private FigureWords() {}

  static String mm(double value) {
    return FigureUnit.MM.says(value);
  }

  static String deg(double rad) {
    return FigureUnit.DEG.says(Math.toDegrees(rad));
  }

  static String number(double value) {
    return fixed(value, 1);
  }

  /** Returns a figure with at most so many decimals. */
  static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
    if (text.contains(".")) {
      text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return value < 0 && !text.equals("0") ? "-" + text : text;
  }

  /** Splits a name such as {@code trunkThigh} into words. */
  static String words(String camel) {
    return camel.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
  }
}
