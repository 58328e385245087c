package org.longlow.constraints.check;

import java.util.Locale;

/** Figures in sentences: one decimal for mm, degrees and newtons, whole where that is enough. */
final class Say {

  private Say() {}

  static String mm(double value) {
    return number(value) + " mm";
  }

  static String deg(double value) {
    return number(value) + "°";
  }

  static String percent(double share) {
    return number(share * 100) + " %";
  }

  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    String cut = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    return cut.equals("-0") ? "0" : cut;
  }

  static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
