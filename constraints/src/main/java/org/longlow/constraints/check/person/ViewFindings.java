package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;

/**
 * What a rider sees besides the nearest road: over a crest with whoever sits behind too, the rest
 * with themselves alone aboard.
 */
public final class ViewFindings {

  private ViewFindings() {}

  public static List<Finding> of(Layout layout, Sitting sitting, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (sitting.posture().isEmpty() || !sitting.occupant().rides()) {
      return findings;
    }
    Posture posture = sitting.posture().get();
    standings.stream()
        .filter(s -> s.condition().ladenBy(sitting.occupant()))
        .findFirst()
        .ifPresent(
            s -> {
              PointMm eye = s.ground().toRoad(posture.eye());
              List<LookingAhead> ahead = LookingAhead.of(eye, s);
              findings.addAll(EyeFindings.of(layout, sitting, posture, s, ahead));
              OwnBodyFindings.of(layout, sitting, posture, s).ifPresent(findings::add);
              findings.addAll(InstrumentFindings.of(sitting, posture, s));
              findings.addAll(HeadUpFindings.of(layout, sitting, posture, s, ahead));
              findings.addAll(BehindFindings.of(sitting, posture, s));
              findings.addAll(MirrorFindings.of(sitting, posture, s, standings));
            });
    WorstAboard.of(
            sitting.occupant(),
            standings.stream().filter(s -> s.ground().toRoad(posture.eye()).z() > 0).toList(),
            s -> {
              PointMm eye = s.ground().toRoad(posture.eye());
              return EyeFindings.crest(layout, sitting, s, eye, LookingAhead.of(eye, s));
            })
        .ifPresent(findings::add);
    return findings;
  }
}
