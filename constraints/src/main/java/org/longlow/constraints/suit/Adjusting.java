package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.geom.PointMm;

/**
 * The least adjustment travel that suits everybody where no one place does.
 *
 * <p>First one thing alone is let slide, then two, then all; the rest stays at the best shared
 * place. For each choice every person in turn goes to the place nearest to the others' where they
 * pass: projections to and fro between two sets of good places end at the pair of places that lie
 * nearest together, where the sets are convex. Of the choices with the fewest sliding things the
 * one with the least travel wins.
 */
final class Adjusting {

  private final LayoutProblem problem;
  private final Map<String, List<String>> groups;
  private final SuitSettings settings;
  private final List<String> crew;

  /** How many places may still be measured; searches side by side take equal shares of it. */
  private final AtomicInteger left;

  private final Progress progress;
  private volatile boolean cutShort;
  private volatile Set<String> stay;

  /**
   * @param measured about how many places may be measured
   */
  Adjusting(
      LayoutProblem problem,
      Map<String, List<String>> groups,
      SuitSettings settings,
      int measured,
      Progress progress) {
    this.problem = problem;
    this.groups = groups;
    this.settings = settings;
    left = new AtomicInteger(measured);
    this.progress = progress;
    this.crew = List.copyOf(problem.layout().crew().keySet());
  }

  /** Whether a search had measured as many places as allowed. */
  boolean wasCutShort() {
    return cutShort;
  }

  /**
   * Returns the adjustment; empty where nobody needs one. Where none suits everybody it is that
   * between the best place of each.
   *
   * @param shared the best place for all together, values of all variables
   */
  Optional<SuitReport.Adjustment> from(double[] shared) {
    List<String> names = List.copyOf(groups.keySet());
    Search.Trial everybody = everybody(shared);
    Set<String> excused = excused(everybody);
    if (everybody.passes(excused)) {
      return Optional.empty();
    }
    Map<String, Search.Trial> alone = new LinkedHashMap<>();
    int each = left.get() / (2 * crew.size());
    crew.parallelStream()
        .map(person -> Map.entry(person, alone(person, shared, each)))
        .toList()
        .forEach(e -> alone.put(e.getKey(), e.getValue()));
    if (alone.values().stream().anyMatch(t -> !t.passes(excused))) {
      return nearest(names, alone);
    }
    for (int size = 1; size <= names.size(); size++) {
      if (size > 2) {
        size = names.size();
      }
      List<List<String>> subsets = subsets(names, size);
      AtomicInteger done = new AtomicInteger();
      int rounds = size == 1 ? 3 : size == names.size() ? 1 : 2;
      int places = left.get() / (rounds * subsets.size() * crew.size());
      Optional<SuitReport.Adjustment> least =
          subsets.parallelStream()
              .map(subset -> sliding(subset, shared, alone, places))
              .peek(a -> progress.at("looking for travel", done.incrementAndGet(), subsets.size()))
              .filter(Objects::nonNull)
              .reduce((a, b) -> total(b) < total(a) - 1e-6 ? b : a);
      if (least.isPresent()) {
        return least.filter(a -> !a.travels().isEmpty());
      }
    }
    return nearest(names, alone);
  }

  private Search.Trial everybody(double[] shared) {
    List<String> pins = groups.values().stream().flatMap(List::stream).toList();
    Mover mover = new Mover(problem, pins, shared);
    return new Search(mover, Search.Aim.crew(problem, mover.at(shared)), shared).measure(shared);
  }

  /** Everybody at their own best place, with what fails there. */
  private Optional<SuitReport.Adjustment> nearest(
      List<String> names, Map<String, Search.Trial> alone) {
    return Optional.of(report(names, alone));
  }

  private static double total(SuitReport.Adjustment adjustment) {
    return adjustment.travels().stream().mapToDouble(SuitReport.Travel::mm).sum();
  }

