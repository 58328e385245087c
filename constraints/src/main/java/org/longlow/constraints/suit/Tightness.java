package org.longlow.constraints.suit;

import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.gap.FoulingWords;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.person.SightFindings;

/** How tight a finding is: its margin in the scale of its kind, negative where it is missed. */
final class Tightness {

  private Tightness() {}

  static boolean known(Finding f) {
    return !Double.isNaN(f.margin()) && (kind(f) != null);
  }

  static double of(Finding f) {
    Reading.Kind kind = kind(f);
    // the road ahead is told in mm, but felt as a share of what is asked
    return kind == Reading.Kind.SIGHT
        ? 10 * f.margin() / Math.max(1, Math.abs(f.limit()))
        : f.margin() / kind.scale();
  }

  private static Reading.Kind kind(Finding f) {
    if (f.kind() == GapFindings.GAP || f.kind() == FoulingWords.OPEN) {
      return Reading.Kind.GAP;
    }
    return f.kind() == SightFindings.SIGHT ? Reading.Kind.SIGHT : Reading.kind(f.kind());
  }
}
