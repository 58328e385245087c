package org.longlow.constraints.document;

import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Unit;
import org.longlow.rider.words.Decimals;

/** The range that a quantity must lie in, in the unit it is shown in; ends included unless open. */
public record Range(double from, double to, boolean open) {

  public static final Range ANY =
      new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false);
  public static final Range POSITIVE = new Range(0, Double.POSITIVE_INFINITY, true);
  public static final Range NOT_NEGATIVE = new Range(0, Double.POSITIVE_INFINITY, false);

  public static Range between(double from, double to) {
    return new Range(from, to, false);
  }

  /** Returns a range without an upper end. */
  public static Range atLeast(double from) {
    return new Range(from, Double.POSITIVE_INFINITY, false);
  }

  public boolean allows(double shown) {
    return (open ? shown > from : shown >= from) && shown <= to;
  }

  /** Returns both ends in words with their unit, such as 1200 to 2200 mm. */
  String span(Unit unit) {
    return span() + sign(unit);
  }

  private static String sign(Unit unit) {
    return unit == Unit.NONE ? "" : ' ' + unit.symbol();
  }

  /** Returns both ends in words, such as 1200 to 2200. */
  String span() {
    return number(from) + " to " + number(to);
  }

  public String words(Unit unit) {
    if (equals(POSITIVE)) {
      return "must be more than 0";
    }
    if (equals(NOT_NEGATIVE)) {
      return "must not be negative";
    }
    if (to == Double.POSITIVE_INFINITY) {
      return "must be at least " + number(from) + sign(unit);
    }
    return "must be from " + span(unit);
  }

  /**
   * Returns the largest size that makes sense on a motorcycle, in internal units. It catches slips
   * of the unit (1640 m for 1640 mm) and keeps hostile numbers out of the solver.
   */
  public static double largest(Dim dim) {
    if (dim.equals(Dim.LENGTH)) {
      return 100_000;
    }
    if (dim.equals(Dim.ANGLE)) {
      return 4 * Math.PI;
    }
    if (dim.equals(Dim.MASS)) {
      return 5_000;
    }
    if (dim.equals(Dim.FORCE) || dim.equals(Dim.RATE)) {
      return 100_000;
    }
    if (dim.equals(Dim.SPEED)) {
      return 1e6; // 3,600 km/h
    }
    return 1e9;
  }

  public static String number(double value) {
    double rounded = Math.rint(value * 1e6) / 1e6;
    return Decimals.written(Double.isFinite(rounded) ? rounded : value);
  }
}
