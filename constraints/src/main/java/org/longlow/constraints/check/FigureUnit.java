package org.longlow.constraints.check;

/** Units of the figures in findings. */
public enum FigureUnit {
  MM("mm"),
  MM2("mm2"),
  DEG("deg"),
  /** Acceleration, in that of gravity. */
  G("g"),
  /** Part of a whole, 0 to 1. */
  SHARE("share"),
  COUNT("count"),
  LINKS("links"),
  /** A number without unit. */
  NONE("");

  private final String word;

  FigureUnit(String word) {
    this.word = word;
  }

  /** Returns it as in files and tables. */
  public String word() {
    return word;
  }
}
