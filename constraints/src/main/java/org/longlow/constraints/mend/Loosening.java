package org.longlow.constraints.mend;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * What to let go of where ties and limits contradict each other: each of the smallest set that
 * cannot all hold, tried on the machine. First come those after which everything holds, of them
 * what moves least.
 */
final class Loosening {

  /** A move that is much, mm. */
  private static final double MUCH_MM = 10;

  private final Study base;
  private final Deque<Rewrite> untried = new ArrayDeque<>();
  private final List<Offer> offers = new ArrayList<>();

  Loosening(Study base) {
    this.base = base;
    untried.addAll(ways(base).values());
  }

  /** Returns whether a finding tells of a contradiction that letting go of something may end. */
  static boolean isFor(Study base, Finding finding) {
    return !base.placed().holds()
        && finding.group() == FindingGroup.LAYOUT
        && finding.verdict() == Verdict.FAIL
        && !ways(base).isEmpty();
  }

  /** Tries one more; returns whether there is more to do. */
  boolean goOn() {
    if (untried.isEmpty()) {
      return false;
    }
    Rewrite rewrite = untried.remove();
    Placed after = Placer.solve(rewrite.on(base.layout()));
    // what still contradicts itself is offered only if this contradiction is gone
    if (after.holds() || !names(after).containsAll(others(rewrite))) {
      String care = after.holds() ? "" : "others still cannot all hold";
      double moved = moved(base.placed().places(), after.places()) / MUCH_MM;
      offers.add(
          new Offer(
              "let go of " + says(rewrite),
              rewrite,
              after.holds() ? moved : moved + MUCH_MM * MUCH_MM,
              care,
              List.of(),
              says(rewrite)));
      offers.sort(Offer.ORDER);
    }
    return !untried.isEmpty();
  }

  List<Offer> offers() {
    return List.copyOf(offers);
  }

  private static String says(Rewrite rewrite) {
    Entry entry = rewrite.about();
    return (entry.group().equals("ties") ? "tie " : "limit ") + entry.name();
  }

  /** The rest of the set, without what a rewrite lets go of. */
  private List<String> others(Rewrite rewrite) {
    List<String> others = new ArrayList<>(names(base.placed()));
    others.removeIf(n -> rewrite.equals(ways(base).get(plain(base.layout(), n))));
    return others;
  }

  private static double moved(Places was, Places now) {
    double most = 0;
    for (Map.Entry<String, PointMm> pin : was.pins().entrySet()) {
      most = Math.max(most, pin.getValue().distance(now.pin(pin.getKey())));
    }
    return most;
  }

  private static List<String> names(Placed placed) {
    return placed.report().diagnosis().map(Diagnosis::contradiction).orElse(List.of());
  }

  /** Returns how each of the set is let go of, by its name. */
  private static Map<String, Rewrite> ways(Study base) {
    Map<String, Rewrite> ways = new LinkedHashMap<>();
    for (String full : names(base.placed())) {
      String name = plain(base.layout(), full);
      way(base.layout(), name).ifPresent(w -> ways.putIfAbsent(name, w));
    }
    return ways;
  }

  /** The range of a free measure is not let go of: it would have none. */
  private static Optional<Rewrite> way(Layout layout, String name) {
    return Stream.of(new Entry("ties", name), new Entry("limits", name))
        .filter(e -> Entries.of(layout, e.group()).containsKey(name))
        .findFirst()
        .map(Rewrite::without);
  }

  /** Returns the user's name, without which end of a limit is meant or for whom. */
  private static String plain(Layout layout, String full) {
    String name = full;
    while (!layout.ties().containsKey(name)
        && !layout.limits().containsKey(name)
        && !layout.measures().containsKey(name)) {
      String shorter = name.replaceFirst(" \\([^()]*\\)$", "");
      if (shorter.equals(name)) {
        return full;
      }
      name = shorter;
    }
    return name;
  }
}
