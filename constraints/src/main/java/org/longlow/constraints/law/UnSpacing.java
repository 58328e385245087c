package org.longlow.constraints.law;

import java.util.List;
import java.util.Locale;
import org.longlow.constraints.law.LawFinding.Verdict;

/** Distances between lamps, and combined counts, in UN R53; every figure from memory. */
final class UnSpacing {

  private UnSpacing() {}

  private static String source(String section) {
    return "UN R53 " + section + ", " + Mark.FROM_MEMORY.words();
  }

  static void check(List<LampItem> lamps, LawFacts facts, Findings out) {
    LampRules.headlampPair(RuleSet.UN_R53, lamps, out);
    List<LampItem> front = LampRules.of(lamps, LampKind.FRONT_SIGNAL);
    List<LampItem> rear = LampRules.of(lamps, LampKind.REAR_SIGNAL);
    apart("law.un-r53.front-signal.apart", front, LampTables.UN_FRONT_INDICATORS_APART_MM, out);
    apart("law.un-r53.rear-signal.apart", rear, LampTables.UN_REAR_INDICATORS_APART_MM, out);
    for (LampItem signal : front) {
      for (LampItem head : LampRules.of(lamps, LampKind.HEADLAMP)) {
        besideHeadlamp(signal, head, out);
      }
    }
    if (facts.rearmostXMm() != null) {
      for (LampItem signal : rear) {
        out.atMost(
            "law.un-r53.rear-signal.ahead",
            signal.name(),
            signal.xMm() - facts.rearmostXMm(),
            LampTables.UN_REAR_INDICATOR_AHEAD_MM,
            source("6.3"),
            "distance ahead of the rearmost point");
      }
    }
    sideReflectors(lamps, out);
    fogLamps(lamps, out);
  }

  private static void apart(String id, List<LampItem> signals, double least, Findings out) {
    List<LampItem> left = LampRules.sideOf(signals, 1);
    List<LampItem> right = LampRules.sideOf(signals, -1);
    for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
      LampItem l = left.get(i);
      LampItem r = right.get(i);
      out.atLeast(
          id,
          l.name() + ", " + r.name(),
          l.yMm() - r.yMm() - l.halfWidthMm() - r.halfWidthMm(),
          least,
          source("6.3"),
          "distance between the inner edges of the lit areas");
    }
  }

  private static void besideHeadlamp(LampItem signal, LampItem head, Findings out) {
    String subject = signal.name() + ", " + head.name();
    if (signal.yMm() * head.yMm() >= 0 || Math.abs(head.yMm()) <= LampRules.DRAWN_TRUE_MM) {
      out.atLeast(
          "law.un-r53.front-signal.outside-headlamp",
          subject,
          Math.abs(signal.yMm()) - signal.halfWidthMm() - Math.abs(head.yMm()) - head.halfWidthMm(),
          0,
          source("6.3"),
          "distance of the signal outside the headlamp's outer edge");
    }
    double gap = signal.frontViewGapMm(head);
    double sure = LampTables.UN_INDICATOR_GAP_SURE_MM;
    double least = LampTables.UN_INDICATOR_GAP_LEAST_MM;
    String id = "law.un-r53.front-signal.headlamp-gap";
    if (gap >= least && gap < sure) {
      out.add(
          new LawFinding(
              id,
              subject,
              Verdict.CAUTION,
              gap,
              sure,
              gap - sure,
              "mm",
              source("6.3"),
              String.format(
                  Locale.ROOT,
                  "%s: gap %.1f mm; between %.0f and %.0f mm it depends on the signal's intensity",
                  subject,
                  gap,
                  least,
                  sure)));
    } else {
      out.atLeast(
          id,
          subject,
          gap,
          gap < least ? least : sure,
          source("6.3"),
          "gap between the lit areas in the front view");
    }
  }

  private static void sideReflectors(List<LampItem> lamps, Findings out) {
    for (int sign : new int[] {1, -1}) {
      int count =
          LampRules.sideOf(LampRules.of(lamps, LampKind.FRONT_SIDE_REFLECTOR), sign).size()
              + LampRules.sideOf(LampRules.of(lamps, LampKind.REAR_SIDE_REFLECTOR), sign).size();
      String side = sign > 0 ? "left" : "right";
      out.count(
          "law.un-r53.side-reflector." + side,
          "side reflectors, " + side,
          count,
          1,
          2,
          source("6.12"),
          "side reflectors on the " + side);
    }
  }

  private static void fogLamps(List<LampItem> lamps, Findings out) {
    List<LampItem> heads = LampRules.of(lamps, LampKind.HEADLAMP);
    for (LampItem fog : LampRules.of(lamps, LampKind.FRONT_FOG)) {
      for (LampItem head : heads) {
        out.atMost(
            "law.un-r53.front-fog.below-headlamp",
            fog.name() + ", " + head.name(),
            fog.highestMm(),
            head.highestMm(),
            source("6.10"),
            "height of the fog lamp's upper edge against the passing beam's");
      }
    }
    for (LampItem fog : LampRules.of(lamps, LampKind.REAR_FOG)) {
      for (LampItem stop : LampRules.of(lamps, LampKind.STOP)) {
        out.atLeast(
            "law.un-r53.rear-fog.stop-gap",
            fog.name() + ", " + stop.name(),
            fog.frontViewGapMm(stop),
            LampTables.UN_REAR_FOG_GAP_MM,
            source("6.11"),
            "gap between the lit areas in the rear view");
      }
    }
  }
}
