package org.longlow.constraints.mend;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;

/**
 * In what steps a quantity is changed, and how far. All of it is judgement: steps that a home shop
 * can measure, and as far as the machine is still the same machine.
 *
 * @param unit the unit that is typed
 * @param step one step, in that unit
 * @param probe how many steps the first look goes
 * @param most how many steps are tried at most
 * @param much how many steps are much: 10 mm, 5 degrees; for comparing unlike quantities
 */
record Grid(Unit unit, double step, int probe, int most, double much) {

  /** Lengths: whole millimetres, up to 300. */
  static final Grid MM = new Grid(Unit.MM, 1, 4, 300, 10);

  private static final Grid INCH = new Grid(Unit.INCH, 0.05, 3, 240, 8);
  private static final Grid DEG = new Grid(Unit.DEG, 0.5, 2, 40, 10);
  private static final Grid NEWTON = new Grid(Unit.NEWTON, 10, 4, 100, 20);
  private static final Grid RATE = new Grid(Unit.NEWTON_PER_MM, 0.5, 2, 60, 10);

  /** Counted things, such as links of a chain: one more, or a few. */
  private static final Grid COUNT = new Grid(Unit.NONE, 1, 1, 12, 1);

  /** A number of inches at the end; a name such as chain ends so too. */
  private static final Pattern INCHES_LAST =
      Pattern.compile("(?<![A-Za-z0-9_.])\\d*\\.?\\d+\\s*in$");

  /** A constant at the end of a sum. */
  private static final Pattern LAST =
      Pattern.compile("(.*\\S)\\s*([+-])\\s*(\\d+(?:\\.\\d+)?)\\s*([A-Za-z/]+)\\s*");

  /** Returns the steps of a quantity; empty for those that are given by what one has. */
  static Optional<Grid> of(Formula written, Dim dim) {
    if (dim.equals(Dim.LENGTH)) {
      return Optional.of(INCHES_LAST.matcher(written.text().strip()).find() ? INCH : MM);
    }
    if (dim.equals(Dim.ANGLE)) {
      return Optional.of(DEG);
    }
    if (dim.equals(Dim.FORCE)) {
      return Optional.of(NEWTON);
    }
    if (dim.equals(Dim.RATE)) {
      return Optional.of(RATE);
    }
    boolean counted =
        dim.equals(Dim.NUMBER)
            && written.expr() instanceof Expr.Num n
            && n.value() == Math.rint(n.value())
            && Math.abs(n.value()) >= 2;
    return counted ? Optional.of(COUNT) : Optional.empty();
  }

  /** Returns the same steps, but no farther than {@code internal}. */
  Grid upTo(double internal) {
    int steps = (int) Math.min(most, Math.floor(internal / internal(1) + 1e-9));
    return new Grid(unit, step, Math.min(probe, steps), steps, much);
  }

  /** Returns the same steps, as far as {@code internal} reaches but for the last of it. */
  Grid all(double internal) {
    return new Grid(unit, step, probe, (int) Math.ceil(internal / internal(1)) - 1, much);
  }

  /** Returns so many steps in internal units. */
  double internal(double steps) {
    return steps * step * unit.factor();
  }

  /** Returns the whole step next to a value. */
  Formula nearest(double internal) {
    return Formula.of(internal(Math.rint(internal / internal(1))), unit);
  }

  /** Returns a value in the unit that is typed, such as {@code 640 mm}. */
  String says(double internal) {
    return Formula.of(internal, unit).text();
  }

  /** Returns the text of {@code written} with so many steps more. */
  String plus(Formula written, int steps) {
    double more = internal(steps);
    if (written.expr() instanceof Expr.Num n) {
      return says(n.value() + more);
    }
    Matcher last = LAST.matcher(written.text());
    if (last.matches()
        && written.expr() instanceof Expr.Op op
        && (op.sign() == '+' || op.sign() == '-')
        && op.right() instanceof Expr.Num n
        && Math.abs(Math.abs(n.value()) - length(last)) < 1e-9) {
      double all = (op.sign() == '-' ? -n.value() : n.value()) + more;
      return sum(last.group(1), all);
    }
    return sum(written.text().strip(), more);
  }

  private static double length(Matcher last) {
    return Unit.named(last.group(4))
        .map(u -> Double.parseDouble(last.group(3)) * u.factor())
        .orElse(Double.NaN);
  }

  private String sum(String first, double more) {
    return more == 0 ? first : first + (more < 0 ? " - " : " + ") + says(Math.abs(more));
  }
}
