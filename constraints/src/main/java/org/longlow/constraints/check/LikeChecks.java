package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.gap.AirFindings;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.gap.GapRules;
import org.longlow.constraints.check.gap.HeatFindings;
import org.longlow.constraints.check.gap.HubFindings;
import org.longlow.constraints.check.gap.JointFindings;
import org.longlow.constraints.check.gap.LockFindings;
import org.longlow.constraints.check.gap.PersonBody;
import org.longlow.constraints.check.gap.PersonGaps;
import org.longlow.constraints.check.gap.SectionFindings;
import org.longlow.constraints.check.person.GettingInFindings;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.road.AimFindings;
import org.longlow.constraints.check.road.DoorwayFindings;
import org.longlow.constraints.check.road.GroundFindings;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.check.road.SagFindings;
import org.longlow.constraints.check.road.ShockFindings;
import org.longlow.constraints.check.road.SpringCare;
import org.longlow.constraints.check.road.StandFindings;
import org.longlow.constraints.check.road.SteeringFindings;
import org.longlow.constraints.check.road.TurningFindings;
import org.longlow.constraints.check.road.TyreFindings;
import org.longlow.constraints.check.road.Weights;
import org.longlow.constraints.check.road.WorkStandFindings;
import org.longlow.constraints.check.rule.LawFindings;
import org.longlow.constraints.check.rule.Rulings;
import org.longlow.constraints.check.section.LineFindings;
import org.longlow.constraints.check.section.OpenerFindings;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.words.Progress;

/**
 * The findings that are made together with one of them, for searches that change the machine again
 * and again. Those are as {@link Checks#all} has them, made by the same code; what is not known
 * here is looked for among all.
 */
public final class LikeChecks {

  private final Placed placed;
  private final Map<String, PartShape> shapes;
  private final List<Sitting> sittings;
  private final Wheels wheels;
  private final List<Standing> standings;

  /** What {@link Checks#all} takes. */
  public LikeChecks(
      Placed placed,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      Wheels wheels,
      List<Standing> standings) {
    this.placed = placed;
    this.shapes = shapes;
    this.sittings = sittings;
    this.wheels = wheels;
    this.standings = standings;
  }

  /** Returns all findings. */
  public List<Finding> all() {
    return Checks.all(placed, shapes, sittings, wheels, standings, Progress.NONE);
  }

  /** Returns the findings that are made together with one like {@code f}; maybe not that one. */
  public List<Finding> like(Finding f) {
    return like(f, SectionFindings.Ways.SOUGHT);
  }

  /** Returns the same with the same figures, but maybe without what it takes long to advise. */
  public List<Finding> figures(Finding f) {
    return like(f, SectionFindings.Ways.NOT_SOUGHT);
  }

  private List<Finding> like(Finding f, SectionFindings.Ways ways) {
    List<Finding> findings = new ArrayList<>();
    Layout layout = placed.layout();
    if (f.kind() == LockFindings.LOCK) {
      locks(findings);
      return held(findings);
    }
    if (f.kind() == HandFindings.HANDS) {
      return held(HandFindings.of(wheels, sittings, standings));
    }
    List<Sitting> theirs =
        sittings.stream().filter(s -> f.who().filter(s.occupant()::equals).isPresent()).toList();
    if (f.kind() == GettingInFindings.GETTING_IN) {
      return held(Checks.gettingIn(new Checks.Reached(layout, shapes, wheels), theirs, standings));
    }
    if (Checks.CONTROL_AND_WAYS.contains(f.kind())) {
      List<Finding> wayOuts = OpenerFindings.wayOuts(layout, placed.places(), shapes, standings);
      return held(
          Checks.controlAndWays(
              new Checks.Reached(layout, shapes, wheels), theirs, standings, wayOuts));
    }
    if (MachineChecks.MOVING.contains(f.kind())) {
      if (wheels.stands()) {
        MachineChecks.moving(findings, placed, shapes, wheels, standings);
      }
      return held(findings);
    }
    switch (f.group()) {
      case SEAT, POSTURE, EFFORT, SIGHT_AND_FOOT ->
          theirs.forEach(
              s -> findings.addAll(Checks.ofPerson(layout, s, standings, placed.places())));
      case GAPS, OPENING -> gaps(f.group(), findings, ways);
      case LAW ->
          MachineChecks.add(
              findings, Rulings.LAW, () -> LawFindings.of(layout, sittings, standings));
      case LOADS -> MachineChecks.loads(findings, layout, wheels, standings);
      case CLEARANCE -> {
        MachineChecks.add(
            findings, GroundFindings.CLEARANCE, () -> GroundFindings.of(layout, standings));
        GapRules rules = new GapRules(layout, placed.places());
        GapFindings parts = new GapFindings(layout, rules, shapes);
        findings.addAll(MachineChecks.swung(layout, wheels, rules, parts, shapes, standings));
        MachineChecks.add(
            findings, DoorwayFindings.DOORWAY, () -> DoorwayFindings.of(layout, standings));
      }
      default -> {
        if (wheels.stands()) {
          onWheels(f.group(), findings);
        }
      }
    }
    return held(findings);
  }

