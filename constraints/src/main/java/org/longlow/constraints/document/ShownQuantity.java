package org.longlow.constraints.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;

/**
 * Quantities in fields for people, to and fro: what a file says as it is shown, and what is typed
 * as it is kept. A bare number means mm, deg, kg or N in a file, and the units shown in a field.
 */
public final class ShownQuantity {

  /** A number or a fraction as on a tape measure, maybe with the mark for inches. */
  private static final Pattern BARE =
      Pattern.compile("([-+]?(?:\\d+\\.?\\d*|\\.\\d+|(?:\\d+\\s+)?\\d+/\\d+))\\s*(\")?");

  /** A length or an angle as a solver leaves it, finer than anybody measures. */
  private static final Pattern FINE = Pattern.compile("(-?\\d+\\.\\d{3,})( mm| deg|)");

  /** A length that is no formula, as a file says it. */
  private static final Pattern PLAIN_MM = Pattern.compile("(-?\\d+(?:\\.\\d+)?) mm");

  /** Hundredths are shown; what is kept stays as it is until something else is typed. */
  private static final int SHOWN_DECIMALS = 2;

  private ShownQuantity() {}

  /**
   * Returns what stands in a field: in mm as it is written, to hundredths, in inches what that is
   * there as a shop reads it.
   */
  public static String text(Formula written, Dim dim, Units units) {
    boolean bare = written.isBareNumber() && Unit.of(dim) != Unit.of(dim, units);
    Formula whole =
        bare
            ? Formula.of(((Expr.Num) written.expr()).value() * Unit.of(dim).factor(), Unit.of(dim))
            : written;
    Matcher fine = FINE.matcher(whole.text());
    if (units == Units.MM && fine.matches()) {
      BigDecimal shown =
          new BigDecimal(fine.group(1)).setScale(SHOWN_DECIMALS, RoundingMode.HALF_UP);
      return shown.stripTrailingZeros().toPlainString() + fine.group(2);
    }
    Matcher plain = PLAIN_MM.matcher(whole.text());
    return units == Units.IN && plain.matches()
        ? units.inField(Double.parseDouble(plain.group(1)))
        : Words.written(whole.text()).in(units);
  }

  /**
   * Returns what was typed with the unit that a bare number takes where these units are shown:
   * {@code 12 5/16} becomes {@code 12 5/16 in}. Inches may be written {@code 12.5"} too.
   */
  public static String typed(String said, Dim dim, Units units) {
    Matcher bare = BARE.matcher(said);
    if (!bare.matches()) {
      return said;
    }
    boolean marked = bare.group(2) != null && dim.equals(Dim.LENGTH);
    Unit unit = marked ? Unit.INCH : Unit.of(dim, units);
    return marked || bare.group(2) == null && unit != Unit.of(dim)
        ? bare.group(1) + " " + unit.symbol()
        : said;
  }

  /** Returns what was typed, a bare number always with its unit: nothing else says what it is. */
  public static String withUnit(String said, Dim dim, Units units) {
    String typed = typed(said, dim, units);
    Matcher bare = BARE.matcher(typed);
    return bare.matches() && bare.group(2) == null && !dim.equals(Dim.NUMBER)
        ? typed + " " + Unit.of(dim).symbol()
        : typed;
  }
}
