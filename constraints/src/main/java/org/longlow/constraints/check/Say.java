package org.longlow.constraints.check;

import java.util.Locale;
import org.longlow.constraints.formula.Decimals;

/** Figures in sentences: one decimal for mm, degrees and newtons, whole where that is enough. */
final class Say {

  private Say() {}

  static String mm(double value) {
    return FigureUnit.MM.says(value);
  }

  static String deg(double value) {
    return FigureUnit.DEG.says(value);
  }

  static String percent(double share) {
    return FigureUnit.SHARE.says(share);
  }

  static String number(double value) {
    return Decimals.brief(value);
  }

  static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
