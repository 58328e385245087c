package org.longlow.constraints.law;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.law.LampRow.Datum;
import org.longlow.constraints.law.LampRow.Placement;
import org.longlow.constraints.law.LawFinding.Verdict;

/** Holds the lamps of a machine against the tables of the rule sets in force. */
public final class LampRules {

  /** The caution that belongs beside every legal finding. */
  public static final String CAUTION =
      "These are reference figures from law texts and summaries, not legal advice. A one-off machine"
          + " is judged by the local code, the registration authority and a licensed inspection, and"
          + " rules change. A pass means only: inside the figures listed here.";

  /** Off-centre or out of level by less counts as drawn true; ours, not the law's, mm. */
  public static final double DRAWN_TRUE_MM = 1;

  private LampRules() {}

  /** Returns the findings for an ordinary motorcycle; see the other {@code check}. */
  public static List<LawFinding> check(Set<RuleSet> rulesInForce, List<LampItem> lamps) {
    return check(rulesInForce, lamps, LawFacts.ORDINARY);
  }

  /**
   * Returns every finding: count, colour, placement, height and spacing, lamps that are missing
   * included.
   *
   * @param rulesInForce may be empty; then there are no findings
   * @param lamps in any order; a lamp with two duties is given once for each
   */
  public static List<LawFinding> check(
      Set<RuleSet> rulesInForce, List<LampItem> lamps, LawFacts facts) {
    Findings out = new Findings();
    for (RuleSet rules : RuleSet.values()) {
      if (!rulesInForce.contains(rules)) {
        continue;
      }
      for (LampRow row : LampTables.of(rules)) {
        row(row, of(lamps, row.kind()), facts, out);
      }
      switch (rules) {
        case US_FEDERAL -> UsSpacing.check(lamps, out);
        case UN_R53 -> UnSpacing.check(lamps, facts, out);
        case UK -> headlampPair(RuleSet.UK, lamps, out);
      }
    }
    return out.all();
  }

  /** Returns the lamps of one kind, in the order given. */
  static List<LampItem> of(List<LampItem> lamps, LampKind kind) {
    return lamps.stream().filter(l -> l.kind() == kind).toList();
  }

  private static void row(LampRow row, List<LampItem> lamps, LawFacts facts, Findings out) {
    String subject = lamps.isEmpty() ? row.kind().words() : Findings.names(lamps);
    boolean signal = row.kind() == LampKind.FRONT_SIGNAL || row.kind() == LampKind.REAR_SIGNAL;
    if (lamps.isEmpty()
        && signal
        && row.rules() == RuleSet.US_FEDERAL
        && facts.motorDrivenCycle()) {
      out.say(
          row.id("count"),
          subject,
          Verdict.NOT_APPLICABLE,
          "49 CFR 571.108 Table I-c, " + Mark.CHECKED_SECOND_HAND.words(),
          "turn signals are not required on a motor driven cycle of 30 mph or less");
      return;
    }
    if (row.least() > 0 || !lamps.isEmpty()) {
      String what = row.kind().words() + " (" + colours(row) + ")";
      out.count(
          row.id("count"), subject, lamps.size(), row.least(), row.most(), row.source(), what);
    }
    for (LampItem lamp : lamps) {
      colour(row, lamp, out);
      height(row, lamp, out);
    }
    if (!lamps.isEmpty()) {
      placement(row, lamps, subject, out);
    }
  }

  private static String colours(LampRow row) {
    return EnumSet.copyOf(row.colours()).stream()
        .map(LampColour::word)
        .collect(Collectors.joining(" or "));
  }

  private static void colour(LampRow row, LampItem lamp, Findings out) {
    boolean allowed = row.colours().contains(lamp.colour());
    out.say(
        row.id("colour"),
        lamp.name(),
        allowed ? Verdict.PASS : Verdict.FAIL,
        row.source(),
        lamp.name()
            + " is "
            + lamp.colour().word()
            + (allowed ? ", as allowed" : "; allowed is " + colours(row)));
  }

