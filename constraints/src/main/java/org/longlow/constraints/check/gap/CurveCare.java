package org.longlow.constraints.check.gap;

import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.words.Words;

/**
 * What bodies that are curved along the machine leave open: their curves are chords within a bound,
 * so a gap that is kept by less than that needs care.
 */
final class CurveCare {

  private CurveCare() {}

  /** Returns how much the gap of some parts may be less than it is found, mm. */
  static double mm(Layout layout, String... parts) {
    double sum = 0;
    for (String name : parts) {
      Part part = layout.parts().get(name);
      sum += part == null ? 0 : Shapes.curvesWithinMm(part);
    }
    return sum;
  }

  /** Returns a finding about a gap that may be less by so much, mm, than it says. */
  static Finding held(Finding f, double withinMm) {
    return f.verdict() == Verdict.PASS && f.margin() < withinMm
        ? f.withVerdict(Verdict.CAUTION)
            .withText(
                Words.of(
                    f.words(),
                    " Curves here are worked out to ",
                    Say.mm(withinMm),
                    ", so it may be less than asked: leave that much more."))
        : f;
  }
}
