package org.longlow.constraints.check.whole;

import java.util.List;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.rider.words.Words;

/** Parts that exhaust goes through and that are said not to be hot. */
public final class ColdFindings {

  private ColdFindings() {}

  public static List<Finding> of(Layout layout) {
    return layout.parts().values().stream()
        .filter(p -> p.traits().heat() == Heat.GIVES && !p.base().hot())
        .map(
            p ->
                Finding.note(
                    GapFindings.GAP,
                    About.parts(p.name()).named(p.name(), "cold"),
                    Verdict.CAUTION,
                    Basis.practice(
                        "common practice: what exhaust goes through burns skin and foam"),
                    Words.of(
                        p.name()
                            + " is said not to be hot, so people and soft parts may be as near to"
                            + " it as to anything: take hot: false away unless it is well lagged,"
                            + " and touch it after a ride before you trust that.")))
        .toList();
  }
}
