package org.longlow.sketcher.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.suit.SuitReport;
import org.longlow.constraints.suit.SuitSettings;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.ComfortBands;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Units.Rounding;

/** What {@code longlow place} says. */
final class PlaceText {

  private final SuitReport report;
  private final Units units;
  private final List<String> lines = new ArrayList<>();

  PlaceText(SuitReport report, Units units) {
    this.report = report;
    this.units = units;
  }

  List<String> lines() {
    lines.add("now: " + count(report.before()));
    report.before().doubts().forEach(lines::add);
    int number = 0;
    for (SuitReport.Alternative alternative : report.alternatives()) {
      lines.add("");
      alternative(++number, alternative);
    }
    lines.add("");
    for (SuitReport.Limiting limiting : report.limitedBy()) {
      Finding f = limiting.finding();
      lines.add(
          limiting.person()
              + (f.verdict() == Verdict.FAIL ? " is stopped by " : " has least to spare in ")
              + f.id()
              + f.when()
              + ": "
              + f.text(units));
    }
    adjustment();
    lines.add("Discomfort is 0 inside all comfort bands. " + ComfortBands.CAUTION);
    return lines;
  }

  private static String count(Study study) {
    return Stream.of(Verdict.FAIL, Verdict.CAUTION, Verdict.PASS)
        .map(v -> v.says(study.count(v)))
        .collect(Collectors.joining(", "));
  }

  private void alternative(int number, SuitReport.Alternative alternative) {
    boolean stays = alternative.moves().stream().allMatch(m -> m.mm() < PlaceLines.STAYED_MM);
    lines.add(
        "alternative "
            + number
            + ": "
            + count(alternative.study())
            + (stays ? "; no better place was found than the present one" : "")
            + (alternative.isWorseThan(report.before())
                ? "; of worse verdicts than the present place"
                : ""));
    PlaceLines told = new PlaceLines(report.before(), alternative, units);
    lines.addAll(told.ways());
    serves(alternative);
    if (!alternative.comfort().isEmpty()) {
      lines.add("  discomfort: " + comfort(alternative.comfort()));
    }
    lines.addAll(told.changes());
    alternative.study().findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL)
        .filter(f -> alternative.changes().stream().noneMatch(c -> c.finding() == f))
        .sorted(Comparator.comparing(Finding::id))
        .forEach(f -> lines.add("  still fails  " + f.id() + f.when() + ": " + f.text(units)));
    lines.addAll(told.rests());
  }

  /** Whom the place serves, and what stops the others there. */
  private void serves(SuitReport.Alternative alternative) {
    List<String> served = new ArrayList<>();
    List<String> stopped = new ArrayList<>();
    for (String person : alternative.layout().crew().keySet()) {
      List<Finding> stops = alternative.stops(person);
      if (stops.isEmpty()) {
        served.add(person);
      } else {
        stopped.add(
            person
                + " is stopped by "
                + stops.stream().map(Finding::id).collect(Collectors.joining(", ")));
      }
    }
    lines.add(
        "  serves "
            + (served.isEmpty() ? "nobody" : String.join(", ", served))
            + (stopped.isEmpty() ? "" : "; " + String.join("; ", stopped)));
  }

  private String comfort(Map<String, Double> after) {
    return after.entrySet().stream()
        .map(
            e ->
                e.getKey()
                    + " "
                    + cost(report.beforeComfort().getOrDefault(e.getKey(), Double.NaN))
                    + " -> "
                    + cost(e.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String cost(double cost) {
    return Double.isNaN(cost) ? "cannot sit" : format("%.2f", cost);
  }

  private void adjustment() {
    if (!report.decided()) {
      lines.add(
          "Not decided: the search ended after the "
              + SuitSettings.DEFAULT.measured()
              + " places it may measure, so there may be better ones; let fewer things move.");
    }
    if (report.adjustment().isPresent()) {
      lines.add(
          report.adjustment().get().unmet().isEmpty()
              ? "No one place suits everybody; this adjustment does:"
              : "No one place suits everybody, and no adjustment of these alone; between the best"
                  + " places of each lies:");
      if (report.adjustment().get().travels().isEmpty()) {
        lines.add("  nothing to adjust: everybody's best place is the same");
      }
      for (SuitReport.Travel travel : report.adjustment().get().travels()) {
        lines.add(
            format(
                    "  adjust %s %s %s: ",
                    travel.name(),
                    units.says(Math.ceil(travel.mm()), FigureSort.WHOLE_LENGTH, Rounding.AWAY),
                    along(travel))
                + travel.places().entrySet().stream()
                    .map(e -> e.getKey() + " at " + PlaceLines.at(e.getValue(), units))
                    .collect(Collectors.joining(", "))
                + " ("
                + travel.pin()
                + ")");
      }
      report
          .adjustment()
          .get()
          .unmet()
          .forEach(
              (person, stops) ->
                  stops.forEach(
                      f ->
                          lines.add(
                              "  "
                                  + person
                                  + " still lacks "
                                  + f.id()
                                  + f.when()
                                  + ": "
                                  + f.text(units))));
    }
  }

  /** Which way a thing slides, between the two places that lie farthest apart. */
  private static String along(SuitReport.Travel travel) {
    PointMm most = PointMm.ORIGIN;
    for (PointMm a : travel.places().values()) {
      for (PointMm b : travel.places().values()) {
        PointMm way = b.minus(a);
        if (way.x() >= 0 && way.length() > most.length()) {
          most = way;
        }
      }
    }
    if (Math.abs(most.z()) < 0.2 * Math.abs(most.x())) {
      return "fore-aft";
    }
    if (Math.abs(most.x()) < 0.2 * Math.abs(most.z())) {
      return "up-down";
    }
    return format(
        "on a slope of %.0f°, front %s",
        Math.abs(Math.toDegrees(most.angleRad())), most.z() > 0 ? "up" : "down");
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
