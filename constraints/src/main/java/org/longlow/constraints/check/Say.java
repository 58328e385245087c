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
    double tenths = Math.abs(value) * 10;
    double whole = Math.floor(tenths + 0.5);
    if (!(tenths < 1e9) || Math.abs(whole - 0.5 - tenths) < 1e-6) {
      return slowly(value); // not finite, huge, or half way between two tenths
    }
    long n = (long) whole;
    String digits = n % 10 == 0 ? Long.toString(n / 10) : n / 10 + "." + n % 10;
    return value < 0 && n > 0 ? "-" + digits : digits;
  }

  private static String slowly(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    String cut = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    return cut.equals("-0") ? "0" : cut;
  }

  static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
