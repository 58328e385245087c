package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.law.LawSource;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Rulings as findings: what several bodies of rules say alike is said once and names them all. */
public final class Rulings {

  /** A rule of law. */
  public static final FindingKind LAW = new FindingKind("law", FindingGroup.LAW, Rests.ON_DRAWING);

  /** A rule of law on a height above the road. */
  public static final FindingKind LAW_HEIGHT =
      new FindingKind("law", FindingGroup.LAW, Rests.ON_MASSES);

  /** A rule of law that is met as far as its text is known, which nobody could read again. */
  public static final FindingKind LAW_FROM_MEMORY =
      new FindingKind("law", FindingGroup.LAW, Rests.ON_MEMORY);

  /** What the law asks or may ask and nothing here judges. */
  public static final FindingKind LAW_NOT_COVERED =
      new FindingKind("law", FindingGroup.LAW, Rests.ON_NOTHING);

  /** The rows of the tables never change. */
  private static final ByThing<LawSource, Basis> CITED =
      new ByThing<>(1024, s -> Basis.published(s.status(), s.cite()));

  private Rulings() {}

  /**
   * Returns the findings.
   *
   * @param stance in which they were made
   * @param places where the parts are
   */
  static List<Finding> findings(
      List<Ruling> rulings, Condition stance, Map<String, PointMm> places) {
    Map<Said, List<Ruling>> alike = new LinkedHashMap<>();
    for (Ruling r : rulings) {
      alike.computeIfAbsent(new Said(r), k -> new ArrayList<>()).add(r);
    }
    return alike.values().stream().map(same -> finding(same, stance, places)).toList();
  }

  /** What a ruling says, whoever rules. */
  private record Said(Ruling by) {

    @Override
    public boolean equals(Object o) {
      return o instanceof Said said
          && said.by.outcome() == by.outcome()
          && said.by.figures().equals(by.figures())
          && said.by.about().equals(by.about())
          && said.by.words().equals(by.words());
    }

    /** Sentences are only compared: figures and parts tell most of them apart. */
    @Override
    public int hashCode() {
      return 31 * by.figures().hashCode() + by.about().parts().hashCode();
    }
  }

  private static Finding finding(List<Ruling> same, Condition stance, Map<String, PointMm> places) {
    Ruling first = same.get(0);
    List<RuleSet> sets = new ArrayList<>();
    List<RuleSet> unsure = new ArrayList<>();
    List<Basis> cited = new ArrayList<>();
    for (Ruling ruling : same) {
      add(sets, ruling.rules());
      for (LawSource source : ruling.sources()) {
        add(cited, CITED.of(source));
        if (source.status() == Known.FROM_MEMORY) {
          add(unsure, ruling.rules());
        }
      }
    }
    if (cited.isEmpty()) {
      cited.add(Basis.model("no row in the tables of " + RuleSet.words(sets)));
    }
    Optional<PointMm> where =
        first.about().parts().stream().filter(places::containsKey).findFirst().map(places::get);
    Finding finding =
        new Finding(
            kind(same, !unsure.isEmpty()),
            first.about().under(sets.stream().map(RuleSet::id).collect(Collectors.joining("+"))),
            Optional.of(stance),
            verdict(first.outcome(), !unsure.isEmpty()),
            first.figures(),
            cited,
            Words.of(
                first.words(),
                " (" + RuleSet.words(sets) + memory(first.outcome(), sets, unsure) + ")."));
    return where.map(finding::at).orElse(finding);
  }

  private static FindingKind kind(List<Ruling> same, boolean unsure) {
    if (same.get(0).outcome() == Ruling.Outcome.NOT_COVERED) {
      return LAW_NOT_COVERED;
    }
    if (unsure && same.get(0).outcome() == Ruling.Outcome.INSIDE) {
      return LAW_FROM_MEMORY;
    }
    return same.get(0).ofHeight() ? LAW_HEIGHT : LAW;
  }

  private static <T> void add(List<T> to, T one) {
    if (!to.contains(one)) {
      to.add(one);
    }
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

  /** A rule from memory may not let anything pass. */
  private static Verdict verdict(Ruling.Outcome outcome, boolean unsure) {
    return switch (outcome) {
      case INSIDE -> unsure ? Verdict.CAUTION : Verdict.PASS;
      case OUTSIDE -> Verdict.FAIL;
      case CARE, NOT_COVERED -> Verdict.CAUTION;
      case NOT_APPLICABLE -> Verdict.NOT_APPLICABLE;
    };
  }
}