  private List<Finding> held(List<Finding> findings) {
    return Checks.held(findings, Weights.of(shapes.values()), SpringCare.of(wheels), sittings);
  }

  private void locks(List<Finding> into) {
    Layout layout = placed.layout();
    GapRules rules = new GapRules(layout, placed.places());
    JointFindings joints = new JointFindings(layout, rules, wheels, shapes, standings);
    into.addAll(
        new LockFindings(
                layout,
                rules,
                new GapFindings(layout, rules, shapes),
                joints,
                PersonBody.of(sittings),
                wheels,
                shapes,
                standings)
            .all());
  }

  private void onWheels(FindingGroup group, List<Finding> into) {
    Layout layout = placed.layout();
    switch (group) {
      case SAG -> {
        MachineChecks.add(into, SagFindings.SAG, () -> SagFindings.of(wheels, standings));
        into.addAll(AimFindings.of(layout, standings));
        MachineChecks.add(into, ShockFindings.STROKE, () -> ShockFindings.of(layout, wheels));
      }
      case LEAN ->
          MachineChecks.add(
              into, LeanFindings.LEAN, () -> new LeanFindings(layout, wheels).of(standings));
      case STAND -> {
        MachineChecks.add(
            into, StandFindings.STAND, () -> StandFindings.of(layout, wheels, standings));
        MachineChecks.add(
            into,
            WorkStandFindings.WORK_STAND,
            () -> WorkStandFindings.of(layout, wheels, standings));
      }
      case STEERING -> {
        MachineChecks.add(
            into, SteeringFindings.TRAIL, () -> SteeringFindings.of(wheels, standings));
        TurningFindings.of(wheels, standings).ifPresent(into::add);
      }
      default -> {
        // of the layout as a whole: only all of them tell
      }
    }
  }

  private void gaps(FindingGroup group, List<Finding> into, SectionFindings.Ways ways) {
    Layout layout = placed.layout();
    GapRules rules = new GapRules(layout, placed.places());
    GapFindings gaps = new GapFindings(layout, rules, shapes);
    JointFindings joints = new JointFindings(layout, rules, wheels, shapes, standings);
    List<PersonBody> people = PersonBody.of(sittings);
    if (group == FindingGroup.OPENING) {
      into.addAll(
          new SectionFindings(layout, rules, gaps, joints, placed.places(), people, ways).all());
      return;
    }
    Places places = placed.places();
    List<Solid> lines = LineFindings.bodies(layout, wheels, places);
    into.addAll(new HeatFindings(layout, rules, gaps, places, lines).all(people, standings));
    into.addAll(new AirFindings(layout, rules, places).all(shapes, people, standings));
    into.addAll(gaps.of(standings, Progress.NONE));
    into.addAll(joints.all(gaps));
    into.addAll(HubFindings.of(layout, rules, places, shapes, sittings, standings));
    into.addAll(TyreFindings.grown(placed));
    into.addAll(new PersonGaps(layout, rules, gaps, people, standings).all(Progress.NONE));
  }
}
