package org.longlow.constraints.check.rule;

import java.util.List;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.law.LawSource;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.law.RuleSet;
import org.longlow.rider.words.Words;

/**
 * What one body of rules says of one thing, before rulings that say the same are put together.
 *
 * @param rules whose
 * @param about what of the machine it judges
 * @param outcome how it came out
 * @param figures what was measured
 * @param words one sentence without its full stop
 * @param sources the rules behind it; none where no row speaks of it
 * @param ofHeight whether it measures a height above the road
 */
record Ruling(
    RuleSet rules,
    About about,
    Outcome outcome,
    Figures figures,
    Words words,
    List<LawSource> sources,
    boolean ofHeight) {

  /** How a rule came out, before it is asked how well the rule is known. */
  enum Outcome {
    INSIDE,
    OUTSIDE,
    CARE,
    NOT_COVERED,
    NOT_APPLICABLE
  }

  static Ruling of(Row row, About about, Outcome outcome, Figures figures, Words words) {
    return new Ruling(
        row.rules(), about, outcome, figures, words, row.sources(), row.asked().isHeight());
  }

  /** Returns a ruling that its figures decide. */
  static Ruling of(Row row, About about, Figures figures, Words words) {
    return of(row, about, figures.inside() ? Outcome.INSIDE : Outcome.OUTSIDE, figures, words);
  }

  /** Returns a ruling that measures nothing. */
  static Ruling said(Row row, About about, Outcome outcome, Words words) {
    return of(row, about, outcome, Figures.NONE, words);
  }
}
