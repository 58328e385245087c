package org.longlow.constraints.check.ride;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ride.GripLimits;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.machine.ride.WheelPath;
import org.longlow.constraints.stand.Braking;
import org.longlow.constraints.stand.Lowest;
import org.longlow.constraints.stand.Springs;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.SteeringOnRoad;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** How far the springs dive under hard braking, and what trail and clearance are left there. */
public final class DiveFindings {

  /** The machine dived. */
  public static final FindingKind DIVE = new FindingKind("dive", FindingGroup.SAG, Rests.ON_MASSES);

  private static final Basis BALANCE =
      Basis.model(
          "springs in balance while the front wheel slows the machine down steadily, as far as its"
              + " tyre holds, and the rear wheel beyond; the brake held by what holds the axle or by"
              + " a rod; no damping, no aerodynamics");

  /** No road lets a machine slow down faster, in that of gravity. */
  private static final double HARDEST_G = 1.5;

  /** It is found where the front comes to a stop to so much, in that of gravity. */
  private static final double FOUND_G = 5e-6;

  private final Layout layout;
  private final Wheels wheels;
  private final Stances stances;

  private DiveFindings(Layout layout, Wheels wheels, Stances stances) {
    this.layout = layout;
    this.wheels = wheels;
    this.stances = stances;
  }

