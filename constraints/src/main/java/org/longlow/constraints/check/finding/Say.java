package org.longlow.constraints.check.finding;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * Figures in sentences: one decimal for mm and degrees, whole newtons, whole where that is enough.
 * What has a unit that people choose stays a figure until somebody reads it.
 */
public final class Say {

  /** What rounds to no tenth is not said, mm. */
  private static final double LEAST_MM = 0.05;

  private Say() {}

  /** Returns a length. */
  public static Words mm(double value) {
    return Words.figure(value, FigureSort.LENGTH);
  }

  /** Returns a length with its tenth also where that is nought. */
  public static Words tenths(double value) {
    return Words.figure(value, FigureSort.LENGTH_IN_TENTHS);
  }

  /** Returns a length said in whole millimetres. */
  public static Words wholeMm(double value) {
    return Words.figure(value, FigureSort.WHOLE_LENGTH);
  }

  /** Returns a force in whole newtons. */
  public static Words newton(double value) {
    return Words.figure(value, FigureSort.FORCE);
  }

  /** Returns a mass. */
  public static Words kg(double value) {
    return Words.figure(value, FigureSort.MASS);
  }

  /** Returns a pressure, kPa. */
  public static Words kpa(double value) {
    return Words.figure(value, FigureSort.PRESSURE);
  }

  /** Returns an angle, deg. */
  public static Words deg(double value) {
    return Words.figure(value, FigureSort.ANGLE);
  }

  /** Returns a share in per cent. */
  public static Words percent(double share) {
    return Words.figure(share, FigureSort.SHARE);
  }

  /** Returns how far a section is open, in whole per cent. */
  public static Words open(double share) {
    return Words.format("%.0f %%", share * 100);
  }

  /** Returns an acceleration in that of gravity. */
  public static Words gravity(double g) {
    return Words.figure(g, FigureSort.GRAVITY);
  }

  /** Returns a number without unit, in hundredths. */
  public static Words hundredths(double value) {
    return Words.figure(value, FigureSort.NUMBER);
  }

  public static String number(double value) {
    return Decimals.brief(value);
  }

  /** Returns a place by its distances along and up, such as {@code 560, 470 mm}. */
  public static Words place(PointMm at) {
    return Words.of(Words.bare(at.x(), FigureSort.WHOLE_LENGTH), ", ", wholeMm(at.z()));
  }

  /**
   * Returns a way in the elevation in words, such as {@code 22 mm forward and 3 mm up}; whoever
   * goes it has gone far enough.
   */
  public static Words way(PointMm shift) {
    List<Words> words = new ArrayList<>();
    if (Math.abs(shift.x()) >= LEAST_MM) {
      words.add(Words.of(Words.atLeast(Math.abs(shift.x())), shift.x() > 0 ? " forward" : " back"));
    }
    if (Math.abs(shift.z()) >= LEAST_MM) {
      words.add(Words.of(Words.atLeast(Math.abs(shift.z())), shift.z() > 0 ? " up" : " down"));
    }
    return Words.join(" and ", words);
  }

  /** Says that something is moved so: straight up and down it is raised and lowered. */
  public static Words moved(String what, PointMm shift) {
    if (Math.abs(shift.x()) < LEAST_MM && Math.abs(shift.z()) >= LEAST_MM) {
      return Words.of(
          (shift.z() > 0 ? "raise " : "lower ") + what + " ", Words.atLeast(Math.abs(shift.z())));
    }
    return Words.of("move " + what + " ", way(shift));
  }

  /** Returns a pattern of {@link String#format} with its values, {@code Words} among them. */
  public static Words format(String pattern, Object... values) {
    return Words.format(pattern, values);
  }
}
