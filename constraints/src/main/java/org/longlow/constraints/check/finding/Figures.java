package org.longlow.constraints.check.finding;

/**
 * What was measured and what it is held against; NaN where there is nothing.
 *
 * @param value the figure
 * @param limit its limit
 * @param margin how far it is inside the limit, negative outside
 * @param unit the unit of all three
 */
public record Figures(double value, double limit, double margin, FigureUnit unit) {

  /** Angles are told to 1e-10 of a degree: what is beyond comes of going through radians. */
  private static final double DEGREE_STEPS = 1e10;

  public Figures {
    if (unit == FigureUnit.DEG) {
      value = asTyped(value);
      limit = asTyped(limit);
      margin = asTyped(margin);
    }
  }

  private static double asTyped(double deg) {
    return Math.rint(deg * DEGREE_STEPS) / DEGREE_STEPS + 0.0; // no negative zero
  }

  /** Nothing was measured. */
  public static final Figures NONE = only(Double.NaN, FigureUnit.NONE);

  /** A value this little outside a limit of law is on it: rounding of sums such as 2 × 114.3. */
  private static final double ON_THE_LIMIT = 1e-6;

  /** Sums in binary round by so much of what is summed: a value no farther outside is on it. */
  private static final double ROUNDING = 1e-13;

  /** Values farther from their limits, in any unit, do not read as on them however rounded. */
  private static final double NEAR = 160;

  /** Returns a value held to at least {@code limit}. */
  public static Figures atLeast(double value, double limit, FigureUnit unit) {
    return new Figures(value, limit, value - limit, unit);
  }

  /** Returns a value held to at most {@code limit}. */
  public static Figures atMost(double value, double limit, FigureUnit unit) {
    return new Figures(value, limit, limit - value, unit);
  }

  /** Returns a value held between two limits, by the one with less to spare. */
  public static Figures within(double value, double least, double most, FigureUnit unit) {
    return value - least <= most - value ? atLeast(value, least, unit) : atMost(value, most, unit);
  }

  /** Returns a value that is held against nothing. */
  public static Figures only(double value, FigureUnit unit) {
    return new Figures(value, Double.NaN, Double.NaN, unit);
  }

  /** Whether rounding may hide on which side of its limit the value is. */
  boolean near() {
    return Math.abs(value - limit) < NEAR;
  }

  /** Whether the value keeps to its limit. */
  public Verdict verdict() {
    return margin >= -ROUNDING * Math.abs(limit) ? Verdict.PASS : Verdict.FAIL;
  }

  /** Whether the value keeps to its limit, on it included. */
  public boolean inside() {
    return margin >= -ON_THE_LIMIT;
  }
}
