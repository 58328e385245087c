package org.longlow.sketcher.picture;

import java.util.Collection;
import java.util.List;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.study.Study;

/** What is ringed on a front view or plan. */
final class FirstTouches {

  private FirstTouches() {}

  /**
   * Returns what the findings say touches first as the machine leans, or as it is steered, of the
   * machine and those who are seated.
   */
  static List<Touch> of(Study study, Aspect aspect, Collection<Occupant> seated) {
    return aspect == Aspect.FRONT
        ? Touch.first(Touch.with(Touch.lean(study.findings()), seated), 2)
        : Touch.first(Touch.with(Touch.steer(study.findings()), seated), 1);
  }

  /** Returns what those are in words. */
  static String words(Aspect aspect) {
    return aspect == Aspect.FRONT
        ? "what touches the road first leaning to each side, and what next"
        : "what is met first steered to each side";
  }
}
