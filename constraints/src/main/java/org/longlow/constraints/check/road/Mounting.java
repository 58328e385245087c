package org.longlow.constraints.check.road;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.stand.OnStand;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/**
 * Somebody who gets on at the side of the stand, the machine still leaning on it: all of their
 * weight over that edge of their pan, as far along and as high as they sit.
 */
final class Mounting {

  private static final Basis STATICS =
      Basis.model("three-point statics, springs without friction in balance");

  private static final Basis EDGE =
      Basis.judgement("all of a person's weight over the edge of their pan, no foot on the road");

  /** Who sits on an edge. */
  private record OnEdge(Occupant who, MassPoint mass) {
    double momentKgMm() {
      return mass.massKg() * Math.abs(mass.yMm());
    }
  }

  private Mounting() {}

  /** Returns how it stands with whoever weighs most about it; empty where nobody gets on. */
  static Optional<Finding> of(
      FindingKind kind,
      Layout layout,
      Wheels wheels,
      List<Standing> standings,
      Standing parked,
      StandPart stand) {
    double side = Math.signum(parked.places().value(stand.y()));
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .flatMap(s -> s.rider().seated().stream().flatMap(p -> onEdge(s, p, side).stream()))
        .max(Comparator.comparingDouble(OnEdge::momentKgMm))
        .flatMap(on -> finding(kind, layout, wheels, parked, stand, on));
  }

  private static Optional<OnEdge> onEdge(Standing standing, Rider.Seated person, double side) {
    return standing.shapes().values().stream()
        .filter(
            s ->
                s.part() instanceof CushionPart c
                    && c.role() == CushionPart.Role.PAN
                    && c.seatOf().filter(person.who().seat()::equals).isPresent())
        .mapToDouble(s -> side < 0 ? -s.rightMm() : s.leftMm())
        .boxed()
        .findFirst()
        .map(
            edge -> {
              MassPoint sits = MassPoint.total(person.masses());
              return new OnEdge(person.who(), new MassPoint(sits.massKg(), sits.at(), edge));
            });
  }

  private static Optional<Finding> finding(
      FindingKind kind, Layout layout, Wheels wheels, Standing parked, StandPart stand, OnEdge on) {
    MassPoint.Sum all = MassPoint.Sum.of(List.of(parked.load().total(), on.mass()));
    return new OnStand(wheels, parked, all, stand)
        .rest()
        .flatMap(OnStand.Held::statics)
        .map(s -> finding(kind, layout, parked, stand, on, s));
  }

  private static Finding finding(
      FindingKind kind,
      Layout layout,
      Standing parked,
      StandPart stand,
      OnEdge on,
      ParkedStability s) {
    double tip = Math.toDegrees(s.leastTipOverFootRad());
    double limit =
        Math.toDegrees(parked.places().value(layout.demands().limit(Demands.Key.CROSS_SLOPE)));
    // nobody need let the foot go: that all of the weight is on the edge is judged, not known
    Verdict verdict = tip < limit ? Verdict.CAUTION : Verdict.PASS;
    double footN =
        (parked.load().total().massKg() + on.mass().massKg())
            * Values.STANDARD_GRAVITY_MS2
            * s.footShare();
    return new Finding(
            kind,
            About.parts(stand.name()).named(stand.name(), "mount"),
            Optional.of(parked.condition()),
            verdict,
            Figures.atLeast(tip, limit, FigureUnit.DEG),
            List.of(STATICS, EDGE, Sources.of(layout, Demands.Key.CROSS_SLOPE)),
            Words.of(
                tip < 0
                    ? Say.format(
                        "With %s on the edge of the seat at its side the machine falls over %s",
                        on.who().person(), stand.name())
                    : Say.format(
                        "With %s on the edge of the seat at its side the machine tips over %s at"
                            + " %s of slope or push, %s are asked; its foot carries %s",
                        on.who().person(),
                        stand.name(),
                        Say.deg(tip),
                        Say.deg(limit),
                        Say.newton(footN)),
                verdict == Verdict.PASS
                    ? "."
                    : "; set its foot farther out, or hold the machine upright before anybody sits"
                        + " down."))
        .at(parked.places().pin(stand.foot()));
  }
}
