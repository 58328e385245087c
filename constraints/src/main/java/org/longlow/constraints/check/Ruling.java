package org.longlow.constraints.check;

import java.util.List;
import org.longlow.constraints.law.LawSource;
import org.longlow.constraints.law.RuleSet;

/**
 * What one body of rules says of one thing, before rulings that say the same are put together.
 *
 * @param rules whose
 * @param about what of the machine it judges
 * @param outcome how it came out
 * @param figures what was measured
 * @param text one sentence without its full stop
 * @param sources the rules behind it
 */
record Ruling(
    RuleSet rules,
    About about,
    Outcome outcome,
    Figures figures,
    String text,
    List<LawSource> sources) {

  /** How a rule came out, before it is asked how well the rule is known. */
  enum Outcome {
    INSIDE,
    OUTSIDE,
    CARE,
    NOT_APPLICABLE;

    static Outcome of(Figures figures) {
      return figures.inside() ? INSIDE : OUTSIDE;
    }
  }

  /** Returns a ruling that measures nothing. */
  static Ruling said(
      RuleSet rules, About about, Outcome outcome, String text, List<LawSource> sources) {
    return new Ruling(rules, about, outcome, Figures.NONE, text, sources);
  }
}
