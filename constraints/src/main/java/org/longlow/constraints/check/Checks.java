package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinTask;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.gap.AirFindings;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.gap.GapRules;
import org.longlow.constraints.check.gap.HeatFindings;
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
import org.longlow.constraints.check.person.GripFindings;
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
import org.longlow.constraints.check.road.SpringCare;
import org.longlow.constraints.check.road.Weights;
import org.longlow.constraints.check.rule.LawFindings;
import org.longlow.constraints.check.rule.Rulings;
import org.longlow.constraints.check.section.LineFindings;
import org.longlow.constraints.check.section.NeededWays;
import org.longlow.constraints.check.section.OpenerFindings;
import org.longlow.constraints.check.whole.SolveFindings;
import org.longlow.constraints.check.whole.TwinFindings;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.words.Progress;

/** Every finding about a machine, in a fixed order. */
public final class Checks {

  /** What {@link #controlAndWays} finds. */
  static final Set<FindingKind> CONTROL_AND_WAYS =
      Set.of(
          ControlFindings.LEVER,
          ControlFindings.SWITCH,
          PedalFindings.PEDAL,
          GripFindings.GRIP,
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
    Places places = placed.places();
    GapRules rules = new GapRules(layout, places);
    JointFindings joints = new JointFindings(layout, rules, wheels, shapes, standings);
    GapFindings gaps = new GapFindings(layout, rules, shapes);
    Optional<Nudged> nudged = Optional.of(new Nudged(layout, gaps, PersonBody.of(sittings)));
    // groups that ask nothing of one another, in order; on as many cores as there are
    List<Callable<List<Finding>>> groups =
        List.of(
            () -> ofPeople(placed, sittings, standings),
            () ->
                ofGaps(layout, rules, joints, gaps, wheels, shapes, sittings, standings, progress),
            () ->
                new LockFindings(
                        layout,
                        rules,
                        gaps,
                        joints,
                        PersonBody.of(sittings),
                        wheels,
                        shapes,
                        standings)
                    .all(),
            () -> handsAndWays(layout, wheels, shapes, sittings, standings),
            () ->
                MachineChecks.asDrawn(
                    placed, shapes, wheels, rules, gaps, nudged, sittings, standings),
            () -> MachineChecks.leaning(layout, wheels, nudged, standings, progress),
            () -> MachineChecks.onRoad(placed, shapes, wheels, sittings, standings),
            () -> byLaw(layout, sittings, standings));
    List<Finding> findings =
        ForkJoinTask.invokeAll(groups.stream().map(ForkJoinTask::adapt).toList()).stream()
            .flatMap(group -> group.join().stream())
            .toList();
    return held(findings, Weights.of(shapes.values()), SpringCare.of(wheels), sittings);
  }

  /** Returns how the solver fared, and how each of the crew sits. */
  private static List<Finding> ofPeople(
      Placed placed, List<Sitting> sittings, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>(SolveFindings.of(placed));
    findings.addAll(CrewFindings.of(placed.layout(), placed.places(), sittings));
    for (Sitting sitting : sittings) {
      findings.addAll(ofPerson(placed.layout(), sitting, standings, placed.places()));
    }
    return findings;
  }

  /** Returns what comes near to what, but for what is steered. */
  private static List<Finding> ofGaps(
      Layout layout,
      GapRules rules,
      JointFindings joints,
      GapFindings gaps,
      Wheels wheels,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      List<Standing> standings,
      Progress progress) {
    Places places = wheels.drawn();
    List<Finding> findings = new ArrayList<>(gaps.of(standings, progress));
    findings.addAll(joints.all(gaps));
    findings.addAll(TwinFindings.of(shapes));
    List<PersonBody> people = PersonBody.of(sittings);
    List<Solid> lines = LineFindings.bodies(layout, wheels, places);
    findings.addAll(new HeatFindings(layout, rules, gaps, places, lines).all(people, standings));
    findings.addAll(new AirFindings(layout, rules, places).all(shapes, people, standings));
    findings.addAll(new PersonGaps(layout, rules, gaps, people, standings).all(progress));
    findings.addAll(
        new SectionFindings(
                layout, rules, gaps, joints, places, people, SectionFindings.Ways.SOUGHT)
            .all());
    findings.addAll(OpenerFindings.of(layout, places, shapes, standings));
    findings.addAll(LineFindings.of(layout, wheels, places, standings, people));
    return findings;
  }

  /** Returns what is reached and worked, and how people get in and out. */
  private static List<Finding> handsAndWays(
      Layout layout,
      Wheels wheels,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      List<Standing> standings) {
    Reached reached = new Reached(layout, shapes, wheels);
    List<Finding> findings = new ArrayList<>(HandFindings.of(wheels, sittings, standings));
    UnjudgedFindings.of(layout, sittings).ifPresent(findings::add);
    List<Finding> wayOuts = OpenerFindings.wayOuts(layout, reached.places(), shapes, standings);
    findings.addAll(controlAndWays(reached, sittings, standings, wayOuts));
    findings.addAll(gettingIn(reached, sittings, standings));
    return findings;
  }

  private static List<Finding> byLaw(
      Layout layout, List<Sitting> sittings, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    MachineChecks.add(findings, Rulings.LAW, () -> LawFindings.of(layout, sittings, standings));
    return findings;
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
      GripFindings.of(sitting, stance, places).ifPresent(findings::add);
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
}
