package org.longlow.constraints.law;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.longlow.constraints.formula.Decimals;
import org.longlow.constraints.law.LawFinding.Verdict;

/** Gathers findings; works out margin and verdict from value and limits. */
final class Findings {

  /** A value this little outside a limit is on it: rounding of sums such as 2 × 114.3. */
  private static final double ON_THE_LIMIT_MM = 1e-9;

  private final List<LawFinding> all = new ArrayList<>();

  List<LawFinding> all() {
    return List.copyOf(all);
  }

  static String names(List<LampItem> items) {
    return items.stream().map(LampItem::name).collect(Collectors.joining(", "));
  }

  /** Holds a length against a closed range; an infinite or zero end with no meaning is skipped. */
  void range(
      String id,
      String subject,
      double value,
      double least,
      double most,
      String source,
      String what) {
    double below = value - least;
    double above = most - value;
    boolean low = below <= above;
    double margin = low ? below : above;
    double limit = low ? least : most;
    boolean inside = margin >= -ON_THE_LIMIT_MM;
    String text =
        subject
            + ": "
            + what
            + " is "
            + Decimals.tenths(value)
            + (low ? " mm, at least " : " mm, at most ")
            + Decimals.tenths(limit)
            + " mm"
            + (inside ? "" : "; move it by " + Decimals.tenths(-margin) + " mm");
    all.add(
        new LawFinding(
            id,
            subject,
            inside ? Verdict.PASS : Verdict.FAIL,
            value,
            limit,
            margin,
            "mm",
            source,
            text));
  }

  void atLeast(String id, String subject, double value, double least, String source, String what) {
    range(id, subject, value, least, Double.POSITIVE_INFINITY, source, what);
  }

  void atMost(String id, String subject, double value, double most, String source, String what) {
    range(id, subject, value, Double.NEGATIVE_INFINITY, most, source, what);
  }

  void count(
      String id, String subject, int value, int least, int most, String source, String what) {
    int margin = Math.min(value - least, most - value);
    boolean few = value < least;
    String text =
        margin >= 0
            ? what + ": " + value + ", as needed"
            : few
                ? what
                    + " missing: "
                    + value
                    + " given, "
                    + least
                    + " needed; add it as a part of kind lamp"
                : "too many of " + what + ": " + value + " given, at most " + most;
    all.add(
        new LawFinding(
            id,
            subject,
            margin >= 0 ? Verdict.PASS : Verdict.FAIL,
            (double) value,
            (double) (value - least <= most - value ? least : most),
            (double) margin,
            "count",
            source,
            text));
  }

  void say(String id, String subject, Verdict verdict, String source, String text) {
    all.add(new LawFinding(id, subject, verdict, null, null, null, "", source, text));
  }

  void add(LawFinding finding) {
    all.add(finding);
  }
}
