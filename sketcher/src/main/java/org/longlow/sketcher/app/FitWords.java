package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.fit.AdjustReport;
import org.longlow.constraints.fit.Adjuster;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Reason;
import org.longlow.constraints.fit.Share;
import org.longlow.constraints.fit.Telling;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.body.Sex;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;

/** How a crowd fits, in sentences; the same for command and window. */
public final class FitWords {

  /** What is not judged for each of them, and what shares are. */
  public static final String CAUTION =
      "Judged for each: seat, joints, reach, hands at lock, sight, foot down, gaps to the body,"
          + " springs, clearance, loads, and tyres whose load index is said. Not for each: lean, ramps,"
          + " braking, limbs past what turns at lock, sections opening, poses of getting in, law. Intervals are Wilson's, 95 %, of the sampling alone.";

  /** As many of what needs care are told. */
  private static final int CARES = 5;

  private FitWords() {}

  /** Returns who was asked and how many fit. */
  public static List<String> shares(FitReport report, Units units) {
    List<Words> lines = new ArrayList<>();
    lines.add(Words.of(report.crowd(), "."));
    lines.add(Words.of("nothing fails: ", report.fitting().words()));
    for (Sex sex : List.of(Sex.FEMALE, Sex.MALE)) {
      Share own = report.fitting(sex);
      if (own.of() > 0) {
        lines.add(Words.of(sex == Sex.FEMALE ? "  of women " : "  of men ", own.words()));
      }
    }
    if (!report.people().isEmpty()) {
      lines.add(
          Words.of(
              Say.percent(report.share(Verdict.PASS).value()),
              " pass, ",
              Say.percent(report.share(Verdict.CAUTION).value()),
              " need care, ",
              Say.percent(report.share(Verdict.FAIL).value()),
              " fail."));
    }
    if (report.outside().count() > 0) {
      lines.add(
          Words.of(
              Counted.of(report.outside().count(), "person")
                  + " outside the survey, whose other measures are extrapolated: none of them"
                  + " passes outright."));
    }
    List<String> said = new ArrayList<>(lines.stream().map(w -> w.in(units)).toList());
    said.addAll(failing(report, units));
    return said;
  }

  /** Returns what sets those apart who do not fit; no line if nothing does. */
  public static List<String> failing(FitReport report, Units units) {
    List<Telling> failing = report.failing();
    return failing.isEmpty()
        ? List.of()
        : List.of(Words.of("Who fails: ", who(failing), ".").in(units));
  }

  /** Returns who they are, most telling first. */
  static Words who(List<Telling> who) {
    return Words.join(", ", who.stream().map(Telling::words).toList());
  }

  /** Returns what stops people, a line each. */
  public static List<String> reasons(FitReport report, Units units) {
    List<String> lines = new ArrayList<>();
    for (FitReport.Stopping s : report.stopping()) {
      Words who = s.who().isEmpty() ? Words.NONE : Words.of(": ", who(s.who()));
      lines.add(
          Words.of(
                  Say.percent(s.all().value()),
                  " " + s.reason().words() + " (",
                  Say.percent(s.alone().value()),
                  " for that alone)",
                  who)
              .in(units));
    }
    Map<Reason, Share> cares = new LinkedHashMap<>(report.caring());
    if (!cares.isEmpty()) {
      lines.add(
          "Most needs care for: "
              + cares.entrySet().stream()
                  .limit(CARES)
                  .map(e -> e.getKey().key() + " " + Say.percent(e.getValue().value()).in(units))
                  .collect(Collectors.joining(", "))
              + ".");
    }
    return lines;
  }

  /** Returns what adjustment takes in. */
  public static List<String> adjustments(AdjustReport report, Units units) {
    List<String> lines = new ArrayList<>();
    report.curves().stream()
        .flatMap(curve -> curve.points().stream())
        .flatMap(point -> point.share().stream())
        .findFirst()
        .ifPresent(
            share ->
                lines.add("Each setting is tried on " + share.of() + " of them, the same ones:"));
    for (AdjustReport.Curve curve : report.curves()) {
      Optional<AdjustReport.Point> best =
          curve.points().stream()
              .filter(p -> p.share().isPresent())
              .reduce((a, b) -> b.share().get().count() > a.share().get().count() ? b : a);
      long barred = curve.points().stream().filter(p -> p.share().isEmpty()).count();
      lines.add(
          Words.of(
                  curve.adjuster().words() + ": ",
                  best.isEmpty()
                      ? Words.of("cannot be set otherwise")
                      : Words.of(
                          "at best ",
                          Say.percent(best.get().share().get().value()),
                          " fit, at ",
                          curve.adjuster().says(best.get().setting()),
                          "; adjustable ",
                          Say.percent(curve.anywhere().value())),
                  barred == 0
                      ? ""
                      : "; "
                          + Counted.of(barred, "setting")
                          + " barred, such as by "
                          + curve.points().stream()
                              .filter(p -> p.share().isEmpty())
                              .map(AdjustReport.Point::barred)
                              .findFirst()
                              .orElseThrow())
              .in(units));
    }
    lines.addAll(least(report, units));
    return lines;
  }

  private static List<String> least(AdjustReport report, Units units) {
    List<String> lines = new ArrayList<>();
    lines.add("as it is: " + taken(report, report.fitting()));
    if (report.fitting().stream().allMatch(f -> f)) {
      lines.add("no adjustment is needed for them");
    } else if (report.least().isEmpty()) {
      lines.add("no one or two of these adjustments take in any more of them");
    } else {
      AdjustReport.Least least = report.least().get();
      Words built = Words.join("; ", least.ranges().stream().map(FitWords::built).toList());
      lines.add(
          Words.of(
                  "the least to build so that "
                      + (least.all() ? "all of them fit" : "most of them fit")
                      + ": ",
                  built,
                  ". Then " + taken(report, least.taken()))
              .in(units));
    }
    return lines;
  }

  /** What to build of one adjuster: a place for good, or a slide and both its ends. */
  private static Words built(AdjustReport.Range range) {
    Adjuster a = range.adjuster();
    return range.to() > range.from()
        ? Words.of(
            a.what() + " adjustable by ",
            a.says(range.to() - range.from()),
            ", from ",
            a.where(range.from()),
            " to ",
            a.where(range.to()))
        : Words.of(a.what() + " fixed ", a.measure() ? "at " : "", a.where(range.from()));
  }

  private static String taken(AdjustReport report, List<Boolean> taken) {
    List<String> in = new ArrayList<>();
    List<String> out = new ArrayList<>();
    for (int i = 0; i < taken.size(); i++) {
      (taken.get(i) ? in : out).add(report.anchors().get(i).words());
    }
    return (in.isEmpty() ? "" : String.join(", ", in) + (in.size() == 1 ? " fits" : " fit"))
        + (in.isEmpty() || out.isEmpty() ? "" : "; ")
        + (out.isEmpty()
            ? ""
            : String.join(", ", out) + (out.size() == 1 ? " does not" : " do not"));
  }
}
