package org.longlow.constraints.check.finding;

import java.util.Locale;
import org.longlow.constraints.formula.Decimals;

/** Units of figures, and how a figure is said: the same in tables, window, report and sheets. */
public enum FigureUnit {
  MM("mm", " mm", 1),
  MM2("mm2", " mm2", 0),
  DEG("deg", "°", 1),
  /** Acceleration, in that of gravity. */
  G("g", " g", 2),
  NEWTON("N", " N", 0),
  KG("kg", " kg", 1),
  KPA("kPa", " kPa", 1),
  /** Part of a whole, 0 to 1; said in per cent. */
  SHARE("share", " %", 1),
  COUNT("count", "", 0),
  LINKS("links", " links", 1),
  /** A number without unit. */
  NONE("", "", 2);

  private final String word;
  private final String sign;
  private final int decimals;

  FigureUnit(String word, String sign, int decimals) {
    this.word = word;
    this.sign = sign;
    this.decimals = decimals;
  }

  /** Returns it as in files, such as {@code deg}. */
  public String word() {
    return word;
  }

  /** Returns a figure with its unit, such as {@code 12.5°}; a dash where there is none. */
  public String says(double value) {
    if (Double.isNaN(value)) {
      return "-";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "no end" : "-no end";
    }
    return number(this == SHARE ? 100 * value : value) + sign;
  }

  private String number(double value) {
    if (decimals == 1) {
      return Decimals.brief(value);
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    if (text.contains(".")) {
      text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return text.equals("-0") ? "0" : text;
  }
}
