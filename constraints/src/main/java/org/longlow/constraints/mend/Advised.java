package org.longlow.constraints.mend;

import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.gap.LockFindings;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.person.PoseFindings;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.RestPart;

/**
 * What the sentence of a finding says to change, by the finding's kind. It is tried first and keeps
 * its place among the offers, so that whoever was told of it sees what it would take.
 */
final class Advised {

  /** Those that say to bring grips or foot rests farther in. */
  private static final Set<FindingKind> FARTHER_IN =
      Set.of(HandFindings.HANDS, PoseFindings.REACH, PoseFindings.POSTURE);

  /** Those that say to ask for less lock. */
  private static final Set<FindingKind> LESS_LOCK = Set.of(HandFindings.HANDS, LockFindings.LOCK);

  private final Layout layout;
  private final Finding finding;

  Advised(Layout layout, Finding finding) {
    this.layout = layout;
    this.finding = finding;
  }

  /** Returns the demand of which less may be asked; other demands are never changed. */
  Optional<Demands.Key> lessOf() {
    return LESS_LOCK.contains(finding.kind()) ? Optional.of(Demands.Key.LOCK) : Optional.empty();
  }

  /** Returns whether a dial is named. */
  boolean names(Dial dial) {
    return dial instanceof WrittenDial written
        && (written.kind() == WrittenDial.Kind.DEMAND
            || FARTHER_IN.contains(finding.kind())
                && written.kind() == WrittenDial.Kind.FIELD
                && written.path().get(2).equals("y")
                && layout.parts().get(written.name()) instanceof RestPart);
  }
}
