package org.longlow.sketcher.cli;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Share;
import org.longlow.constraints.suit.CrowdReport;
import org.longlow.constraints.suit.CrowdSettings;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.body.Sex;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;
import org.longlow.sketcher.app.FitWords;

/** What {@code longlow place} says of places for a crowd. */
final class PlaceForMany {

  /** As many reasons are told that stop more or fewer. */
  private static final int TRADES = 8;

  private final CrowdReport report;
  private final Units units;

  PlaceForMany(CrowdReport report, Units units) {
    this.report = report;
    this.units = units;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        report.now().crowd()
            + (report.sample() < report.now().people().size()
                ? "; " + report.sample() + " of them decided on the way."
                : "."));
    lines.add(shares("now: ", report.now()));
    int number = 0;
    for (CrowdReport.Place place : report.places()) {
      lines.add("");
      lines.add(shares("alternative " + ++number + ": ", place.fit()));
      if (place.breaksTheMachine()) {
        lines.add("  something of the machine itself fails there that does not now: see below");
      }
      lines.addAll(of(place));
    }
    if (report.places().isEmpty()) {
      lines.add(
          report.now().fitting().count() == report.now().people().size()
              ? "no place was found where more of them fit: all fit now"
              : "no place was found where more of them fit than now");
    }
    lines.add("");
    if (!report.decided()) {
      lines.add(
          "Not decided: the search ended after the "
              + CrowdSettings.DEFAULT.tried()
              + " places it may look at, so there may be better ones; let fewer things move.");
    }
    lines.add(FitWords.CAUTION);
    return lines;
  }

  private String shares(String before, FitReport fit) {
    Words words = Words.of(before, "of ", fit.fitting().words(), " nothing fails");
    for (Sex sex : List.of(Sex.FEMALE, Sex.MALE)) {
      Share own = fit.fitting(sex);
      if (own.of() > 0) {
        words =
            Words.of(words, sex == Sex.FEMALE ? "; women " : "; men ", Say.percent(own.value()));
      }
    }
    return words.in(units);
  }

  private List<String> of(CrowdReport.Place place) {
    PlaceLines told = new PlaceLines(report.before(), place.alternative(), units);
    List<String> lines = new ArrayList<>(told.ways());
    lines.add(
        "  takes in "
            + report.takenIn(place)
            + " of those who do not fit now, loses "
            + report.lost(place)
            + " of those who do");
    report.trades(place).stream()
        .limit(TRADES)
        .forEach(
            t ->
                lines.add(
                    "  "
                        + t.reason().words()
                        + ": "
                        + t.before()
                        + " -> "
                        + Counted.of(t.after(), "person")));
    lines.addAll(FitWords.failing(place.fit(), units).stream().map(l -> "  " + l).toList());
    lines.addAll(told.changes());
    lines.addAll(told.rests());
    return lines;
  }
}
