package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.law.LawSource;
import org.longlow.constraints.law.LawStatus;
import org.longlow.constraints.law.RuleSet;
import org.longlow.rider.geom.PointMm;

/** Rulings as findings: what several bodies of rules say alike is said once and names them all. */
final class Rulings {

  private Rulings() {}

  /**
   * Returns the findings.
   *
   * @param stance in which they were made
   * @param places where the parts are
   */
  static List<Finding> findings(List<Ruling> rulings, String stance, Map<String, PointMm> places) {
    Map<List<Object>, List<Ruling>> alike = new LinkedHashMap<>();
    for (Ruling r : rulings) {
      List<Object> said = List.of(r.topic(), r.subject(), r.outcome(), r.figures(), r.text());
      alike.computeIfAbsent(said, k -> new ArrayList<>()).add(r);
    }
    return alike.values().stream().map(same -> finding(same, stance, places)).toList();
  }

  private static Finding finding(List<Ruling> same, String stance, Map<String, PointMm> places) {
    Ruling first = same.get(0);
    List<RuleSet> sets = same.stream().map(Ruling::rules).distinct().toList();
    List<RuleSet> unsure =
        same.stream().filter(Rulings::fromMemory).map(Ruling::rules).distinct().toList();
    Ruling.Figures figures = first.figures();
    Optional<PointMm> where =
        first.parts().stream().filter(places::containsKey).findFirst().map(places::get);
    return new Finding(
        "law."
            + sets.stream().map(RuleSet::id).collect(Collectors.joining("+"))
            + "."
            + first.topic(),
        first.subject(),
        stance,
        verdict(first.outcome(), !unsure.isEmpty()),
        figures.value(),
        figures.limit(),
        figures.margin(),
        figures.unit(),
        source(same, sets),
        first.text() + " (" + RuleSet.words(sets) + memory(first.outcome(), sets, unsure) + ").",
        where);
  }

  private static String source(List<Ruling> same, List<RuleSet> sets) {
    String cited =
        same.stream()
            .flatMap(r -> r.sources().stream())
            .map(LawSource::cite)
            .distinct()
            .collect(Collectors.joining("; "));
    return cited.isEmpty() ? "no row in the tables of " + RuleSet.words(sets) : cited;
  }

  private static String memory(Ruling.Outcome outcome, List<RuleSet> sets, List<RuleSet> unsure) {
    boolean judged = outcome == Ruling.Outcome.INSIDE || outcome == Ruling.Outcome.OUTSIDE;
    if (!judged || unsure.isEmpty()) {
      return "";
    }
    return ": from memory"
        + (unsure.size() == sets.size() ? "" : " for " + RuleSet.words(unsure))
        + ", check the text";
  }

  private static boolean fromMemory(Ruling ruling) {
    return ruling.sources().stream().anyMatch(s -> s.status() == LawStatus.FROM_MEMORY);
  }

  /** A rule from memory may not let anything pass. */
  private static Verdict verdict(Ruling.Outcome outcome, boolean unsure) {
    return switch (outcome) {
      case INSIDE -> unsure ? Verdict.CAUTION : Verdict.PASS;
      case OUTSIDE -> Verdict.FAIL;
      case CARE -> Verdict.CAUTION;
      case NOT_APPLICABLE -> Verdict.NOT_APPLICABLE;
    };
  }
}
