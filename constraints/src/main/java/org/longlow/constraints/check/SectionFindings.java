package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.gap.Body;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.machine.RigidMotion;
import org.longlow.constraints.machine.SectionMotion;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Sections;

/** What a section meets on its way from shut to open: parts that stay, and people seated. */
final class SectionFindings {

  /** Positions looked at between shut and open. */
  static final int STEPS = 24;

  private final Layout layout;
  private final GapRules rules;
  private final GapFindings parts;
  private final Places places;
  private final List<Body> people;

  SectionFindings(
      Layout layout, GapRules rules, GapFindings parts, Places places, List<Body> people) {
    this.layout = layout;
    this.rules = rules;
    this.parts = parts;
    this.places = places;
    this.people = people;
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    layout.sections().forEach((name, section) -> sweep(name, section, findings));
    return findings;
  }

  private void sweep(String name, Section section, List<Finding> findings) {
    SectionMotion motion;
    try {
      motion = Sections.motion(section, places);
    } catch (IllegalArgumentException e) {
      findings.add(
          Finding.note(
              "open." + name,
              name,
              "open, " + name,
              Verdict.FAIL,
              Double.NaN,
              "",
              "plane linkage geometry",
              "Section " + name + " cannot open: " + e.getMessage() + "."));
      return;
    }
    Set<String> own = Set.copyOf(section.parts());
    List<Body> moving = new ArrayList<>();
    List<Body> others = new ArrayList<>();
    parts.drawn().forEach(b -> (own.contains(b.name()) ? moving : others).add(b));
    Map<String, Gap> worst = new LinkedHashMap<>();
    Map<String, Double> when = new HashMap<>();
    for (int step = 1; step <= STEPS; step++) {
      double opening = (double) step / STEPS;
      RigidMotion to = motion.at(opening);
      List<Body> now = moving.stream().map(b -> b.moved(to)).toList();
      List<Gap> gaps =
          new ArrayList<>(
              Gaps.between(
                  now,
                  others,
                  GapFindings.HORIZON_MM,
                  (a, b) ->
                      rules.mayNotTouch(a.name(), b.name()) ? cut(worst, a, b) : Gaps.Cut.NEVER));
      gaps.addAll(
          Gaps.between(
              now,
              people,
              GapFindings.HORIZON_MM,
              (a, b) -> rules.clearOfPeople(a.name()) ? cut(worst, a, b) : Gaps.Cut.NEVER));
      for (Gap gap : gaps) {
        String key = key(gap.first(), gap.second());
        worst.put(key, gap);
        when.put(key, opening);
      }
    }
    int failing = 0;
    for (Map.Entry<String, Gap> e : worst.entrySet()) {
      Finding f = finding(name, e.getValue(), when.get(e.getKey()));
      if (f.verdict() == Verdict.FAIL) {
        failing++;
        findings.add(f);
      }
    }
    if (failing == 0) {
      findings.add(
          new Finding(
              "open." + name,
              name,
              "open, " + name,
              Verdict.PASS,
              0,
              Double.NaN,
              Double.NaN,
              "",
              "gaps at " + STEPS + " positions on the way",
              "Section " + name + " opens clear of everything.",
              Optional.empty()));
    }
  }

  private static String key(String part, String other) {
    return part + "\n" + other;
  }

  /** Only gaps smaller than the smallest known so far matter. */
  private static double cut(Map<String, Gap> worst, Body a, Body b) {
    Gap known = worst.get(key(a.name(), b.name()));
    return known == null ? GapFindings.HORIZON_MM : known.gapMm();
  }

  private Finding finding(String section, Gap gap, double opening) {
    boolean person = !layout.parts().containsKey(gap.second());
    Demands.Key demand =
        person ? rules.demandOfPeople(gap.first()) : rules.demand(gap.first(), gap.second());
    String other = person ? GapRules.RIDER : gap.second();
    double limit = rules.limitMm(gap.first(), other, demand);
    return Finding.atLeast(
            "open." + section + "." + gap.first() + "." + gap.second(),
            gap.first() + " and " + gap.second(),
            "open, " + section,
            gap.gapMm(),
            limit,
            "mm",
            rules.source(gap.first(), other, demand),
            Say.format("At %.0f %% open: ", opening * 100)
                + GapFindings.words(gap.first(), gap.second(), gap.gapMm(), limit))
        .at(gap.where());
  }
}
