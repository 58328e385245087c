package org.longlow.constraints.check.road;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
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
import org.longlow.constraints.stand.OnFeet;
import org.longlow.constraints.stand.OnStand;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/**
 * Somebody who gets on while the machine is on its stand: all of their weight over that edge of
 * their pan, as far along and as high as they sit. On a side stand at its side, else at either.
 */
final class Mounting {

  private static final Basis STATICS =
      Basis.model("three-point statics, springs without friction in balance");

  private static final Basis ON_FEET =
      Basis.model("statics on one wheel and two feet, the springs as with nobody aboard");

  private static final Basis EDGE =
      Basis.judgement("all of a person's weight over the edge of their pan, no foot on the road");

  private final FindingKind kind;
  private final Layout layout;
  private final Wheels wheels;
  private final Standing parked;
  private final StandPart stand;

  /**
   * Who sits on an edge, and what that does.
   *
   * @param side 1 left, -1 right
   */
  private record OnEdge(
      Occupant who, MassPoint mass, double side, double tipRad, double footShare) {}

  private Mounting(
      FindingKind kind, Layout layout, Wheels wheels, Standing parked, StandPart stand) {
    this.kind = kind;
    this.layout = layout;
    this.wheels = wheels;
    this.parked = parked;
    this.stand = stand;
  }

  /** Returns how it stands with whoever tips it most; empty where nobody gets on. */
  static Optional<Finding> of(
      FindingKind kind,
      Layout layout,
      Wheels wheels,
      List<Standing> standings,
      Standing parked,
      StandPart stand) {
    Mounting mounting = new Mounting(kind, layout, wheels, parked, stand);
    DoubleStream sides =
        stand.type() == StandPart.Kind.SIDE
            ? DoubleStream.of(Math.signum(parked.places().value(stand.y())))
            : DoubleStream.of(1, -1);
    return sides
        .boxed()
        .flatMap(
            side ->
                standings.stream()
                    .filter(s -> s.kind() == Stance.Kind.LADEN)
                    .flatMap(
                        s ->
                            s.rider().seated().stream()
                                .flatMap(p -> mounting.onEdge(s, p, side).stream())))
        .min(Comparator.comparingDouble(OnEdge::tipRad))
        .map(mounting::finding);
  }

  private Optional<OnEdge> onEdge(Standing standing, Rider.Seated person, double side) {
    return standing.shapes().values().stream()
        .filter(
            s ->
                s.part() instanceof CushionPart c
                    && c.role() == CushionPart.Role.PAN
                    && c.seatOf().filter(person.who().seat()::equals).isPresent())
        .map(s -> side < 0 ? -s.rightMm() : s.leftMm())
        .findFirst()
        .flatMap(
            edge -> {
              MassPoint sits = MassPoint.total(person.masses());
              MassPoint mass = new MassPoint(sits.massKg(), sits.at(), edge);
              return stand.type() == StandPart.Kind.CENTRE
                  ? onFeet(person.who(), mass, side)
                  : onFoot(person.who(), mass, side);
            });
  }

  private Optional<OnEdge> onFoot(Occupant who, MassPoint mass, double side) {
    MassPoint.Sum all = MassPoint.Sum.of(List.of(parked.load().total(), mass));
    return new OnStand(wheels, parked, all, stand, side)
        .rest()
        .flatMap(OnStand.Held::statics)
        .map(s -> new OnEdge(who, mass, side, s.leastTipOverFootRad(), s.footShare()));
  }

  private Optional<OnEdge> onFeet(Occupant who, MassPoint mass, double side) {
    return OnFeet.of(wheels, parked, stand)
        .flatMap(on -> on.with(mass))
        .map(
            s ->
                side > 0
                    ? new OnEdge(who, mass, side, s.tipOverFrontEdgeRad(), s.footShare())
                    : new OnEdge(who, mass, side, s.tipOverWheelsRad(), s.rearShare()));
  }

  private Finding finding(OnEdge on) {
    double tip = Math.toDegrees(on.tipRad());
    double limit =
        Math.toDegrees(parked.places().value(layout.demands().limit(Demands.Key.CROSS_SLOPE)));
    // nobody need let the foot go: that all of the weight is on the edge is judged, not known
    Verdict verdict = tip < limit ? Verdict.CAUTION : Verdict.PASS;
    double footN =
        (parked.load().total().massKg() + on.mass().massKg())
            * Values.STANDARD_GRAVITY_MS2
            * on.footShare();
    boolean one = stand.type() == StandPart.Kind.SIDE;
    String edge =
        one
            ? "on the edge of the seat at its side"
            : "on the " + (on.side() > 0 ? "left" : "right") + " edge of the seat";
    String cure =
        switch (stand.type()) {
          case SIDE ->
              "; set its foot farther out, or hold the machine upright before anybody sits down.";
          case PAIR ->
              "; set its feet farther out, or keep a foot of one's own on the road while sitting"
                  + " down.";
          case CENTRE -> "; set its feet farther apart, or get on with the machine off this stand.";
        };
    return new Finding(
            kind,
            About.parts(stand.name()).named(stand.name(), "mount"),
            Optional.of(parked.condition()),
            verdict,
            Figures.atLeast(tip, limit, FigureUnit.DEG),
            List.of(
                stand.type() == StandPart.Kind.CENTRE ? ON_FEET : STATICS,
                EDGE,
                Sources.of(layout, Demands.Key.CROSS_SLOPE)),
            Words.of(
                tip < 0
                    ? Say.format(
                        "With %s %s the machine falls over %s",
                        on.who().person(), edge, stand.name())
                    : Say.format(
                        "With %s %s the machine tips over %s at %s of slope or push, %s are asked;"
                            + " its foot carries %s",
                        on.who().person(),
                        edge,
                        stand.name(),
                        Say.deg(tip),
                        Say.deg(limit),
                        Say.newton(footN)),
                verdict == Verdict.PASS ? "." : cure))
        .at(parked.places().pin(stand.foot()));
  }
}
