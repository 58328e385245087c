package org.longlow.sketcher.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.suit.SuitReport;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/** What else changes when pins move: pins tied to them, measures, parts and loads. */
final class PlaceChanges {

  /** A pin that moved less stayed, mm; so did a measure of so few of its units. */
  private static final double STAYED = 0.05;

  /** Shares that differ by less read the same. */
  private static final double SAME_SHARE = 0.0005;

  private final Study before;
  private final SuitReport.Alternative after;
  private final Units units;

  PlaceChanges(Study before, SuitReport.Alternative after, Units units) {
    this.before = before;
    this.after = after;
    this.units = units;
  }

  List<String> lines() {
    Layout layout = before.layout();
    Places was = before.placed().places();
    Places now = after.study().placed().places();
    Set<String> told = after.moves().stream().map(SuitReport.Move::pin).collect(Collectors.toSet());
    Set<String> moved = new TreeSet<>();
    List<String> lines = new ArrayList<>();
    for (String pin : layout.pins().keySet()) {
      PointMm from = was.pin(pin);
      PointMm to = now.pin(pin);
      if (from.distance(to) >= STAYED) {
        moved.add(pin);
        if (!told.contains(pin)) {
          lines.add(
              format(
                  "  %s comes along %s (forward %s, up %s)",
                  pin,
                  units.says(from.distance(to), FigureSort.LENGTH_IN_TENTHS),
                  units.signed(to.x() - from.x()),
                  units.signed(to.z() - from.z())));
        }
      }
    }
    written(told, moved, lines);
    measures(layout, was.measures(), now.measures(), lines);
    String parts =
        layout.parts().values().stream()
            .filter(part -> part.pins().stream().anyMatch(moved::contains))
            .map(part -> part.name())
            .collect(Collectors.joining(", "));
    if (!parts.isEmpty()) {
      lines.add("  parts that move or change: " + parts);
    }
    loads(lines);
    return lines;
  }

  /** A saved pin stands where it was solved, also where the file had it elsewhere. */
  private void written(Set<String> told, Set<String> moved, List<String> lines) {
    Places was = before.placed().places();
    Places now = after.study().placed().places();
    before
        .layout()
        .pins()
        .forEach(
            (name, pin) -> {
              Pin kept = after.layout().pins().get(name);
              PointMm from = new PointMm(was.value(pin.x()), was.value(pin.z()));
              PointMm to = new PointMm(now.value(kept.x()), now.value(kept.z()));
              String filed = "(" + bare(from.x()) + ", " + bare(from.z()) + ")";
              String put = "(" + bare(to.x()) + ", " + bare(to.z()) + ")";
              // what is said alike is no difference to whoever reads it
              if (from.distance(to) >= STAYED
                  && !filed.equals(put)
                  && !told.contains(name)
                  && !moved.contains(name)) {
                lines.add(
                    format(
                        "  %s stays; the file has it at %s, its ties put it at %s, where it is"
                            + " saved",
                        name, filed, put));
              }
            });
  }

  private String bare(double mm) {
    return units.bare(mm, FigureSort.LENGTH_IN_TENTHS);
  }

  private void measures(
      Layout layout, Map<String, Double> was, Map<String, Double> now, List<String> lines) {
    was.forEach(
        (name, value) -> {
          double unit = Unit.of(Measures.dim(layout, name)).factor();
          double from = value / unit;
          double to = now.getOrDefault(name, value) / unit;
          if (Math.abs(to - from) >= STAYED) {
            lines.add(
                units == Units.IN && Measures.dim(layout, name).equals(Dim.LENGTH)
                    ? format("  measure %s: %s -> %s in", name, bare(value), bare(to))
                    : format(
                        "  measure %s: %.1f -> %.1f %s",
                        name, from, to, Unit.of(Measures.dim(layout, name)).symbol()));
          }
        });
  }

  private void loads(List<String> lines) {
    for (Standing s : after.study().standings()) {
      if (s.load() == null) {
        continue;
      }
      before
          .standing(s.condition())
          .filter(old -> old.load() != null)
          .ifPresent(
              old -> {
                double from = old.load().axles().frontShare();
                double to = s.load().axles().frontShare();
                if (Math.abs(to - from) >= SAME_SHARE) {
                  lines.add(
                      format(
                          "  share on the front wheel, %s: %.1f %% -> %.1f %%",
                          s.condition().says(), 100 * from, 100 * to));
                }
              });
    }
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
