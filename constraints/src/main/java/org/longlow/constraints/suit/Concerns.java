package org.longlow.constraints.suit;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Condition;

/** Whom findings concern. */
final class Concerns {

  /** What is said of the machine once for everybody who rides it. */
  private static final Set<FindingKind> TOLD_FOR_EACH =
      EnumSet.of(
          FindingKind.LOAD, FindingKind.LIFT, FindingKind.SAG, FindingKind.TRAIL, FindingKind.RAKE);

  private Concerns() {}

  /** Whether a finding is about a person, or of what the machine carries under them alone. */
  static boolean person(Finding f, String person) {
    List<Occupant> people =
        TOLD_FOR_EACH.contains(f.kind())
            ? f.stance().map(Condition::aboard).orElse(List.of())
            : f.who().map(List::of).orElse(List.of());
    return people.size() == 1 && people.get(0).person().equals(person);
  }
}
