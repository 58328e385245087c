package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.LeanClearance;
import org.longlow.constraints.machine.ParkedStability;
import org.longlow.constraints.machine.Tyre;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/** Whether the parked machine stays on its side stand. */
final class StandFindings {

  /** A foot nearer to the middle plane holds nothing, mm. */
  private static final double LEAST_SIDEWAYS_MM = 1;

  private static final Basis STATICS = Basis.model("three-point statics");

  /** A foot this near the road at the lean written stands on it, mm; a judgement. */
  static final double FOOT_OFF_MM = 5;

  /** Lengths of a leg that differ by less are the same, mm; a judgement. */
  static final double LEG_OFF_MM = 5;

  private static final Basis LEG =
      Basis.model("a leg keeps its length as it swings; it may lean out by y when parked");

  private StandFindings() {}

  static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (Standing standing : standings) {
      if (standing.kind() == Stance.Kind.PARKED && standing.load() != null) {
        for (Part.Stand stand : layout.parts(Part.Stand.class).toList()) {
          findings.add(tip(layout, wheels, standing, stand));
          leg(standing, stand).ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  private static Finding tip(Layout layout, Wheels wheels, Standing standing, Part.Stand stand) {
    Tyre front = Tyres.of(wheels.front(), standing.places());
    Tyre rear = Tyres.of(wheels.rear(), standing.places());
    double crown = (front.sectionRadiusMm() + rear.sectionRadiusMm()) / 2;
    double typed = standing.places().value(stand.lean());
    PointMm centre = standing.ground().toRoad(standing.load().total().at());
    PointMm foot = standing.ground().toRoad(standing.places().pin(stand.foot()));
    double y = standing.places().value(stand.y());
    double side = Math.signum(y);
    y = Math.abs(y);
    LeanClearance road = road(wheels, standing);
    LeanClearance.TouchDown touch = road.touchDown(foot.x(), y, foot.z());
    double lean = touch.touches() ? touch.rollRad() : typed;
    double off = road.clearanceMm(foot.x(), y, foot.z(), typed);
    double across = side * standing.load().total().yMm();
    double height = ParkedStability.leanHeightMm(centre.z(), across, crown, lean);
    if (height > 0 && y >= LEAST_SIDEWAYS_MM && (!touch.touches() || foot.z() < -FOOT_OFF_MM)) {
      return Finding.note(
              FindingKind.STAND,
              About.parts(stand.name()),
              Verdict.FAIL,
              STATICS,
              Say.format(
                  "The foot of %s is drawn %s %s the road with the machine upright, %s: draw it"
                      + " where it is on the road when the machine leans as far as is meant.",
                  stand.name(),
                  Say.mm(Math.abs(foot.z())),
                  foot.z() < 0 ? "under" : "over",
                  foot.z() < 0
                      ? "so the machine would lean away from it"
                      : "so it never reaches the road"))
          .in(standing.condition());
    }
    if (!(height > 0) || y < LEAST_SIDEWAYS_MM) {
      return Finding.note(
              FindingKind.STAND,
              About.parts(stand.name()),
              Verdict.FAIL,
              STATICS,
              height > 0
                  ? stand.name()
                      + " stands under the middle of the machine and holds it on no side; set its"
                      + " foot out to one side."
                  : "The centre of mass lies in the road; nothing can be said about "
                      + stand.name()
                      + ".")
          .in(standing.condition());
    }
    ParkedStability parked =
        ParkedStability.on(
            new ParkedStability.PlanMm(standing.ground().wheelbaseMm(), 0),
            new ParkedStability.PlanMm(0, 0),
            new ParkedStability.PlanMm(
                foot.x(), ParkedStability.leanShiftMm(foot.z(), y, crown, lean)),
            new ParkedStability.PlanMm(
                centre.x(), ParkedStability.leanShiftMm(centre.z(), across, crown, lean)),
            height);
    double tip = Math.toDegrees(parked.leastTipRad());
    double limit = Math.toDegrees(standing.places().value(layout.demands().limit(Demands.Key.TIP)));
    double weight = standing.load().axles().weightN();
    boolean agrees = Math.abs(off) <= FOOT_OFF_MM;
    String drawn =
        agrees
            ? ""
            : Say.format(
                " Its foot is %s %s the road at the lean of %s that is written; as drawn it stands"
                    + " at %s, and that is what counts here.",
                Say.mm(Math.abs(off)),
                off < 0 ? "under" : "over",
                Say.deg(Math.toDegrees(typed)),
                Say.deg(Math.toDegrees(lean)));
    Finding f =
        Finding.held(
                FindingKind.STAND,
                About.parts(stand.name()),
                Optional.of(standing.condition()),
                Figures.atLeast(tip, limit, FigureUnit.DEG),
                List.of(STATICS, Sources.of(layout, Demands.Key.TIP)),
                Say.format(
                        "On %s the machine tips at %s of slope or push, %s are asked%s; the foot"
                            + " carries %.0f N.",
                        stand.name(),
                        Say.deg(tip),
                        Say.deg(limit),
                        tip < limit
                            ? ", so set its foot farther out or let the machine lean more"
                            : "",
                        weight * parked.footShare())
                    + drawn)
            .at(standing.places().pin(stand.foot()));
    return agrees || f.verdict() == Verdict.FAIL ? f : f.withVerdict(Verdict.CAUTION);
  }

  private static LeanClearance road(Wheels wheels, Standing standing) {
    Tyre front = wheels.frontTyre();
    Tyre rear = wheels.rearTyre();
    return new LeanClearance(
        standing.ground().wheelbaseMm(),
        new LeanClearance.Wheel(front.freeRadiusMm(), front.sectionRadiusMm()),
        new LeanClearance.Wheel(rear.freeRadiusMm(), rear.sectionRadiusMm()));
  }

  /** A leg that swings up is as long as it was: seen from the side at most what it is in space. */
  private static Optional<Finding> leg(Standing standing, Part.Stand stand) {
    PointMm pivot = standing.places().pin(stand.pivot());
    double parked = pivot.distance(standing.places().pin(stand.foot()));
    double stowed = pivot.distance(standing.places().pin(stand.stowed()));
    double most = Math.hypot(parked, standing.places().value(stand.y()));
    double off = Math.max(parked - stowed, stowed - most);
    if (off <= LEG_OFF_MM) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
                FindingKind.STAND,
                About.parts(stand.name()).named(stand.name(), "leg"),
                Optional.of(standing.condition()),
                Verdict.CAUTION,
                Figures.atMost(off, LEG_OFF_MM, FigureUnit.MM),
                List.of(LEG),
                Say.format(
                    "The leg of %s is %s long parked and %s stowed, seen from the side; a leg keeps"
                        + " its length: draw the stowed foot %s %s its pivot.",
                    stand.name(),
                    Say.mm(parked),
                    Say.mm(stowed),
                    Say.mm(off),
                    stowed < parked ? "farther from" : "nearer to"))
            .at(standing.places().pin(stand.stowed())));
  }
}
