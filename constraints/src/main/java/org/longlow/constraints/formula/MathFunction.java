package org.longlow.constraints.formula;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The functions a formula may call. Angles are in rad inside; write {@code sin(24 deg)}. */
public enum MathFunction {
  SIN(1),
  COS(1),
  TAN(1),
  ASIN(1),
  ACOS(1),
  ATAN(1),
  ATAN2(2),
  SQRT(1),
  ABS(1),
  HYPOT(2),
  MIN(2),
  MAX(2);

  private final int arity;

  MathFunction(int arity) {
    this.arity = arity;
  }

  public int arity() {
    return arity;
  }

  /** Returns the function called {@code name}, in any case. */
  public static Optional<MathFunction> named(String name) {
    for (MathFunction f : values()) {
      if (f.name().equals(name.toUpperCase(Locale.ROOT))) {
        return Optional.of(f);
      }
    }
    return Optional.empty();
  }

  double apply(double[] a) {
    return switch (this) {
      case SIN -> Math.sin(a[0]);
      case COS -> Math.cos(a[0]);
      case TAN -> Math.tan(a[0]);
      case ASIN -> Math.asin(a[0]);
      case ACOS -> Math.acos(a[0]);
      case ATAN -> Math.atan(a[0]);
      case ATAN2 -> Math.atan2(a[0], a[1]);
      case SQRT -> Math.sqrt(a[0]);
      case ABS -> Math.abs(a[0]);
      case HYPOT -> Math.hypot(a[0], a[1]);
      case MIN -> Math.min(a[0], a[1]);
      case MAX -> Math.max(a[0], a[1]);
    };
  }

  Dim dim(List<Dim> a) {
    switch (this) {
      case SIN, COS, TAN:
        need(a.get(0).isPure(), "needs an angle, got " + a.get(0).words());
        return Dim.NUMBER;
      case ASIN, ACOS, ATAN:
        need(a.get(0).equals(Dim.NUMBER), "needs a plain number, got " + a.get(0).words());
        return Dim.ANGLE;
      case ATAN2:
        same(a);
        return Dim.ANGLE;
      case SQRT:
        Dim d = a.get(0);
        need(
            d.length() % 2 == 0
                && d.mass() % 2 == 0
                && d.force() % 2 == 0
                && d.time() % 2 == 0
                && !d.angle(),
            "needs a square (such as mm^2), got " + d.words());
        return new Dim(d.length() / 2, d.mass() / 2, d.force() / 2, d.time() / 2, false);
      case ABS:
        return a.get(0);
      default:
        same(a);
        return a.get(0);
    }
  }

  private void same(List<Dim> a) {
    need(
        a.get(0).equals(a.get(1)),
        "needs two quantities of one kind, got " + a.get(0).words() + " and " + a.get(1).words());
  }

  private void need(boolean holds, String otherwise) {
    if (!holds) {
      throw new FormulaException(name().toLowerCase(Locale.ROOT) + " " + otherwise);
    }
  }
}
