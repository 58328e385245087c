package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;

/** Findings on sections of which it is said how they are opened and held. */
public final class OpenerFindings {

  private OpenerFindings() {}

  public static List<Finding> of(
      Layout layout, Places places, Map<String, PartShape> shapes, List<Standing> standings) {
    Optional<Ground> ground =
        standings.stream()
            .filter(s -> s.kind() == Stance.Kind.UNLADEN)
            .map(Standing::ground)
            .findFirst();
    HoldFindings holds = new HoldFindings(layout, places);
    CatchFindings catches = new CatchFindings(layout, places);
    List<Finding> findings = new ArrayList<>();
    for (String name : layout.sections().keySet()) {
      Opener.of(name, layout, places, shapes, ground)
          .ifPresent(
              o -> {
                findings.addAll(holds.of(o));
                findings.addAll(StrutFindings.of(o, o.held(places)));
                findings.addAll(catches.of(o));
              });
    }
    return findings;
  }
}
