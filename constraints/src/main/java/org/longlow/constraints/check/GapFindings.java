package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.gap.Body;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;

/** Gaps between parts, in the stance in which each pair is closest. */
final class GapFindings {

  /** Pairs farther apart than this are clear and not listed one by one, mm. */
  static final double HORIZON_MM = 40;

  private final Layout layout;
  private final GapRules rules;
  private final Map<String, Body> drawn = new LinkedHashMap<>();
  private final Map<String, Gap> worst = new LinkedHashMap<>();
  private final Map<String, String> stanceOf = new HashMap<>();

  GapFindings(Layout layout, GapRules rules, Map<String, PartShape> shapes) {
    this.layout = layout;
    this.rules = rules;
    shapes.forEach((name, shape) -> drawn.put(name, new Body(name, shape.prisms())));
  }

  /** Returns the bodies of all parts as drawn, with their indexes. */
  List<Body> drawn() {
    return List.copyOf(drawn.values());
  }

  List<Finding> of(List<Standing> standings) {
    keepWorst("", Gaps.among(List.copyOf(drawn.values()), HORIZON_MM, rules::mayNotTouch));
    for (Standing standing : standings) {
      if (standing.kind() == Stance.Kind.OPEN) {
        continue; // swept from shut to open by SectionFindings
      }
      List<Body> moved = bodies(standing.moved().values());
      List<Body> still =
          drawn.values().stream().filter(b -> !standing.moved().containsKey(b.name())).toList();
      keepWorst(standing.name(), Gaps.between(moved, still, HORIZON_MM, rules::mayNotTouch));
      keepWorst(standing.name(), Gaps.among(moved, HORIZON_MM, rules::mayNotTouch));
    }
    List<Finding> findings = new ArrayList<>();
    worst.values().forEach(gap -> findings.add(finding(gap)));
    findings.add(summary(findings));
    return findings;
  }

  static List<Body> bodies(Collection<PartShape> shapes) {
    return shapes.stream().map(s -> new Body(s.part().name(), s.prisms())).toList();
  }

  private void keepWorst(String stance, List<Gap> gaps) {
    for (Gap gap : gaps) {
      String key = GapRules.key(gap.first(), gap.second());
      Gap known = worst.get(key);
      if (known == null || gap.gapMm() < known.gapMm() - 1e-9) {
        worst.put(key, gap);
        stanceOf.put(key, stance);
      }
    }
  }

  private Finding finding(Gap gap) {
    String key = GapRules.key(gap.first(), gap.second());
    String[] names = key.split("\n");
    Demands.Key demand = rules.demand(names[0], names[1]);
    double limit = rules.limitMm(names[0], names[1], demand);
    return Finding.atLeast(
            "gap." + names[0] + "." + names[1],
            names[0] + " and " + names[1],
            stanceOf.get(key),
            gap.gapMm(),
            limit,
            "mm",
            rules.source(names[0], names[1], demand),
            words(names[0], names[1], gap.gapMm(), limit))
        .at(gap.where());
  }

  /** Says how two things stand to each other. */
  static String words(String a, String b, double gapMm, double limitMm) {
    if (gapMm < 0) {
      return a
          + " and "
          + b
          + " run into each other by about "
          + Say.mm(-gapMm)
          + "; move one of them, or list it under touches if they are meant to meet.";
    }
    if (gapMm == 0) {
      return a + " and " + b + " touch; " + Say.mm(limitMm) + " are asked between them.";
    }
    return a + " and " + b + " are " + Say.mm(gapMm) + " apart; " + Say.mm(limitMm) + " are asked.";
  }

  private Finding summary(List<Finding> findings) {
    long failing = findings.stream().filter(f -> f.verdict() == Verdict.FAIL).count();
    int n = layout.parts().size();
    return Finding.note(
        "gap",
        "all parts",
        "",
        failing == 0 ? Verdict.PASS : Verdict.FAIL,
        failing,
        "",
        "distance of bodies in side view and across the machine",
        Say.format(
            "%d pairs of parts looked at in every stance; %d come within %s, %d of them too close.",
            n * (n - 1) / 2, findings.size(), Say.mm(HORIZON_MM), failing));
  }
}
