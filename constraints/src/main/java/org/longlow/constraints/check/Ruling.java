package org.longlow.constraints.check;

import java.util.List;
import org.longlow.constraints.law.LawSource;
import org.longlow.constraints.law.RuleSet;

/**
 * What one body of rules says of one thing, before rulings that say the same are put together.
 *
 * @param rules whose
 * @param topic what of the machine it judges, for ids, such as {@code tail.height.tailLamp}
 * @param parts the parts it is about, may be empty
 * @param subject what it is about, in words
 * @param outcome how it came out
 * @param figures what was measured
 * @param text one sentence without its full stop
 * @param sources the rules behind it
 */
record Ruling(
    RuleSet rules,
    String topic,
    List<String> parts,
    String subject,
    Outcome outcome,
    Figures figures,
    String text,
    List<LawSource> sources) {

  /** How a rule came out, before it is asked how well the rule is known. */
  enum Outcome {
    INSIDE,
    OUTSIDE,
    CARE,
    NOT_APPLICABLE
  }

  /**
   * What was measured; NaN where there is nothing to measure.
   *
   * @param margin inside the limit, negative outside
   */
  record Figures(double value, double limit, double margin, String unit) {

    static final Figures NONE = new Figures(Double.NaN, Double.NaN, Double.NaN, "");

    /** A value this little outside a limit is on it: rounding of sums such as 2 × 114.3. */
    private static final double ON_THE_LIMIT = 1e-6;

    static Figures atLeast(double value, double limit, String unit) {
      return new Figures(value, limit, value - limit, unit);
    }

    static Figures atMost(double value, double limit, String unit) {
      return new Figures(value, limit, limit - value, unit);
    }

    boolean inside() {
      return margin >= -ON_THE_LIMIT;
    }

    Outcome outcome() {
      return inside() ? Outcome.INSIDE : Outcome.OUTSIDE;
    }
  }

  /** Returns a ruling that measures nothing. */
  static Ruling said(
      RuleSet rules,
      String topic,
      List<String> parts,
      String subject,
      Outcome outcome,
      String text,
      List<LawSource> sources) {
    return new Ruling(rules, topic, parts, subject, outcome, Figures.NONE, text, sources);
  }
}
