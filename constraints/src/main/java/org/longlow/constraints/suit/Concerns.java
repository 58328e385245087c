package org.longlow.constraints.suit;

import java.util.List;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Condition;

/** Whom findings concern. */
final class Concerns {

  private Concerns() {}

  /** Whether a finding is about a person, or of what the machine carries under them alone. */
  static boolean person(Finding f, String person) {
    List<Occupant> people =
        f.kind().toldForEach()
            ? f.stance().map(Condition::aboard).orElse(List.of())
            : f.who().map(List::of).orElse(List.of());
    return people.size() == 1 && people.get(0).person().equals(person);
  }
}
