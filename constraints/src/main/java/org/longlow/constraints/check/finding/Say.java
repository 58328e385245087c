package org.longlow.constraints.check.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.formula.Decimals;
import org.longlow.rider.geom.PointMm;

/** Figures in sentences: one decimal for mm, degrees and newtons, whole where that is enough. */
public final class Say {

  /** What rounds to no tenth is not said, mm. */
  private static final double LEAST_MM = 0.05;

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

  /** Returns a way in the elevation in words, such as {@code 22 mm forward and 3 mm up}. */
  public static String way(PointMm shift) {
    List<String> words = new ArrayList<>();
    if (Math.abs(shift.x()) >= LEAST_MM) {
      words.add(mm(Math.abs(shift.x())) + (shift.x() > 0 ? " forward" : " back"));
    }
    if (Math.abs(shift.z()) >= LEAST_MM) {
      words.add(mm(Math.abs(shift.z())) + (shift.z() > 0 ? " up" : " down"));
    }
    return String.join(" and ", words);
  }

  /** Says that something is moved so: straight up and down it is raised and lowered. */
  public static String moved(String what, PointMm shift) {
    if (Math.abs(shift.x()) < LEAST_MM && Math.abs(shift.z()) >= LEAST_MM) {
      return (shift.z() > 0 ? "raise " : "lower ") + what + " " + mm(Math.abs(shift.z()));
    }
    return "move " + what + " " + way(shift);
  }

  public static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
