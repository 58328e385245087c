package org.longlow.constraints.json;

import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Unit;

/** The range that a quantity must lie in, in the unit it is shown in; ends included unless open. */
record Sign(double from, double to, boolean open) {

  static final Sign ANY = new Sign(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false);
  static final Sign POSITIVE = new Sign(0, Double.POSITIVE_INFINITY, true);
  static final Sign NOT_NEGATIVE = new Sign(0, Double.POSITIVE_INFINITY, false);

  static Sign between(double from, double to) {
    return new Sign(from, to, false);
  }

  boolean allows(double shown) {
    return (open ? shown > from : shown >= from) && shown <= to;
  }

  String words(Unit unit) {
    if (equals(POSITIVE)) {
      return "must be more than 0";
    }
    if (equals(NOT_NEGATIVE)) {
      return "must not be negative";
    }
    return "must be from " + number(from) + " to " + number(to) + ' ' + unit.symbol();
  }

  /**
   * Returns the largest size that makes sense on a motorcycle, in internal units. It catches slips
   * of the unit (1640 m for 1640 mm) and keeps hostile numbers out of the solver.
   */
  static double largest(Dim dim) {
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
    return 1e9;
  }

  static String number(double value) {
    double rounded = Math.rint(value * 1e6) / 1e6;
    return rounded == Math.rint(rounded) && Math.abs(rounded) < 1e15
        ? Long.toString((long) rounded)
        : Double.toString(rounded);
  }
}