  /**
   * Returns one, of the crew with which least is left; empty where nothing can be said, since
   * springs have no rate.
   *
   * @param stances of the same machine
   */
  public static Optional<Finding> of(
      Layout layout, Wheels wheels, Stances stances, List<Standing> standings) {
    DiveFindings all = new DiveFindings(layout, wheels, stances);
    Suspension front = wheels.frontSuspension();
    if (!front.known() || !wheels.rearSuspension().known() || !travels(front)) {
      return Optional.empty();
    }
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN && s.springs().isPresent())
        .filter(s -> s.load().axles().brakeLiftG() > 0 && s.load().axles().frontN() > 0)
        .filter(s -> s.load().axles().total().at().z() > 0)
        .map(all::dived)
        .min(Comparator.comparing(Dived::verdict).thenComparingDouble(Dived::reachesG))
        .map(all::finding);
  }

  private static boolean travels(Suspension s) {
    return s.droopMm() + s.bumpMm() > 0;
  }

  /**
   * The machine with one crew, dived.
   *
   * @param braking by how much it slows down
   * @param settled whether the springs come to rest there
   * @param reachesG braking at which the front reaches a stop, both tyres slide or the rear wheel
   *     lifts
   * @param leastMm asked under it
   * @param leftMm of the front wheel's travel, up to its stop
   * @param trailMm trail on the ground; NaN without a front system
   */
  private record Dived(
      Standing upright,
      Braking braking,
      boolean settled,
      double reachesG,
      Suspension.State front,
      Optional<Lowest> lowest,
      double leastMm,
      double leftMm,
      double trailMm) {

    boolean grounds() {
      return lowest.isPresent() && lowest.get().heightMm() < leastMm;
    }

    Verdict verdict() {
      boolean straightens = !(trailMm <= 0);
      boolean rides = front == Suspension.State.RIDING && settled;
      return grounds() || !straightens ? Verdict.FAIL : rides ? Verdict.PASS : Verdict.CAUTION;
    }
  }

  private Dived dived(Standing s) {
    double asked = s.places().value(layout.demands().limit(Demands.Key.BRAKING));
    double grip = s.places().value(layout.demands().limit(Demands.Key.GRIP));
    Braking braking = Braking.of(layout, s);
    StaticSag dived = s.springs().orElseThrow().braking(wheels, braking.g(), grip);
    Travel travel = new Travel(dived.front().travelMm(), dived.rear().travelMm());
    Standing there = stances.moved(s.condition(), s.rider(), travel);
    WheelPath path = wheels.frontSuspension().path();
    double top = path.axle(wheels.frontSuspension().bumpMm()).z();
    return new Dived(
        s,
        braking,
        dived.settled(),
        reachesG(
            s.springs().orElseThrow(),
            dived.front().state() == Suspension.State.RIDING ? braking.g() : 0,
            Math.min(braking.mostG(), Math.max(asked, HARDEST_G)),
            grip),
        dived.front().state(),
        Lowest.of(there),
        s.places().value(layout.demands().limit(Demands.Key.BUMP_CLEARANCE)),
        Math.max(0, top - path.axle(travel.frontMm()).z()),
        trailMm(there));
  }

  /**
   * Returns the braking up to {@code most} at which the front wheel comes to a stop.
   *
   * @param rides at which it does not yet
   */
  private double reachesG(Springs springs, double rides, double most, double grip) {
    double from = rides;
    double to = most;
    if (rides(springs, most, grip)) {
      return most;
    }
    while (to - from > FOUND_G) {
      double middle = (from + to) / 2;
      if (rides(springs, middle, grip)) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return from;
  }

  private boolean rides(Springs springs, double brakingG, double grip) {
    return springs.braking(wheels, brakingG, grip).front().state() == Suspension.State.RIDING;
  }

  private Finding finding(Dived d) {
    Suspension front = wheels.frontSuspension();
    double all = front.path().axle(front.bumpMm()).z() - front.path().axle(-front.droopMm()).z();
    String people = d.upright.condition().people();
    Words text =
        Words.of(
            Say.format(
                "With %s braking at %s%s leaves the front %s of its %s of travel, %s of trail",
                people,
                Say.gravity(d.braking.g()),
                d.braking.where(),
                Say.mm(d.leftMm),
                Say.mm(all),
                Say.mm(d.trailMm)),
            d.lowest
                .map(l -> Words.of(" and ", Say.mm(l.heightMm()), " under " + l.part()))
                .orElse(Words.NONE),
            advice(d),
            ".");
    Figures figures =
        d.trailMm <= 0
            ? Figures.atLeast(d.trailMm, 0, FigureUnit.MM)
            : d.grounds()
                ? Figures.atLeast(d.lowest.get().heightMm(), d.leastMm, FigureUnit.MM)
                : Figures.atLeast(d.reachesG, d.braking.g(), FigureUnit.G);
    return new Finding(
            DIVE,
            About.thing("front suspension", "front"),
            Optional.of(d.upright.condition()),
            d.verdict(),
            figures,
            List.of(
                BALANCE,
                Sources.of(layout, Demands.Key.BRAKING),
                grip(d),
                Sources.of(layout, Demands.Key.BUMP_CLEARANCE)),
            text)
        .at(wheels.drawn().pin(wheels.front().axle()));
  }

  /** What the road holds decides nothing where the front tyre alone holds the braking. */
  private Basis grip(Dived d) {
    Basis source = Sources.of(layout, Demands.Key.GRIP);
    double grip = d.upright.places().value(layout.demands().limit(Demands.Key.GRIP));
    return GripLimits.ifAny(d.upright.load().axles(), grip)
        .filter(limits -> limits.frontG() > d.braking.g())
        .map(limits -> source.aside())
        .orElse(source);
  }

  /** Whether the brake swings with a link. */
  private boolean swings() {
    return wheels.fork() != null && wheels.fork().type().oneLink() && !wheels.fork().brakeRod();
  }

  /** Whether the brake brings the wheel to its lower stop, which it is off without. */
  private boolean pushed(Dived d) {
    Springs springs = d.upright.springs().orElseThrow();
    double grip = d.upright.places().value(layout.demands().limit(Demands.Key.GRIP));
    return swings()
        && springs.braking(wheels, 0, grip).front().state() != Suspension.State.TOPPED_OUT;
  }

  private Words advice(Dived d) {
    if (d.trailMm <= 0) {
      return Words.of(
          "; without trail the wheel does not straighten itself: stiffer springs in front, or more"
              + " rake");
    }
    if (d.grounds()) {
      return Words.of(
          "; ",
          Words.atLeast(d.leastMm),
          " are asked there: stiffer springs in front, or raise it");
    }
    if (!d.settled) {
      return Words.of("; it is not certain where the springs come to rest there: try others");
    }
    return switch (d.front) {
      case BOTTOMED ->
          Say.format(
              "; it is on its stop from %s, where it cannot take a bump: stiffer springs in"
                  + " front%s%s",
              Say.gravity(d.reachesG),
              now(),
              swings() ? ", or a rod beside the link that holds the brake (brakeRod)" : "");
      case TOPPED_OUT ->
          Words.of(
              (pushed(d)
                      ? "; its brake pushes the wheel down onto"
                      : "; its springs hold the wheel on")
                  + " its lower stop, where it cannot follow a hollow: "
                  + (pushed(d)
                      ? "hold the brake by a rod beside the link (brakeRod)"
                      : "less preload in front, or a softer spring"));
      default -> Words.NONE;
    };
  }

  /** What they are now, so that nobody puts softer ones in. */
  private Words now() {
    Suspension front = wheels.frontSuspension();
    return front.forcesN().isEmpty()
        ? Words.of(
            " than ",
            Words.figure(front.rateNPerMm(), FigureSort.RATE),
            " with ",
            Say.newton(front.preloadN()),
            " of preload at the wheel")
        : Words.NONE;
  }

  private double trailMm(Standing there) {
    return SteeringOnRoad.of(wheels, there.places(), there.ground())
        .map(on -> on.steering().groundTrailMm())
        .orElse(Double.NaN);
  }
}
