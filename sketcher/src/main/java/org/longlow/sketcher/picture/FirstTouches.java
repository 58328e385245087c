package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.LockFindings;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.FigureSort;

/** What is ringed on a view. */
final class FirstTouches {

  private FirstTouches() {}

  /**
   * Returns what the findings say touches first as the machine leans, or as it is steered, and what
   * only comes too close then, of the machine and those who are seated.
   */
  static List<TouchRing> of(Study study, Aspect aspect, Collection<Occupant> seated) {
    boolean front = aspect == Aspect.FRONT;
    List<Touch> touches =
        switch (aspect) {
          case FRONT -> Touch.first(Touch.with(Touch.lean(study.findings()), seated), 2);
          case PLAN -> Touch.first(Touch.with(Touch.steer(study.findings()), seated), 1);
          case SIDE -> List.of();
        };
    List<TouchRing> rings = new ArrayList<>();
    for (Touch t : touches) {
      String how = front ? "leaned, " : t.left() ? "steered left, " : "steered right, ";
      rings.add(new TouchRing(t.where(), t.yMm(), t.left(), how + t.words()));
    }
    study.findings().stream()
        .filter(FirstTouches::tooClose)
        .filter(f -> f.who().map(seated::contains).orElse(true))
        .forEach(f -> rings.add(close(study, f)));
    return rings;
  }

  /** What meets on the way is among what touches, and less than nothing apart. */
  private static boolean tooClose(Finding f) {
    return f.kind().equals(LockFindings.LOCK)
        && f.unit() == FigureUnit.MM
        && f.verdict() == Verdict.FAIL
        && f.value() >= 0
        && f.where().isPresent();
  }

  private static TouchRing close(Study study, Finding f) {
    double y = f.across().orElse(0);
    String apart = study.layout().units().says(f.value(), FigureSort.LENGTH);
    return new TouchRing(
        f.where().orElseThrow(), y, y > 0, "steered, " + Touch.both(f) + " " + apart + " apart");
  }

  /** Returns what those are in words. */
  static String words(Aspect aspect) {
    return switch (aspect) {
      case FRONT ->
          "what touches the road first leaning to each side, and what next, or comes too close"
              + " steered";
      case PLAN -> "what is met first steered to each side, or comes too close on the way";
      case SIDE -> "what comes too close steered";
    };
  }
}
