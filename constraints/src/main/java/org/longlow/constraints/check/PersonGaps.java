package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.gap.Body;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.seat.Sitting;

/** Gaps between a seated person and the parts they do not rest on. */
final class PersonGaps {

  private PersonGaps() {}

  static List<Finding> of(GapRules rules, GapFindings parts, Sitting sitting, Body person) {
    List<Finding> findings = new ArrayList<>();
    String name = SeatFindings.name(sitting);
    List<Body> others = new ArrayList<>(parts.drawn());
    others.removeIf(b -> !rules.clearOfPeople(b.name()));
    for (Gap gap :
        Gaps.between(
            List.of(person), others, GapFindings.HORIZON_MM, (a, b) -> GapFindings.HORIZON_MM)) {
      String part = gap.second();
      Demands.Key demand = rules.demandOfPeople(part);
      double limit = rules.limitMm(part, GapRules.RIDER, demand);
      findings.add(
          Finding.atLeast(
                  "gap." + part + "." + name,
                  part + " and " + SeatFindings.who(sitting),
                  "laden, " + sitting.person(),
                  gap.gapMm(),
                  limit,
                  "mm",
                  rules.source(part, GapRules.RIDER, demand),
                  GapFindings.words(
                      part,
                      SeatFindings.who(sitting),
                      gap.gapMm(),
                      limit,
                      () -> Advice.move(part, parts.clearingOf(part, person, limit))))
              .at(gap.where()));
    }
    return findings;
  }
}
