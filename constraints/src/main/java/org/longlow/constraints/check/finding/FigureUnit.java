package org.longlow.constraints.check.finding;

import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/** Units of figures, and how a figure is said: the same in tables, window, report and sheets. */
public enum FigureUnit {
  MM("mm", FigureSort.LENGTH),
  MM2("mm2", FigureSort.AREA),
  DEG("deg", FigureSort.ANGLE),
  /** Acceleration, in that of gravity. */
  G("g", " g", 2),
  NEWTON("N", FigureSort.FORCE),
  KG("kg", FigureSort.MASS),
  KPA("kPa", FigureSort.PRESSURE),
  KM_PER_HOUR("km/h", FigureSort.SPEED),
  /** Part of a whole, 0 to 1; said in per cent. */
  SHARE("share", FigureSort.SHARE),
  COUNT("count", "", 0),
  LINKS("links", " links", 1),
  WATT("W", " W", 0),
  HOUR("h", " h", 1),
  /** A number without unit. */
  NONE("", "", 2);

  private final String word;
  private final FigureSort shown;
  private final String sign;
  private final int decimals;

  FigureUnit(String word, FigureSort shown) {
    this(word, shown, "", 0);
  }

  FigureUnit(String word, String sign, int decimals) {
    this(word, null, sign, decimals);
  }

  FigureUnit(String word, FigureSort shown, String sign, int decimals) {
    this.word = word;
    this.shown = shown;
    this.sign = sign;
    this.decimals = decimals;
  }

  /** Returns it as in files, such as {@code deg}. */
  public String word() {
    return word;
  }

  /** Returns a figure with its unit, such as {@code 12.5°}; a dash where there is none. */
  public String says(double value) {
    return says(value, Units.MM);
  }

  /** Returns a figure in the units asked for, such as {@code 12 5/16 in}. */
  public String says(double value, Units units) {
    return says(value, units, 0, value);
  }

  /**
   * Returns a figure with so many decimals more than usual.
   *
   * @param most the greatest of those that it is read beside
   */
  String says(double value, Units units, int more, double most) {
    if (shown != null) {
      FigureSort sort = shown.upTo(most);
      return more > 0 ? units.finer(value, sort, more) : units.says(value, sort);
    }
    if (Double.isNaN(value)) {
      return "-";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "no end" : "-no end";
    }
    return Decimals.upTo(decimals + more, value) + sign;
  }
}
