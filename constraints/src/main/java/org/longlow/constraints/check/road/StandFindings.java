package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/** Whether the parked machine stays on its side stand. */
public final class StandFindings {

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

  public static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (Part.Stand stand : layout.parts(Part.Stand.class).toList()) {
      Verdict shut = Verdict.PASS;
      for (Standing standing : in(standings, Stance.Kind.PARKED)) {
        Finding tip = tip(layout, wheels, standing, stand);
        shut = tip.verdict();
        findings.add(tip);
        leg(standing, stand).ifPresent(findings::add);
      }
      for (Standing standing : in(standings, Stance.Kind.OPEN)) {
        Finding tip = tip(layout, wheels, standing, stand);
        if (tip.verdict().compareTo(shut) < 0) {
          findings.add(tip); // it is opened on its stand, and stands worse then
        }
      }
    }
    return findings;
  }

  private static List<Standing> in(List<Standing> standings, Stance.Kind kind) {
    return standings.stream().filter(s -> s.kind() == kind && s.load() != null).toList();
  }

  private static Finding tip(Layout layout, Wheels wheels, Standing standing, Part.Stand stand) {
    double typed = standing.places().value(stand.lean());
    OnStand on =
        OnStand.of(wheels, standing.places(), standing.ground(), stand, standing.load().total());
    PointMm foot = on.foot();
    double y = on.yMm();
    double lean = on.leanRad();
    double off = on.offMm(typed);
    double height = on.heightMm();
    if (height > 0 && y >= LEAST_SIDEWAYS_MM && (!on.touches() || foot.z() < -FOOT_OFF_MM)) {
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
    ParkedStability parked = on.stability();
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
    if (f.verdict() == Verdict.PASS) {
      OptionalDouble letOut = tipLetOut(wheels, standing, stand);
      if (letOut.isPresent() && Math.toDegrees(letOut.getAsDouble()) < limit) {
        f =
            f.withVerdict(Verdict.CAUTION)
                .withText(
                    f.text()
                        + Say.format(
                            " The foot takes load off the springs, and the frame rises and leans"
                                + " farther: with them all let out it tips at %s. Try it before you"
                                + " trust it.",
                            Say.deg(Math.toDegrees(letOut.getAsDouble()))));
      }
    }
    return agrees || f.verdict() == Verdict.FAIL ? f : f.withVerdict(Verdict.CAUTION);
  }

  /**
   * Returns the tip angle with both wheels at full droop, rad; empty where it is not to be had. The
   * foot takes some load off the springs, so that the machine rests between its unladen sag and
   * this. The centre of mass stays as high in the frame, which is a little too high.
   */
  private static OptionalDouble tipLetOut(Wheels wheels, Standing standing, Part.Stand stand) {
    double front = -wheels.frontSuspension().droopMm();
    double rear = -wheels.rearSuspension().droopMm();
    if (standing.springs().isEmpty()
        || front == standing.frontTravelMm() && rear == standing.rearTravelMm()) {
      return OptionalDouble.empty();
    }
    Places places = wheels.moved(front, rear);
    OnStand on = OnStand.of(wheels, places, wheels.ground(places), stand, standing.load().total());
    return OptionalDouble.of(on.touches() && on.heightMm() > 0 ? on.stability().leastTipRad() : 0);
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
