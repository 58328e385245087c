package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.gap.Body;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.seat.Sitting;

/** Gaps between each seated person and the parts they do not rest on. */
final class PersonGaps {

  private PersonGaps() {}

  static List<Finding> of(GapRules rules, GapFindings parts, List<Sitting> sittings) {
    List<Finding> findings = new ArrayList<>();
    for (Sitting sitting : sittings) {
      Optional<Body> person = sitting.solid();
      if (person.isEmpty()) {
        continue;
      }
      String name = SeatFindings.name(sitting);
      List<Body> others =
          parts.drawn().stream().filter(b -> rules.clearOfPeople(b.name())).toList();
      for (Gap gap :
          Gaps.between(
              List.of(person.get()),
              others,
              GapFindings.HORIZON_MM,
              (a, b) -> GapFindings.HORIZON_MM)) {
        String part = gap.second();
        Demands.Key demand = rules.demandOfPeople(part);
        double limit = rules.limitMm(part, GapRules.RIDER, demand);
        findings.add(
            Finding.atLeast(
                    "gap." + part + "." + name,
                    part + " and " + sitting.person(),
                    "laden, " + sitting.person(),
                    gap.gapMm(),
                    limit,
                    "mm",
                    rules.source(part, GapRules.RIDER, demand),
                    GapFindings.words(part, sitting.person(), gap.gapMm(), limit))
                .at(gap.where()));
      }
    }
    return findings;
  }
}