  private static List<List<String>> subsets(List<String> names, int size) {
    List<List<String>> all = new ArrayList<>();
    for (int mask = 1; mask < 1 << names.size(); mask++) {
      if (Integer.bitCount(mask) == size) {
        List<String> subset = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
          if ((mask >> i & 1) == 1) {
            subset.add(names.get(i));
          }
        }
        all.add(subset);
      }
    }
    return all;
  }

  /** The best place for this person, everything sliding: the first found where they pass. */
  private Search.Trial alone(String person, double[] shared, int allowed) {
    List<String> pins = groups.values().stream().flatMap(List::stream).toList();
    Mover mover = new Mover(problem, pins, shared);
    double[] home = mover.at(shared);
    Search.Aim aim = Search.Aim.of(person, home);
    Search search = new Search(mover, aim, shared).within(allowed);
    Search.Trial best = search.measure(shared);
    Set<String> excused = excused(best);
    double[][] ways = mover.directions(shared);
    for (int seed = 0; seed < settings.seeds() && !best.passes(excused); seed++) {
      progress.at("looking for " + person + " alone", seed, settings.seeds());
      double[] start = shared;
      if (seed > 0) {
        double[] target = Starts.of(seed, home, ways, settings.spreadMm());
        start = mover.to(shared, target).orElse(null);
      }
      if (start != null && !search.isSpent()) {
        Search.Trial end = search.run(start, settings.stepsPerSeed());
        if (Search.merit(end, aim, Search.FULL_WEIGHT)
            < Search.merit(best, aim, Search.FULL_WEIGHT)) {
          best = end;
        }
      }
    }
    cutShort |= search.isSpent() && !best.passes(excused);
    left.addAndGet(-search.measured());
    return best;
  }

  /**
   * Parts that foul each other already do not count against a person, nor does what fails on a seat
   * that nothing moves.
   */
  private Set<String> excused(Search.Trial shared) {
    Set<String> ids = new HashSet<>();
    shared.readings().stream()
        .filter(r -> r.fails() && (r.person().isEmpty() || stays(r)))
        .forEach(r -> ids.add(r.id()));
    return ids;
  }

  private boolean stays(Reading reading) {
    return reading.who().filter(w -> seatsThatStay().contains(w.seat())).isPresent();
  }

  /** Seats of which no part can come along with what slides. */
  private Set<String> seatsThatStay() {
    if (stay == null) {
      List<String> pins = groups.values().stream().flatMap(List::stream).toList();
      double[] drawn = problem.problem().start();
      Set<String> company = new HashSet<>(new Mover(problem, pins, drawn).company(drawn));
      company.addAll(pins);
      Set<String> names = new HashSet<>();
      SeatParts.of(problem.layout())
          .forEach(
              (name, seat) -> {
                if (seat.parts().stream()
                    .flatMap(part -> part.pins().stream())
                    .noneMatch(company::contains)) {
                  names.add(name);
                }
              });
      stay = names;
    }
    return stay;
  }

  /** The least travel with only these things sliding; null if that does not do. */
  private SuitReport.Adjustment sliding(
      List<String> subset, double[] shared, Map<String, Search.Trial> alone, int allowed) {
    List<String> pins = subset.stream().flatMap(name -> groups.get(name).stream()).toList();
    Mover mover = new Mover(problem, pins, shared);
    Map<String, Search.Trial> places = new LinkedHashMap<>();
    for (String person : crew) {
      Search search =
          new Search(mover, Search.Aim.of(person, mover.at(shared)), shared).within(allowed);
      Search.Trial first = search.measure(shared);
      Set<String> excused = excused(first);
      Search.Trial end = first.passes(excused) ? first : search.run(shared, steps());
      if (!end.passes(excused)) {
        double[] other = mover.to(shared, mover.at(alone.get(person).x())).orElse(shared);
        end = search.run(other, steps());
      }
      if (!end.passes(excused)) {
        cutShort |= search.isSpent();
        left.addAndGet(-search.measured());
        return null;
      }
      left.addAndGet(-search.measured());
      places.put(person, end);
    }
    double apart = Nearing.apart(places);
    for (int round = 0; round < Nearing.ROUNDS; round++) {
      for (String person : crew) {
        Search search =
            new Search(mover, Search.Aim.of(person, Nearing.middleOfOthers(person, places)), shared)
                .within(allowed / Nearing.ROUNDS);
        Set<String> excused = excused(search.measure(shared));
        Search.Trial end = search.run(places.get(person).x(), steps());
        if (end.passes(excused)) {
          places.put(person, end);
        }
      }
      double now = Nearing.apart(places);
      if (now > apart - Nearing.STILL_MM) {
        break;
      }
      apart = now;
    }
    Nearing nearing = new Nearing(mover, shared, allowed / Nearing.ROUNDS / Nearing.ROUNDS);
    nearing.draw(places);
    left.addAndGet(-nearing.measured());
    SuitReport.Adjustment found = report(subset, places);
    return found.unmet().isEmpty() ? found : null;
  }

  private int steps() {
    return settings.stepsPerSeed();
  }

  /** The adjustment in the user's words, with what the full study of each place finds. */
  private SuitReport.Adjustment report(List<String> subset, Map<String, Search.Trial> places) {
    Map<String, Layout> layouts = new LinkedHashMap<>();
    Map<String, Places> pins = new LinkedHashMap<>();
    Map<String, List<Finding>> unmet = new LinkedHashMap<>();
    for (Map.Entry<String, Search.Trial> e : places.entrySet()) {
      Layout layout = problem.withPlaces(e.getValue().x());
      Study study = Study.of(layout);
      List<Finding> fails =
          study.findings().stream()
              .filter(f -> f.verdict() == Verdict.FAIL && Concerns.person(f, e.getKey()))
              .filter(f -> f.who().filter(w -> seatsThatStay().contains(w.seat())).isEmpty())
              .toList();
      if (!fails.isEmpty()) {
        unmet.put(e.getKey(), fails);
      }
      layouts.put(e.getKey(), layout);
      pins.put(e.getKey(), study.placed().places());
    }
    List<SuitReport.Travel> travels = new ArrayList<>();
    for (String name : subset) {
      travels.add(travel(name, pins));
    }
    travels.removeIf(t -> t.mm() < Nearing.STILL_MM);
    return new SuitReport.Adjustment(travels, layouts, unmet);
  }

  private SuitReport.Travel travel(String name, Map<String, Places> places) {
    SuitReport.Travel most = null;
    for (String pin : groups.get(name)) {
      Map<String, PointMm> at = new LinkedHashMap<>();
      places.forEach((person, p) -> at.put(person, p.pin(pin)));
      double mm = 0;
      for (PointMm a : at.values()) {
        for (PointMm b : at.values()) {
          mm = Math.max(mm, a.distance(b));
        }
      }
      if (most == null || mm > most.mm()) {
        most = new SuitReport.Travel(name, pin, mm, at);
      }
    }
    return most;
  }
}
