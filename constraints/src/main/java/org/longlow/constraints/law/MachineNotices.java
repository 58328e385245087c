package org.longlow.constraints.law;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.longlow.constraints.law.LawFinding.Verdict;

/**
 * Notices on stand, mirrors, footrests and handlebar height: always a caution, never pass or fail,
 * because they vary from place to place or cannot be judged from a layout.
 */
public final class MachineNotices {

  /** Least area of a flat mirror, mm²: 12.5 in² (COMAR 11.14.03.10, checked). */
  public static final double FLAT_MIRROR_MM2 = 8065;

  /** Least area of a convex mirror, mm²: 10 in² (COMAR 11.14.03.10, checked). */
  public static final double CONVEX_MIRROR_MM2 = 6450;

  /** Least distance of a mirror's centre from the centreline, mm: 49 CFR 571.111 S10, memory. */
  public static final double MIRROR_OUT_MM = 279;

  /**
   * A height of the grips above the seat under the rider that some place allows.
   *
   * @param label whose, such as "varies by state"
   * @param limitMm mm, &gt; 0
   */
  public record HandlebarProfile(String label, double limitMm, String source) {

    /** 15 in above the seat as depressed by the rider; many US states, but not all. */
    public static final HandlebarProfile VARIES_BY_STATE =
        new HandlebarProfile(
            "varies by state",
            381,
            "Connecticut OLR report 2006-R-0537 and 32 CFR 636.28(f): 15 in, checked; others 25 in,"
                + " 30 in, shoulder or eye height or none, and changed since 2006");

    public HandlebarProfile {
      if (label == null || label.isBlank() || source == null || !(limitMm > 0)) {
        throw new IllegalArgumentException(
            "a handlebar profile needs a label, a source and a limit above 0 mm, got " + limitMm);
      }
    }
  }

  /**
   * A mirror.
   *
   * @param areaMm2 glass area, mm², &gt; 0
   * @param outMm centre from the centreline, mm
   */
  public record Mirror(String name, double areaMm2, boolean convex, double outMm) {
    public Mirror {
      if (name == null || !(areaMm2 > 0) || !Double.isFinite(areaMm2) || !Double.isFinite(outMm)) {
        throw new IllegalArgumentException(
            "mirror \"" + name + "\" needs a finite area above 0 mm2 and a finite distance out");
      }
    }
  }

  /**
   * What the notices look at.
   *
   * @param gripsAboveSeatMm grips above the seat as depressed by the rider, mm; null if not known
   * @param handlebar the profile to compare with
   */
  public record Facts(
      Double gripsAboveSeatMm,
      HandlebarProfile handlebar,
      List<Mirror> mirrors,
      boolean sideStand) {
    public Facts {
      mirrors = List.copyOf(mirrors);
      if (handlebar == null) {
        handlebar = HandlebarProfile.VARIES_BY_STATE;
      }
    }
  }

  private MachineNotices() {}

  /** Returns the notices of the rule sets in force; every verdict is a caution. */
  public static List<LawFinding> of(Set<RuleSet> rulesInForce, Facts facts) {
    Findings out = new Findings();
    if (rulesInForce.contains(RuleSet.US_FEDERAL)) {
      footrests(out);
      if (facts.sideStand()) {
        out.say(
            "law.us.stand",
            "stand",
            Verdict.CAUTION,
            "49 CFR 571.123 S5.2.4, " + Mark.FROM_MEMORY.words(),
            "the stand must fold rearward and upward if it touches the ground while moving forward");
      }
      mirrors(facts.mirrors(), out);
      handlebar(facts, out);
    }
    if (rulesInForce.contains(RuleSet.UK) && facts.sideStand()) {
      out.say(
          "law.uk.stand",
          "stand",
          Verdict.CAUTION,
          "SI 1986/1078 reg. 38, " + Mark.CHECKED.words(),
          "the side stand must not fold by itself when the parked machine's lean changes, nor upset"
              + " a moving machine");
    }
    return out.all();
  }

  private static void footrests(Findings out) {
    out.say(
        "law.us.footrests",
        "footrests",
        Verdict.CAUTION,
        "49 CFR 571.123 S5.2.5, quoted in an NHTSA letter, " + Mark.CHECKED.words(),
        "each seating position needs a footrest (a board counts); a passenger's folds rearward and"
            + " upward");
  }

  private static void mirrors(List<Mirror> mirrors, Findings out) {
    String source =
        "49 CFR 571.111 S10; areas in COMAR 11.14.03.10, checked; distance out "
            + Mark.FROM_MEMORY.words();
    if (mirrors.isEmpty()) {
      out.say(
          "law.us.mirror",
          "mirrors",
          Verdict.CAUTION,
          source,
          "no mirror is given; at least one is needed, flat 8065 mm2 or convex 6450 mm2");
    }
    for (Mirror mirror : mirrors) {
      double least = mirror.convex() ? CONVEX_MIRROR_MM2 : FLAT_MIRROR_MM2;
      notice(
          "law.us.mirror",
          mirror.name(),
          mirror.areaMm2(),
          least,
          mirror.areaMm2() - least,
          "mm2",
          source,
          String.format(
              Locale.ROOT,
              "%s has %.0f mm2; the figure for a %s one is at least %.0f",
              mirror.name(),
              mirror.areaMm2(),
              mirror.convex() ? "convex" : "flat",
              least),
          out);
      double away = Math.abs(mirror.outMm());
      notice(
          "law.us.mirror-out",
          mirror.name(),
          away,
          MIRROR_OUT_MM,
          away - MIRROR_OUT_MM,
          "mm",
          source,
          String.format(
              Locale.ROOT,
              "the centre of %s is %.0f mm out; the figure is at least %.0f",
              mirror.name(),
              away,
              MIRROR_OUT_MM),
          out);
    }
  }

  private static void handlebar(Facts facts, Findings out) {
    HandlebarProfile profile = facts.handlebar();
    Double value = facts.gripsAboveSeatMm();
    if (value == null || !Double.isFinite(value)) {
      return;
    }
    notice(
        "law.us.handlebar",
        "handlebar",
        value,
        profile.limitMm(),
        profile.limitMm() - value,
        "mm",
        profile.source(),
        String.format(
            Locale.ROOT,
            "grips are %.0f mm above the seat under the rider; the profile \"%s\" allows %.0f",
            value,
            profile.label(),
            profile.limitMm()),
        out);
  }

  private static void notice(
      String id,
      String subject,
      double value,
      double limit,
      double margin,
      String unit,
      String source,
      String text,
      Findings out) {
    out.add(new LawFinding(id, subject, Verdict.CAUTION, value, limit, margin, unit, source, text));
  }
}
