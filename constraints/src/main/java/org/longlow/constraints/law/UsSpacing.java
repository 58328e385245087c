package org.longlow.constraints.law;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.law.LawFinding.Verdict;

/** Distances between lamps in 49 CFR 571.108, Table I-c. */
final class UsSpacing {

  private static final String APART =
      "49 CFR 571.108 Table I-c, copied in 67 Pa. Code ch. 175 Table V, " + Mark.CHECKED.words();
  private static final String FRONT_GAP =
      APART
          + "; measured in the front view: NHTSA letter of 2005, checked; holds with two headlamps"
          + " too: letter of 8 Jan 1987, checked";
  private static final String REAR_GAP =
      "49 CFR 571.108 Table I-c, current text, "
          + Mark.CHECKED_SECOND_HAND.words()
          + "; not for twin lamps off the centreline: NHTSA letter of 21 Nov 1984, checked";

  private UsSpacing() {}

  static void check(List<LampItem> lamps, Findings out) {
    LampRules.headlampPair(RuleSet.US_FEDERAL, lamps, out);
    List<LampItem> front = LampRules.of(lamps, LampKind.FRONT_SIGNAL);
    List<LampItem> rear = LampRules.of(lamps, LampKind.REAR_SIGNAL);
    apart("law.us.front-signal.apart", front, LampTables.US_FRONT_SIGNALS_APART_MM, out);
    apart("law.us.rear-signal.apart", rear, LampTables.US_REAR_SIGNALS_APART_MM, out);
    for (LampItem signal : front) {
      for (LampItem head : LampRules.of(lamps, LampKind.HEADLAMP)) {
        out.atLeast(
            "law.us.front-signal.headlamp-gap",
            signal.name() + ", " + head.name(),
            signal.frontViewGapMm(head),
            LampTables.US_SIGNAL_GAP_MM,
            FRONT_GAP,
            "gap between the lit areas in the front view");
      }
    }
    for (LampItem signal : rear) {
      rearGap(signal, lamps, out);
    }
  }

  private static void apart(String id, List<LampItem> signals, double least, Findings out) {
    List<LampItem> left = LampRules.sideOf(signals, 1);
    List<LampItem> right = LampRules.sideOf(signals, -1);
    for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
      out.atLeast(
          id,
          left.get(i).name() + ", " + right.get(i).name(),
          left.get(i).yMm() - right.get(i).yMm(),
          least,
          APART,
          "distance between the centres across the machine");
    }
  }

  private static void rearGap(LampItem signal, List<LampItem> lamps, Findings out) {
    List<LampItem> beside = new ArrayList<>();
    for (LampKind kind : List.of(LampKind.TAIL, LampKind.STOP)) {
      List<LampItem> those = LampRules.of(lamps, kind);
      if (those.size() == 1 && Math.abs(those.get(0).yMm()) <= LampRules.DRAWN_TRUE_MM) {
        beside.add(those.get(0));
      }
    }
    if (signal.colour() != LampColour.RED || beside.isEmpty()) {
      out.say(
          "law.us.rear-signal.lamp-gap",
          signal.name(),
          Verdict.NOT_APPLICABLE,
          REAR_GAP,
          "the 4 in gap to the tail or stop lamp is asked only of red signals beside a single lamp"
              + " on the centreline; older and state texts ask it of all");
      return;
    }
    for (LampItem lamp : beside) {
      out.atLeast(
          "law.us.rear-signal.lamp-gap",
          signal.name() + ", " + lamp.name(),
          signal.frontViewGapMm(lamp),
          LampTables.US_SIGNAL_GAP_MM,
          REAR_GAP,
          "gap between the lit areas in the rear view");
    }
  }
}
