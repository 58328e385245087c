package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.AirFindings;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.gap.GapRules;
import org.longlow.constraints.check.gap.HeatFindings;
import org.longlow.constraints.check.gap.HubFindings;
import org.longlow.constraints.check.gap.JointFindings;
import org.longlow.constraints.check.gap.LockFindings;
import org.longlow.constraints.check.gap.Nudged;
import org.longlow.constraints.check.gap.PersonBody;
import org.longlow.constraints.check.gap.PersonGaps;
import org.longlow.constraints.check.gap.SectionFindings;
import org.longlow.constraints.check.person.AccessFindings;
import org.longlow.constraints.check.person.BoardFindings;
import org.longlow.constraints.check.person.BodyCare;
import org.longlow.constraints.check.person.BraceFindings;
import org.longlow.constraints.check.person.ContactFindings;
import org.longlow.constraints.check.person.ControlFindings;
import org.longlow.constraints.check.person.CrewFindings;
import org.longlow.constraints.check.person.EffortFindings;
import org.longlow.constraints.check.person.FootrestFindings;
import org.longlow.constraints.check.person.GettingInFindings;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.person.LongRideFindings;
import org.longlow.constraints.check.person.PedalFindings;
import org.longlow.constraints.check.person.PoseFindings;
import org.longlow.constraints.check.person.RiseFindings;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.person.StopFindings;
import org.longlow.constraints.check.person.UnjudgedFindings;
import org.longlow.constraints.check.person.ViewFindings;
import org.longlow.constraints.check.ride.BalanceFindings;
import org.longlow.constraints.check.ride.DiveFindings;
import org.longlow.constraints.check.ride.DriveFindings;
import org.longlow.constraints.check.ride.RampFindings;
import org.longlow.constraints.check.ride.SlideFindings;
import org.longlow.constraints.check.ride.WindFindings;
import org.longlow.constraints.check.road.AimFindings;
import org.longlow.constraints.check.road.AxleFindings;
import org.longlow.constraints.check.road.ChainFindings;
import org.longlow.constraints.check.road.DoorwayFindings;
import org.longlow.constraints.check.road.GroundFindings;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.check.road.RunFindings;
import org.longlow.constraints.check.road.SagFindings;
import org.longlow.constraints.check.road.ShockFindings;
import org.longlow.constraints.check.road.SpringCare;
import org.longlow.constraints.check.road.StandFindings;
import org.longlow.constraints.check.road.SteeringFindings;
import org.longlow.constraints.check.road.SwungFindings;
import org.longlow.constraints.check.road.TurningFindings;
import org.longlow.constraints.check.road.TyreFindings;
import org.longlow.constraints.check.road.Weights;
import org.longlow.constraints.check.rule.LawFindings;
import org.longlow.constraints.check.rule.Rulings;
import org.longlow.constraints.check.section.LineFindings;
import org.longlow.constraints.check.section.NeededWays;
import org.longlow.constraints.check.section.OpenerFindings;
import org.longlow.constraints.check.whole.BendFindings;
import org.longlow.constraints.check.whole.BreadthFindings;
import org.longlow.constraints.check.whole.ColdFindings;
import org.longlow.constraints.check.whole.CompletenessFindings;
import org.longlow.constraints.check.whole.EdgeFindings;
import org.longlow.constraints.check.whole.ElectricFindings;
import org.longlow.constraints.check.whole.FoldFindings;
import org.longlow.constraints.check.whole.FormerFindings;
import org.longlow.constraints.check.whole.PlaceFindings;
import org.longlow.constraints.check.whole.SolveFindings;
import org.longlow.constraints.check.whole.TwinFindings;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.Words;

/** Every finding about a machine, in a fixed order. */
public final class Checks {

