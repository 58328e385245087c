package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.gap.Body;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;

/** Gaps between a seated person and the parts they do not rest on. */
final class PersonGaps {

  private PersonGaps() {}

  static List<Finding> of(
      GapRules rules, GapFindings parts, Sitting sitting, Condition stance, Body person) {
    List<Finding> findings = new ArrayList<>();
    List<Body> others = new ArrayList<>(parts.drawn());
    others.removeIf(b -> !rules.clearOfPeople(b.name()));
    for (Gap gap :
        Gaps.between(
            List.of(person), others, GapFindings.HORIZON_MM, (a, b) -> GapFindings.HORIZON_MM)) {
      String part = gap.second();
      Demands.Key demand = rules.demandOfPeople(part);
      double limit = rules.limitMm(part, GapRules.RIDER, demand);
      findings.add(
          Finding.held(
                  FindingKind.GAP,
                  About.beside(part, sitting.occupant()),
                  Optional.of(stance),
                  Figures.atLeast(gap.gapMm(), limit, FigureUnit.MM),
                  List.of(rules.source(part, GapRules.RIDER, demand)),
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
