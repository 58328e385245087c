package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.longlow.constraints.check.Finding;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * What changed between two layouts: pins that moved, findings whose verdict or figure changed.
 *
 * @param moved pins in both, farthest first
 * @param changed findings whose verdict changed, or that are in one only
 */
public record Comparison(List<Moved> moved, List<Changed> changed) {

  /** A pin that moved less is where it was, mm. */
  public static final double MOVED_MM = 0.05;

  /** A pin that moved. */
  public record Moved(String pin, PointMm from, PointMm to) {
    public double mm() {
      return from.distance(to);
    }
  }

  /** A finding that changed; a side that has none is null. */
  public record Changed(String id, Finding before, Finding after) {}

  /** Returns what changed from {@code before} to {@code after}. */
  public static Comparison of(Study before, Study after) {
    List<Moved> moved = new ArrayList<>();
    before
        .placed()
        .places()
        .pins()
        .forEach(
            (name, from) -> {
              PointMm to = after.placed().places().pins().get(name);
              if (to != null && to.distance(from) > MOVED_MM) {
                moved.add(new Moved(name, from, to));
              }
            });
    moved.sort((a, b) -> Double.compare(b.mm(), a.mm()));
    Map<String, Finding> old = new LinkedHashMap<>();
    before.findings().forEach(f -> old.put(f.id(), f));
    List<Changed> changed = new ArrayList<>();
    for (Finding f : after.findings()) {
      Finding was = old.remove(f.id());
      if (was == null || was.verdict() != f.verdict()) {
        changed.add(new Changed(f.id(), was, f));
      }
    }
    old.values().forEach(f -> changed.add(new Changed(f.id(), f, null)));
    return new Comparison(moved, changed);
  }

  /** Returns the comparison as lines of text. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Moved m : moved) {
      lines.add(
          String.format(
              Locale.ROOT,
              "moved    %s by %.1f mm (forward %+.1f, up %+.1f)",
              m.pin(),
              m.mm(),
              m.to().x() - m.from().x(),
              m.to().z() - m.from().z()));
    }
    for (Changed c : changed) {
      String from = c.before() == null ? "not listed" : c.before().verdict().says();
      String to = c.after() == null ? "gone" : c.after().verdict().says();
      String text = (c.after() == null ? c.before() : c.after()).text();
      lines.add(String.format(Locale.ROOT, "%s -> %s  %s: %s", from, to, c.id(), text));
    }
    return lines;
  }
}
