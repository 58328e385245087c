package org.longlow.sketcher.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.suit.SuitReport;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/** What {@code longlow place} says of one place, whomever it is for. */
final class PlaceLines {

  /** A pin that moved less stayed, mm. */
  static final double STAYED_MM = 0.05;

  private final Study before;
  private final SuitReport.Alternative alternative;
  private final Units units;

  PlaceLines(Study before, SuitReport.Alternative alternative, Units units) {
    this.before = before;
    this.alternative = alternative;
    this.units = units;
  }

  /** Returns where what was asked to move goes, and what comes along. */
  List<String> ways() {
    List<String> lines = new ArrayList<>();
    alternative.moves().forEach(move -> lines.add("  " + way(move)));
    lines.addAll(new PlaceChanges(before, alternative, units).lines());
    return lines;
  }

  private String way(SuitReport.Move move) {
    if (move.mm() < STAYED_MM) {
      return format("%s stays at %s", move.pin(), at(move.to(), units));
    }
    return format(
        "%s moves %s (forward %s, up %s) to %s",
        move.pin(),
        units.says(move.mm(), FigureSort.LENGTH_IN_TENTHS),
        units.signed(move.to().x() - move.from().x()),
        units.signed(move.to().z() - move.from().z()),
        at(move.to(), units));
  }

  /** Returns which findings of the layout's own crew have another verdict. */
  List<String> changes() {
    return alternative.changes().stream()
        .map(
            change ->
                format(
                    "  %s -> %s  %s%s: %s",
                    change.before().says(),
                    change.after().says(),
                    change.finding().id(),
                    change.finding().when(),
                    (change.finding().verdict() == change.after()
                            ? ""
                            : "no longer there; it was: ")
                        + change.finding().text(units)))
        .toList();
  }

  /** Returns which limits hold it there. */
  List<String> rests() {
    return alternative.atLimits().isEmpty()
        ? List.of()
        : List.of("  rests against " + String.join(", ", alternative.atLimits()));
  }

  static String at(PointMm p, Units units) {
    return format(
        "(%s, %s)",
        units.bare(p.x(), FigureSort.LENGTH_IN_TENTHS),
        units.bare(p.z(), FigureSort.LENGTH_IN_TENTHS));
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
