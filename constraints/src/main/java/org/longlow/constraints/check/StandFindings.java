package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ParkedStability;
import org.longlow.constraints.machine.Tyre;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/** Whether the parked machine stays on its side stand. */
final class StandFindings {

  /** A foot nearer to the middle plane holds nothing, mm. */
  private static final double LEAST_SIDEWAYS_MM = 1;

  private static final Basis STATICS = Basis.model("three-point statics");

  private StandFindings() {}

  static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (Standing standing : standings) {
      if (standing.kind() == Stance.Kind.PARKED && standing.load() != null) {
        for (PartShape shape : standing.shapes().values()) {
          if (shape.part() instanceof Part.Stand stand) {
            findings.add(tip(layout, wheels, standing, stand));
          }
        }
      }
    }
    return findings;
  }

  private static Finding tip(Layout layout, Wheels wheels, Standing standing, Part.Stand stand) {
    Tyre front = Tyres.of(wheels.front(), standing.places());
    Tyre rear = Tyres.of(wheels.rear(), standing.places());
    double crown = (front.sectionRadiusMm() + rear.sectionRadiusMm()) / 2;
    double lean = standing.places().value(stand.lean());
    PointMm centre = standing.ground().toRoad(standing.load().total().at());
    PointMm foot = standing.ground().toRoad(standing.places().pin(stand.foot()));
    double y = standing.places().value(stand.y());
    double side = Math.signum(y);
    y = Math.abs(y);
    double across = side * standing.load().total().yMm();
    double height = ParkedStability.leanHeightMm(centre.z(), across, crown, lean);
    if (!(height > 0) || y < LEAST_SIDEWAYS_MM) {
      return Finding.note(
              FindingKind.STAND,
              About.parts(stand.name()),
              Verdict.FAIL,
              STATICS,
              height > 0
                  ? stand.name()
                      + " stands under the middle of the machine and holds it on no side; set its foot out to one side."
                  : "The centre of mass lies in the road; nothing can be said about "
                      + stand.name()
                      + ".")
          .in(standing.condition());
    }
    ParkedStability parked =
        ParkedStability.on(
            new ParkedStability.PlanMm(standing.ground().wheelbaseMm(), 0),
            new ParkedStability.PlanMm(0, 0),
            new ParkedStability.PlanMm(foot.x(), y),
            new ParkedStability.PlanMm(
                centre.x(), ParkedStability.leanShiftMm(centre.z(), across, crown, lean)),
            height);
    double tip = Math.toDegrees(parked.leastTipRad());
    double limit = Math.toDegrees(standing.places().value(layout.demands().limit(Demands.Key.TIP)));
    double weight = standing.load().axles().weightN();
    return Finding.held(
            FindingKind.STAND,
            About.parts(stand.name()),
            Optional.of(standing.condition()),
            Figures.atLeast(tip, limit, FigureUnit.DEG),
            List.of(STATICS, Sources.of(layout, Demands.Key.TIP)),
            Say.format(
                "On %s the machine tips at %s of slope or push, %s are asked%s; the foot carries %.0f"
                    + " N.",
                stand.name(),
                Say.deg(tip),
                Say.deg(limit),
                tip < limit ? ", so set its foot farther out or let the machine lean more" : "",
                weight * parked.footShare()))
        .at(standing.places().pin(stand.foot()));
  }
}
