package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.SolverLimit;
import org.longlow.constraints.study.Study;
import org.longlow.rider.pose.Comfort;

/** What there is to say of places, against the present one. */
final class Alternatives {

  private static final double RESTING_MM = 1e-4;

  private final Study before;
  private final LayoutProblem problem;
  private final List<String> pins;

  /**
   * @param pins that were asked to move
   */
  Alternatives(Study before, List<String> pins) {
    this.before = before;
    this.problem = before.placed().problem();
    this.pins = pins;
  }

  /** Returns the place where all variables of the layout have these values. */
  SuitReport.Alternative at(double[] x) {
    Layout moved = problem.withPlaces(x);
    Study study = Study.of(moved);
    Places was = before.placed().places();
    Places now = study.placed().places();
    List<SuitReport.Move> moves =
        pins.stream().map(p -> new SuitReport.Move(p, was.pin(p), now.pin(p))).toList();
    return new SuitReport.Alternative(
        moved, study, moves, comfort(study), changes(before, study), resting(x));
  }

  /** Limits of the layout that some moved pin rests against, or a free measure that moves it. */
  private List<String> resting(double[] x) {
    List<Integer> own = new ArrayList<>();
    for (String pin : pins) {
      for (int v : problem.variables(pin)) {
        own.add(v);
      }
    }
    own.addAll(moving(own, x));
    List<String> names = new ArrayList<>();
    for (SolverLimit limit : problem.problem().limits()) {
      boolean ours =
          limit.gaps().stream()
              .flatMapToInt(gap -> IntStream.of(gap.variables()))
              .anyMatch(own::contains);
      if (ours && limit.roomMm(x) < RESTING_MM) {
        names.add(limit.name());
      }
    }
    return names;
  }

  /** Free measures that are tied to these variables, or that are no longer what they were. */
  private List<Integer> moving(List<Integer> own, double[] x) {
    double[] was = before.placed().report().x();
    Set<Integer> tied =
        problem.problem().ties().stream()
            .flatMap(tie -> tie.relations().stream())
            .map(relation -> IntStream.of(relation.variables()).boxed().toList())
            .filter(variables -> variables.stream().anyMatch(own::contains))
            .flatMap(List::stream)
            .collect(Collectors.toSet());
    return problem.layout().measures().entrySet().stream()
        .filter(e -> e.getValue().free())
        .map(e -> problem.problem().indexOf(e.getKey()))
        .filter(v -> tied.contains(v) || Math.abs(x[v] - was[v]) > LayoutProblem.UNMOVED)
        .toList();
  }

  /** Discomfort by the name that findings use. */
  static Map<String, Double> comfort(Study study) {
    Map<String, Double> costs = new LinkedHashMap<>();
    for (Sitting s : study.sittings()) {
      double cost =
          s.posture().map(p -> Comfort.cost(p.angles(), s.body().sex())).orElse(Double.NaN);
      costs.put(s.occupant().name(), cost);
    }
    return costs;
  }

  /** Findings whose verdict differs, those that got worse first. */
  static List<SuitReport.Change> changes(Study before, Study after) {
    Map<String, Finding> old = byId(before);
    Map<String, Finding> now = byId(after);
    List<SuitReport.Change> changes = new ArrayList<>();
    now.forEach((id, f) -> change(changes, old.get(id), f, f));
    old.forEach(
        (id, f) -> {
          if (!now.containsKey(id)) {
            change(changes, f, null, f);
          }
        });
    changes.sort(
        Comparator.comparing(SuitReport.Change::after).thenComparing(c -> -c.before().ordinal()));
    return changes;
  }

  private static void change(
      List<SuitReport.Change> into, Finding before, Finding after, Finding shown) {
    Verdict was = before == null ? Verdict.PASS : before.verdict();
    Verdict is = after == null ? Verdict.PASS : after.verdict();
    if (was != is) {
      into.add(new SuitReport.Change(was, is, shown));
    }
  }

  static Map<String, Finding> byId(Study study) {
    Map<String, Finding> map = new LinkedHashMap<>();
    study.findings().forEach(f -> map.putIfAbsent(f.id(), f));
    return map;
  }
}