  /** Wheels that cannot be stood on the ground. */
  private static final FindingKind SUSPENSION =
      new FindingKind("suspension", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** What {@link #moving} finds. */
  static final Set<FindingKind> MOVING =
      Set.of(
          RampFindings.RAMP,
          DiveFindings.DIVE,
          DriveFindings.SQUAT,
          DriveFindings.SLACK,
          BalanceFindings.BALANCE,
          WindFindings.WIND);

  /** What {@link #controlAndWays} finds. */
  static final Set<FindingKind> CONTROL_AND_WAYS =
      Set.of(
          ControlFindings.LEVER,
          ControlFindings.SWITCH,
          PedalFindings.PEDAL,
          FootrestFindings.FOOTREST,
          StopFindings.FEET_DOWN,
          StopFindings.HOLD_UP,
          AccessFindings.LEGS,
          AccessFindings.STEP,
          RiseFindings.RISE,
          AccessFindings.GET_OUT);

  private Checks() {}

  /**
   * Returns all findings.
   *
   * @param placed the solved layout
   * @param shapes its parts as drawn
   * @param sittings its crew
   * @param wheels its wheels
   * @param standings its stances
   * @param progress told of what grows with the number of pairs of people
   */
  public static List<Finding> all(
      Placed placed,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      Wheels wheels,
      List<Standing> standings,
      Progress progress) {
    Layout layout = placed.layout();
    GapRules rules = new GapRules(layout, placed.places());
    JointFindings joints = new JointFindings(layout, rules, wheels, shapes, standings);
    // a third of all the work, and nobody else asks for what it keeps: on a core of its own
    ForkJoinTask<List<Finding>> lock =
        ForkJoinTask.adapt(
                () ->
                    new LockFindings(
                            layout,
                            rules,
                            joints,
                            PersonBody.of(sittings),
                            wheels,
                            shapes,
                            standings)
                        .all())
            .fork();
    List<Finding> findings = new ArrayList<>(SolveFindings.of(placed));
    findings.addAll(CrewFindings.of(layout, placed.places(), sittings));
    for (Sitting sitting : sittings) {
      findings.addAll(ofPerson(layout, sitting, standings, placed.places()));
    }
    GapFindings gaps = new GapFindings(layout, rules, shapes);
    findings.addAll(gaps.of(standings, progress));
    findings.addAll(joints.all(gaps));
    findings.addAll(TwinFindings.of(shapes));
    List<PersonBody> people = PersonBody.of(sittings);
    Optional<Nudged> nudged = Optional.of(new Nudged(layout, gaps, people));
    List<Solid> lines = LineFindings.bodies(layout, wheels, placed.places());
    findings.addAll(
        new HeatFindings(layout, rules, gaps, placed.places(), lines, true).all(people, standings));
    findings.addAll(new AirFindings(layout, rules, placed.places()).all(shapes, people, standings));
    findings.addAll(new PersonGaps(layout, rules, gaps, people, standings).all(progress));
    findings.addAll(
        new SectionFindings(
                layout, rules, gaps, joints, placed.places(), people, SectionFindings.Ways.SOUGHT)
            .all());
    findings.addAll(OpenerFindings.of(layout, placed.places(), shapes, standings));
    findings.addAll(LineFindings.of(layout, wheels, placed.places(), standings));
    findings.addAll(lock.join());
    findings.addAll(HandFindings.of(wheels, sittings, standings));
    UnjudgedFindings.of(layout, sittings).ifPresent(findings::add);
    List<Finding> wayOuts = OpenerFindings.wayOuts(layout, placed.places(), shapes, standings);
    Reached reached = new Reached(layout, shapes, wheels);
    findings.addAll(controlAndWays(reached, sittings, standings, wayOuts));
    findings.addAll(gettingIn(reached, sittings, standings));
    findings.addAll(wheelFaults(wheels));
    findings.addAll(AxleFindings.of(placed));
    findings.addAll(TyreFindings.sizes(placed));
    findings.addAll(PlaceFindings.of(placed, wheels));
    findings.addAll(EdgeFindings.of(layout, placed.places()));
    findings.addAll(BreadthFindings.of(layout, placed.places()));
    findings.addAll(FormerFindings.of(layout, placed.places()));
    findings.addAll(FoldFindings.of(layout, placed.places()));
    findings.addAll(BendFindings.of(layout, placed.places()));
    findings.add(new CompletenessFindings(layout, wheels, gaps).of());
    findings.addAll(ColdFindings.of(layout));
    findings.addAll(ChainFindings.of(placed));
    Weights weights = Weights.of(shapes.values());
    weights.finding().ifPresent(findings::add);
    SpringCare springs = SpringCare.of(wheels);
    springs.finding().ifPresent(findings::add);
    add(findings, DoorwayFindings.DOORWAY, () -> DoorwayFindings.of(layout, standings));
    add(findings, GroundFindings.CLEARANCE, () -> GroundFindings.of(layout, standings, nudged));
    findings.addAll(HubFindings.of(layout, placed.places(), shapes));
    findings.addAll(TyreFindings.grown(placed));
    ElectricFindings.of(layout, placed.places()).ifPresent(findings::add);
    findings.addAll(SwungFindings.of(layout, wheels, shapes, standings));
    if (wheels.stands()) {
      add(findings, SagFindings.SAG, () -> SagFindings.of(wheels, standings));
      add(
          findings,
          LeanFindings.LEAN,
          () -> new LeanFindings(layout, wheels, nudged).of(standings, progress));
      add(findings, StandFindings.STAND, () -> StandFindings.of(layout, wheels, standings));
      add(findings, SteeringFindings.TRAIL, () -> SteeringFindings.of(wheels, standings));
      findings.addAll(AimFindings.of(layout, standings));
      TurningFindings.of(wheels, standings).ifPresent(findings::add);
      add(findings, ShockFindings.STROKE, () -> ShockFindings.of(wheels));
      add(findings, RunFindings.RUN, () -> RunFindings.of(placed, standings));
      moving(findings, placed, shapes, wheels, standings);
    }
    loads(findings, layout, wheels, standings);
    add(findings, Rulings.LAW, () -> LawFindings.of(layout, sittings, standings));
    return held(findings, weights, springs, sittings);
  }

  /** Adds what is found of the machine over ramps, braking, balancing and in side wind. */
  static void moving(
      List<Finding> findings,
      Placed placed,
      Map<String, PartShape> shapes,
      Wheels wheels,
      List<Standing> standings) {
    Layout layout = placed.layout();
    add(findings, RampFindings.RAMP, () -> RampFindings.of(layout, wheels, standings));
    Stances stances = new Stances(wheels, shapes);
    add(
        findings,
        DiveFindings.DIVE,
        () -> DiveFindings.of(layout, wheels, stances, standings).stream().toList());
    add(findings, DriveFindings.SQUAT, () -> DriveFindings.of(placed, wheels, standings));
    add(
        findings,
        BalanceFindings.BALANCE,
        () -> BalanceFindings.of(wheels, standings).stream().toList());
    add(
        findings,
        WindFindings.WIND,
        () -> WindFindings.of(layout, wheels, standings).stream().toList());
  }

  /** Adds what wheels and tyres carry, and what they hold. */
  static void loads(
      List<Finding> findings, Layout layout, Wheels wheels, List<Standing> standings) {
    add(findings, LoadFindings.LOAD, () -> LoadFindings.of(layout, standings));
    add(findings, SlideFindings.SLIDE, () -> SlideFindings.of(layout, standings));
    if (wheels.stands()) {
      add(findings, TyreFindings.TYRE_LOAD, () -> TyreFindings.loads(wheels, standings));
    }
  }

  /** Returns findings with the care that unknown masses, springs and bodies ask. */
  static List<Finding> held(
      List<Finding> findings, Weights weights, SpringCare springs, List<Sitting> sittings) {
    return findings.stream()
        .map(weights::held)
        .map(springs::held)
        .map(f -> BodyCare.held(f, sittings))
        .toList();
  }

  /** Returns how one person sits, how their joints are bent and loaded, what they see and reach. */
  static List<Finding> ofPerson(
      Layout layout, Sitting sitting, List<Standing> standings, Places places) {
    Condition stance = Standing.under(sitting.occupant(), standings);
    List<Finding> findings = new ArrayList<>(SeatFindings.of(sitting, stance, places));
    findings.addAll(LongRideFindings.of(sitting, stance, places));
    findings.addAll(BoardFindings.of(sitting, stance, places));
    BraceFindings.of(layout, sitting, standings, places).ifPresent(findings::add);
    findings.addAll(PoseFindings.of(sitting, stance));
    findings.addAll(EffortFindings.of(layout, sitting, standings, places));
    findings.addAll(ContactFindings.of(sitting, stance, places));
    findings.addAll(SightFindings.of(layout, sitting, standings));
    findings.addAll(ViewFindings.of(layout, sitting, standings));
    return findings;
  }

  /** What of a machine is reached, worked and got out of, whoever rides it. For several threads. */
  record Reached(
      Layout layout,
      Places places,
      ControlFindings controls,
      PedalFindings pedals,
      AccessFindings ways) {

    Reached(Layout layout, Map<String, PartShape> shapes, Wheels wheels) {
      this(
          layout,
          wheels.drawn(),
          new ControlFindings(wheels, shapes),
          new PedalFindings(layout, wheels.drawn(), shapes),
          new AccessFindings(layout, wheels.drawn(), shapes));
    }
  }

  /**
   * Returns what riders reach and work, whether they stand at a stop, and get in and out.
   *
   * @param wayOuts what a hand needs to open the sections that are ways out
   */
  static List<Finding> controlAndWays(
      Reached reached, List<Sitting> sittings, List<Standing> standings, List<Finding> wayOuts) {
    List<Finding> findings = new ArrayList<>();
    Layout layout = reached.layout();
    Places places = reached.places();
    for (Sitting sitting : sittings) {
      Condition stance = Standing.under(sitting.occupant(), standings);
      findings.addAll(reached.controls().of(sitting, stance));
      findings.addAll(reached.pedals().of(sitting, stance));
      FootrestFindings.of(sitting, stance, places).ifPresent(findings::add);
      findings.addAll(StopFindings.of(layout, sitting, standings));
      findings.addAll(NeededWays.held(reached.ways().of(sitting, standings), wayOuts));
      RiseFindings.of(layout, sitting, standings, places).ifPresent(findings::add);
    }
    return findings;
  }

  /** Returns how people get in, pose by pose. */
  static List<Finding> gettingIn(
      Reached reached, List<Sitting> sittings, List<Standing> standings) {
    GettingInFindings in =
        new GettingInFindings(reached.layout(), reached.places(), reached.ways());
    return sittings.stream().flatMap(s -> in.of(s, standings).stream()).toList();
  }

  private static List<Finding> wheelFaults(Wheels wheels) {
    return wheels.faults().stream()
        .map(
            fault ->
                Finding.note(
                    SUSPENSION,
                    About.thing(fault.about(), fault.about()),
                    wheels.stands() ? Verdict.CAUTION : Verdict.FAIL,
                    Basis.model("plane geometry of links"),
                    Words.of(sentence(fault.text()))))
        .toList();
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  /**
   * Adds findings of calculations that refuse machines no road has seen (an axis lying flat, a mass
   * in the ground): the refusal is then the finding, and the rest is still answered.
   */
  static void add(List<Finding> into, FindingKind kind, Supplier<List<Finding>> findings) {
    try {
      into.addAll(findings.get());
    } catch (OutOfRange e) {
      into.add(
          Finding.note(
              kind,
              About.thing(kind.group().title(), "unknown"),
              Verdict.FAIL,
              Basis.model("range of the calculation"),
              Words.of(
                  "This cannot be worked out for the machine as it stands: "
                      + e.getMessage()
                      + ".")));
    }
  }
}
