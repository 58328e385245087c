package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
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

  private static final int ROUNDS = 4;

  /** So far from the others' place counts as much as one spread, mm. */
  private static final double NEAR_MM = 150;

  /** Ease only breaks ties here. */
  private static final double COMFORT_WEIGHT = 1e-3;

  private static final double STILL_MM = 0.5;

  private final LayoutProblem problem;
  private final Map<String, List<String>> groups;
  private final SuitSettings settings;
  private final List<String> crew;

  Adjusting(LayoutProblem problem, Map<String, List<String>> groups, SuitSettings settings) {
    this.problem = problem;
    this.groups = groups;
    this.settings = settings;
    this.crew = List.copyOf(problem.layout().crew().keySet());
  }

  /**
   * Returns the adjustment, if there is one.
   *
   * @param shared the best place for all together, values of all variables
   */
  Optional<SuitReport.Adjustment> from(double[] shared) {
    List<String> names = List.copyOf(groups.keySet());
    Map<String, double[]> alone = new LinkedHashMap<>();
    for (String person : crew) {
      double[] x = alone(person, shared);
      if (x == null) {
        return Optional.empty(); // not even for this person alone
      }
      alone.put(person, x);
    }
    for (int size = 1; size <= names.size(); size++) {
      if (size > 2) {
        size = names.size();
      }
      Optional<SuitReport.Adjustment> least =
          subsets(names, size).parallelStream()
              .map(subset -> sliding(subset, shared, alone))
              .filter(Objects::nonNull)
              .reduce((a, b) -> total(b) < total(a) - 1e-6 ? b : a);
      if (least.isPresent()) {
        return least;
      }
    }
    return Optional.empty();
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

  /** A place where this person passes, everything sliding; null if none was found. */
  private double[] alone(String person, double[] shared) {
    List<String> pins = groups.values().stream().flatMap(List::stream).toList();
    Mover mover = new Mover(problem, pins, shared);
    double[] home = mover.at(shared);
    Search search = new Search(mover, aim(person, home), shared);
    Set<String> excused = excused(search.measure(shared));
    double[][] ways = mover.directions(shared);
    for (int seed = 0; seed < settings.seeds(); seed++) {
      double[] start = shared;
      if (seed > 0) {
        double[] target = Starts.of(seed, home, ways, settings.spreadMm());
        start = mover.to(shared, target).orElse(null);
      }
      if (start != null) {
        Search.Trial end = search.run(start, settings.stepsPerSeed());
        if (passes(end, excused)) {
          return end.x();
        }
      }
    }
    return null;
  }

  private static Search.Aim aim(String person, double[] near) {
    return new Search.Aim(person::equals, COMFORT_WEIGHT, near, NEAR_MM);
  }

  /** Parts that foul each other already do not count against a person. */
  private static Set<String> excused(Search.Trial shared) {
    Set<String> ids = new HashSet<>();
    shared.readings().stream()
        .filter(r -> r.person().isEmpty() && r.fails())
        .forEach(r -> ids.add(r.id()));
    return ids;
  }

  private static boolean passes(Search.Trial trial, Set<String> excused) {
    return trial.readings().stream().noneMatch(r -> r.fails() && !excused.contains(r.id()));
  }

  /** The least travel with only these things sliding; null if that does not do. */
  private SuitReport.Adjustment sliding(
      List<String> subset, double[] shared, Map<String, double[]> alone) {
    List<String> pins = subset.stream().flatMap(name -> groups.get(name).stream()).toList();
    Mover mover = new Mover(problem, pins, shared);
    Map<String, Search.Trial> places = new LinkedHashMap<>();
    for (String person : crew) {
      Search search = new Search(mover, aim(person, mover.at(shared)), shared);
      Search.Trial first = search.measure(shared);
      Set<String> excused = excused(first);
      Search.Trial end = passes(first, excused) ? first : search.run(shared, steps());
      if (!passes(end, excused)) {
        double[] other = mover.to(shared, mover.at(alone.get(person))).orElse(shared);
        end = search.run(other, steps());
      }
      if (!passes(end, excused)) {
        return null;
      }
      places.put(person, end);
    }
    double apart = apart(places);
    for (int round = 0; round < ROUNDS; round++) {
      for (String person : crew) {
        Search search = new Search(mover, aim(person, middleOfOthers(person, places)), shared);
        Set<String> excused = excused(search.measure(shared));
        Search.Trial end = search.run(places.get(person).x(), steps());
        if (passes(end, excused)) {
          places.put(person, end);
        }
      }
      double now = apart(places);
      if (now > apart - STILL_MM) {
        break;
      }
      apart = now;
    }
    return report(subset, places);
  }

  private int steps() {
    return settings.stepsPerSeed();
  }

  private double[] middleOfOthers(String person, Map<String, Search.Trial> places) {
    double[] sum = null;
    for (Map.Entry<String, Search.Trial> e : places.entrySet()) {
      if (!e.getKey().equals(person)) {
        double[] at = e.getValue().at();
        if (sum == null) {
          sum = new double[at.length];
        }
        for (int k = 0; k < at.length; k++) {
          sum[k] += at[k] / (crew.size() - 1);
        }
      }
    }
    return sum;
  }

  private static double apart(Map<String, Search.Trial> places) {
    double most = 0;
    for (Search.Trial a : places.values()) {
      for (Search.Trial b : places.values()) {
        most = Math.max(most, Suiting.farthest(a.at(), b.at()));
      }
    }
    return most;
  }

  /** The adjustment in the user's words, or null if the full study of a place finds a fault. */
  private SuitReport.Adjustment report(List<String> subset, Map<String, Search.Trial> places) {
    Map<String, Layout> layouts = new LinkedHashMap<>();
    Map<String, Places> pins = new LinkedHashMap<>();
    for (Map.Entry<String, Search.Trial> e : places.entrySet()) {
      Layout layout = problem.withPlaces(e.getValue().x());
      Study study = Study.of(layout);
      boolean fails =
          study.findings().stream()
              .anyMatch(f -> f.verdict() == Verdict.FAIL && Suiting.about(f, e.getKey()));
      if (fails) {
        return null;
      }
      layouts.put(e.getKey(), layout);
      pins.put(e.getKey(), study.placed().places());
    }
    List<SuitReport.Travel> travels = new ArrayList<>();
    for (String name : subset) {
      travels.add(travel(name, pins));
    }
    travels.removeIf(t -> t.mm() < STILL_MM);
    return new SuitReport.Adjustment(travels, layouts);
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
