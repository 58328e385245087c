package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.Steering;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/** Rake and trail as they come out, unladen and laden: figures to know, not to pass or fail. */
final class SteeringFindings {

  private SteeringFindings() {}

  static List<Finding> of(Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (wheels.fork() == null) {
      return findings;
    }
    for (Standing s : standings) {
      if (s.kind() != Stance.Kind.UNLADEN && s.kind() != Stance.Kind.LADEN) {
        continue;
      }
      PointMm top = s.ground().toRoad(s.places().pin(wheels.fork().top()));
      PointMm bottom = s.ground().toRoad(s.places().pin(wheels.fork().bottom()));
      PointMm axle = s.ground().toRoad(s.places().pin(wheels.fork().axle()));
      double rake = Math.atan2(bottom.x() - top.x(), top.z() - bottom.z());
      Steering steering = Steering.of(wheels.frontTyre().freeRadiusMm(), rake, axle, bottom);
      findings.add(
          Finding.note(
                  "trail." + (s.people().isEmpty() ? "unladen" : s.people()),
                  "steering",
                  s.name(),
                  steering.groundTrailMm() > 0 ? Verdict.PASS : Verdict.FAIL,
                  steering.groundTrailMm(),
                  "mm",
                  "plane geometry of steering axis and tyre",
                  Say.format(
                      "Rake %s, ground trail %s, normal trail %s, wheel flop %s%s.",
                      Say.deg(Math.toDegrees(rake)),
                      Say.mm(steering.groundTrailMm()),
                      Say.mm(steering.normalTrailMm()),
                      Say.mm(steering.flopMm()),
                      steering.groundTrailMm() > 0
                          ? ""
                          : "; without trail the wheel does not straighten itself: lean the steering"
                              + " axis back more, or set the axle less far ahead of it"))
              .at(s.ground().frontContact()));
    }
    return findings;
  }
}
