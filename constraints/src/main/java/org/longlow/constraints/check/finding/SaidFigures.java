package org.longlow.constraints.check.finding;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import org.longlow.rider.words.Units;

/**
 * Figures as people read them: rounded, but never so far that a value reads as on its limit, or on
 * the other side of it, where it is not.
 *
 * @param value the figure
 * @param limit its limit
 * @param margin how far it is inside the limit
 * @param more decimals than usual that this took
 */
public record SaidFigures(String value, String limit, String margin, int more) {

  /** More than so many decimals tell nothing to anybody. */
  static final int MOST = 8;

  /** What is this near is said alike, in the unit of the figures. */
  static final double ALIKE = 1e-6;

  private static final Pattern NUMBER =
      Pattern.compile("(-?)(?:(\\d+(?:\\.\\d+)?)(?![\\d/]))?(?: ?(\\d+)/(\\d+))?.*");

  /** Returns figures as they are said in these units. */
  static SaidFigures of(Figures figures, Units units) {
    SaidFigures said = of(figures, units, 0);
    for (int more = 1; more <= MOST && !said.tells(figures); more++) {
      said = of(figures, units, more);
    }
    return said;
  }

  private static SaidFigures of(Figures f, Units units, int more) {
    FigureUnit unit = f.unit();
    double most =
        DoubleStream.of(f.value(), f.limit(), f.margin())
            .map(Math::abs)
            .filter(Double::isFinite)
            .max()
            .orElse(0);
    return new SaidFigures(
        unit.says(f.value(), units, more, most),
        unit.says(f.limit(), units, more, most),
        unit.says(f.margin(), units, more, most),
        more);
  }

  private boolean tells(Figures f) {
    double over = f.value() - f.limit();
    return !Double.isFinite(over)
        || Math.abs(over) < ALIKE
        || Math.signum(number(value) - number(limit)) == Math.signum(over)
            && (Double.isNaN(f.margin())
                || Math.abs(f.margin()) < ALIKE
                || Math.signum(number(margin)) == Math.signum(f.margin()));
  }

  /** The number that was said, such as 12.5 for {@code 12 1/2 in}. */
  private static double number(String said) {
    Matcher m = NUMBER.matcher(said);
    if (!m.matches()) {
      return Double.NaN;
    }
    double size = m.group(2) == null ? 0 : Double.parseDouble(m.group(2));
    double part =
        m.group(3) == null ? 0 : Double.parseDouble(m.group(3)) / Double.parseDouble(m.group(4));
    return m.group(1).isEmpty() ? size + part : -size - part;
  }
}
