package org.longlow.constraints.check;

import java.util.Locale;
import org.longlow.constraints.formula.Decimals;

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
    return Decimals.brief(value);
  }

  static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
