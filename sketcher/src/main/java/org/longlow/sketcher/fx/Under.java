package org.longlow.sketcher.fx;

import java.util.List;
import org.longlow.rider.geom.PointMm;

/**
 * What lies under the pointer, from the top down, so that clicks on one spot go through it.
 *
 * @param px where that is
 * @param subjects such as {@code pin:grip}, {@code part:tank}
 * @param now which of them was picked last
 */
record Under(PointMm px, List<String> subjects, int now) {

  private static final double SAME_PX = 3;

  static final Under NOTHING = new Under(new PointMm(-1e6, -1e6), List.of(), 0);

  Under {
    subjects = List.copyOf(subjects);
  }

  /** Returns whether the pointer is still there. */
  boolean isAt(PointMm other) {
    return px.distance(other) <= SAME_PX;
  }

  /** Returns what is picked; empty for nothing. */
  String subject() {
    return subjects.isEmpty() ? "" : subjects.get(now);
  }

  /**
   * Returns what a click at a place picks.
   *
   * @param chosen what was picked before; if it is something else by now the click is a first one
   * @param there what lies there, from the top down
   */
  Under clicked(PointMm at, String chosen, List<String> there) {
    boolean again =
        isAt(at) && subjects.equals(there) && !there.isEmpty() && chosen.equals(subject());
    return new Under(again ? px : at, there, again ? (now + 1) % there.size() : 0);
  }

  /** Says how many there are; none where there is no other. */
  List<String> words() {
    String subject = subject();
    return subjects.size() < 2
        ? List.of()
        : List.of(
            subject.substring(subject.indexOf(':') + 1),
            (now + 1) + " of " + subjects.size() + " here; click again for the next");
  }
}
