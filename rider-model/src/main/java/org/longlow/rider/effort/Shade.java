package org.longlow.rider.effort;

import java.util.Comparator;
import java.util.List;

/** What stands ahead of a place: the heights that it covers, with air under, over and between. */
@FunctionalInterface
public interface Shade {

  /** Nothing stands ahead. */
  Shade NONE = x -> List.of();

  /**
   * Heights that something covers, mm.
   *
   * @param highMm no less than {@code lowMm}
   */
  record Span(double lowMm, double highMm) {}

  /**
   * What is left of heights where nothing stands ahead.
   *
   * @param mm how much of them is open, 0 or more
   * @param middleMm the mean height of that; any where nothing is
   */
  record Open(double mm, double middleMm) {}

  /**
   * Returns what stands ahead of a place that is so far forward, in any order; they may overlap.
   */
  List<Span> ahead(double xMm);

  /** Returns what of the heights between two is open to what comes from ahead of a place. */
  default Open open(double xMm, double lowMm, double highMm) {
    double from = lowMm;
    double open = 0;
    double moment = 0;
    List<Span> spans = ahead(xMm);
    if (spans.size() > 1) {
      spans = spans.stream().sorted(Comparator.comparingDouble(Span::lowMm)).toList();
    }
    for (Span s : spans) {
      double to = Math.min(s.lowMm(), highMm);
      if (to > from) {
        open += to - from;
        moment += 0.5 * (to - from) * (to + from);
      }
      from = Math.max(from, s.highMm());
    }
    if (highMm > from) {
      open += highMm - from;
      moment += 0.5 * (highMm - from) * (highMm + from);
    }
    return new Open(open, open > 0 ? moment / open : highMm);
  }
}
