package org.longlow.constraints.check.finding;

import java.util.Locale;
import org.longlow.constraints.formula.Decimals;

/** Figures in sentences: one decimal for mm, degrees and newtons, whole where that is enough. */
public final class Say {

  private Say() {}

  public static String mm(double value) {
    return FigureUnit.MM.says(value);
  }

  public static String deg(double value) {
    return FigureUnit.DEG.says(value);
  }

  public static String percent(double share) {
    return FigureUnit.SHARE.says(share);
  }

  public static String number(double value) {
    return Decimals.brief(value);
  }

  public static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