  private static void height(LampRow row, LampItem lamp, Findings out) {
    LampRow.Height height = row.height();
    if (height == null) {
      return;
    }
    String steered = lamp.steered() ? ", wheel straight ahead," : "";
    if (height.datum() == Datum.CENTRE) {
      out.range(
          row.id("height"),
          lamp.name(),
          lamp.zMm(),
          height.leastMm(),
          height.mostMm(),
          height.source(),
          "height of the centre above the road" + steered);
      return;
    }
    // Each edge has its own limit: report the one with less to spare.
    double below = lamp.lowestMm() - height.leastMm();
    double above = height.mostMm() - lamp.highestMm();
    if (below <= above && height.leastMm() > 0) {
      out.atLeast(
          row.id("height"),
          lamp.name(),
          lamp.lowestMm(),
          height.leastMm(),
          height.source(),
          "height of the lower edge of the lit area" + steered);
    } else {
      out.atMost(
          row.id("height"),
          lamp.name(),
          lamp.highestMm(),
          height.mostMm(),
          height.source(),
          "height of the upper edge of the lit area" + steered);
    }
  }

  private static void placement(LampRow row, List<LampItem> lamps, String subject, Findings out) {
    if (row.placement() == Placement.CENTRELINE_OR_PAIR) {
      out.atMost(
          row.id("placement"),
          subject,
          lamps.stream().mapToDouble(l -> offSymmetryMm(l, lamps)).max().orElseThrow(),
          DRAWN_TRUE_MM,
          row.source(),
          "distance from the centreline, or from the mirror image of the other one,");
    } else if (row.placement() == Placement.EACH_SIDE) {
      eachSide(row, lamps, subject, out);
    }
  }

  private static double offSymmetryMm(LampItem lamp, List<LampItem> lamps) {
    double off = Math.abs(lamp.yMm());
    for (LampItem other : lamps) {
      if (other != lamp) {
        off = Math.min(off, Math.hypot(lamp.yMm() + other.yMm(), lamp.zMm() - other.zMm()));
      }
    }
    return off;
  }

  private static void eachSide(LampRow row, List<LampItem> lamps, String subject, Findings out) {
    List<LampItem> left = sideOf(lamps, 1);
    List<LampItem> right = sideOf(lamps, -1);
    if (left.isEmpty()
        || left.size() != right.size()
        || left.size() + right.size() != lamps.size()) {
      out.say(
          row.id("placement"),
          subject,
          Verdict.FAIL,
          row.source(),
          row.kind().words()
              + ": "
              + left.size()
              + " on the left and "
              + right.size()
              + " on the right; the same number belongs on each side");
      return;
    }
    double difference = 0;
    for (int i = 0; i < left.size(); i++) {
      difference = Math.max(difference, Math.abs(left.get(i).zMm() - right.get(i).zMm()));
    }
    out.atMost(
        row.id("placement"),
        subject,
        difference,
        DRAWN_TRUE_MM,
        row.source(),
        "difference in height between left and right");
  }

  /** Lamps on one side, lowest first. */
  static List<LampItem> sideOf(List<LampItem> lamps, int sign) {
    List<LampItem> side = new ArrayList<>();
    for (LampItem lamp : lamps) {
      if (lamp.yMm() * sign > 0) {
        side.add(lamp);
      }
    }
    side.sort(Comparator.comparingDouble(LampItem::zMm));
    return side;
  }

  /** Two headlamps side by side may not be far apart. */
  static void headlampPair(RuleSet rules, List<LampItem> lamps, Findings out) {
    List<LampItem> heads = of(lamps, LampKind.HEADLAMP);
    if (heads.size() != 2 || heads.stream().anyMatch(l -> Math.abs(l.yMm()) <= DRAWN_TRUE_MM)) {
      return;
    }
    LampItem a = heads.get(0);
    LampItem b = heads.get(1);
    out.atMost(
        "law." + rules.id() + ".headlamp.pair-gap",
        Findings.names(heads),
        Math.abs(a.yMm() - b.yMm()) - a.halfWidthMm() - b.halfWidthMm(),
        LampTables.HEADLAMP_PAIR_GAP_MM,
        rules.title() + ", " + Mark.FROM_MEMORY.words(),
        "gap between the lit areas of the two headlamps");
  }
}
