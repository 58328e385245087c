package org.longlow.constraints.suit;

import org.longlow.constraints.check.finding.Finding;

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
    return switch (f.kind()) {
      case GAP, OPEN -> Reading.Kind.GAP;
      case SIGHT -> Reading.Kind.SIGHT;
      default -> Reading.kind(f.kind());
    };
  }
}
