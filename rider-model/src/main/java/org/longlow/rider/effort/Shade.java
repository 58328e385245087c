package org.longlow.rider.effort;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** What stands ahead of a place, with air under, over, beside and between. */
@FunctionalInterface
public interface Shade {

  /** Nothing stands ahead. */
  Shade NONE = x -> List.of();

  /**
   * What something covers, seen from ahead, mm.
   *
   * @param highMm no less than {@code lowMm}
   * @param rightMm its right end across, y to the left
   * @param leftMm its left end, no less than {@code rightMm}
   */
  record Span(double lowMm, double highMm, double rightMm, double leftMm) {}

  /**
   * What is left of a place where nothing stands ahead.
   *
   * @param mm how much of its height is open, the mean over its breadth, 0 or more
   * @param middleMm the mean height of that; any where nothing is
   */
  record Open(double mm, double middleMm) {}

  /**
   * Returns what stands ahead of a place that is so far forward, in any order; they may overlap.
   */
  List<Span> ahead(double xMm);

  /**
   * Returns what of a place between two heights is open to what comes from ahead of it.
   *
   * @param rightMm its right end across, y to the left
   * @param leftMm its left end, more than {@code rightMm}
   */
  default Open open(double xMm, double lowMm, double highMm, double rightMm, double leftMm) {
    List<Span> spans = new ArrayList<>();
    for (Span s : ahead(xMm)) {
      if (s.lowMm < highMm && s.highMm > lowMm && s.rightMm < leftMm && s.leftMm > rightMm) {
        spans.add(s);
      }
    }
    spans.sort(Comparator.comparingDouble(Span::lowMm));
    double[] cuts = new double[2 * spans.size() + 2];
    cuts[0] = rightMm;
    cuts[1] = leftMm;
    for (int i = 0; i < spans.size(); i++) {
      cuts[2 * i + 2] = Math.max(rightMm, spans.get(i).rightMm);
      cuts[2 * i + 3] = Math.min(leftMm, spans.get(i).leftMm);
    }
    Arrays.sort(cuts);
    double open = 0;
    double moment = 0;
    for (int k = 1; k < cuts.length; k++) {
      if (cuts[k] == cuts[k - 1]) {
        continue;
      }
      double y = 0.5 * (cuts[k - 1] + cuts[k]);
      double share = (cuts[k] - cuts[k - 1]) / (leftMm - rightMm);
      double from = lowMm;
      for (Span s : spans) {
        if (s.rightMm < y && s.leftMm > y) {
          double to = Math.max(from, s.lowMm);
          open += share * (to - from);
          moment += share * 0.5 * (to - from) * (to + from);
          from = Math.max(from, s.highMm);
        }
      }
      double top = Math.max(from, highMm);
      open += share * (top - from);
      moment += share * 0.5 * (top - from) * (top + from);
    }
    return new Open(open, open > 0 ? moment / open : highMm);
  }
}
