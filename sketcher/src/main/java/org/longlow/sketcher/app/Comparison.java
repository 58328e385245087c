package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;

/**
 * All that changed from one layout to another.
 *
 * @param said what the file says otherwise: fields changed, things added and removed
 * @param came what came of it: pins that moved, values, shapes, masses, people, loads
 * @param verdicts findings whose verdict changed, or that are in one only
 * @param figures how many findings have another figure at the same verdict
 */
public record Comparison(
    List<Difference> said, List<Difference> came, List<Verdicts> verdicts, int figures) {

  /** Figures that differ by less, as a share, read the same. */
  private static final double SAME_FIGURE = 1e-4;

  /** A finding that changed; a side that has none is null. */
  public record Verdicts(String id, Finding before, Finding after) {

    /** Returns the change and the sentence of the finding as it is now, or was. */
    public String line(Units units) {
      String from = before == null ? "not listed" : before.verdict().says();
      String to = after == null ? "gone" : after.verdict().says();
      return from + " -> " + to + "  " + id + ": " + (after == null ? before : after).text(units);
    }
  }

  public Comparison {
    said = List.copyOf(said);
    came = List.copyOf(came);
    verdicts = List.copyOf(verdicts);
  }

  /** Returns what changed from {@code before} to {@code after}. */
  public static Comparison of(Study before, Study after) {
    return of(before, after, after.layout().units());
  }

  /** Returns what changed from {@code before} to {@code after}, told in these units. */
  public static Comparison of(Study before, Study after, Units units) {
    Map<String, Finding> old = new LinkedHashMap<>();
    before.findings().forEach(f -> old.put(f.id(), f));
    List<Verdicts> verdicts = new ArrayList<>();
    int figures = 0;
    for (Finding f : after.findings()) {
      Finding was = old.remove(f.id());
      if (was == null || was.verdict() != f.verdict()) {
        verdicts.add(new Verdicts(f.id(), was, f));
      } else if (!same(was.value(), f.value()) || !same(was.limit(), f.limit())) {
        figures++;
      }
    }
    old.values().forEach(f -> verdicts.add(new Verdicts(f.id(), f, null)));
    return new Comparison(
        SaidChanges.of(before.layout(), after.layout()),
        new SolvedChanges(before, after, units).all(),
        verdicts,
        figures);
  }

  private static boolean same(double a, double b) {
    return Double.compare(a, b) == 0
        || Math.abs(a - b) <= SAME_FIGURE * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
  }

  /** Returns it without the title, which says no more than which state of a machine it is. */
  public Comparison withoutTitle() {
    List<Difference> rest =
        said.stream()
            .filter(d -> !(d.kind().equals("layout") && d.name().equals("title")))
            .toList();
    return new Comparison(rest, came, verdicts, figures);
  }

  /** Returns whether nothing changed. */
  public boolean isEmpty() {
    return said.isEmpty() && came.isEmpty() && verdicts.isEmpty() && figures == 0;
  }
}
