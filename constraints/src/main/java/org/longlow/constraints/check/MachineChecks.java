package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.gap.GapRules;
import org.longlow.constraints.check.gap.HubFindings;
import org.longlow.constraints.check.gap.JointFindings;
import org.longlow.constraints.check.gap.Nudged;
import org.longlow.constraints.check.gap.StandSwing;
import org.longlow.constraints.check.ride.BalanceFindings;
import org.longlow.constraints.check.ride.DiveFindings;
import org.longlow.constraints.check.ride.DriveFindings;
import org.longlow.constraints.check.ride.PullingAway;
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
import org.longlow.constraints.check.road.WorkStandFindings;
import org.longlow.constraints.check.whole.BendFindings;
import org.longlow.constraints.check.whole.BreadthFindings;
import org.longlow.constraints.check.whole.ColdFindings;
import org.longlow.constraints.check.whole.CompletenessFindings;
import org.longlow.constraints.check.whole.EdgeFindings;
import org.longlow.constraints.check.whole.ElectricFindings;
import org.longlow.constraints.check.whole.FoldFindings;
import org.longlow.constraints.check.whole.FormerFindings;
import org.longlow.constraints.check.whole.MovedFindings;
import org.longlow.constraints.check.whole.PlaceFindings;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.Words;

/** What is found of the machine itself: as drawn, standing, leaning and in motion. */
final class MachineChecks {

  /** Wheels that cannot be stood on the ground. */
  private static final FindingKind SUSPENSION =
      new FindingKind("suspension", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** What {@link #moving} finds. */
  static final Set<FindingKind> MOVING =
      Set.of(
          RampFindings.RAMP,
          DiveFindings.DIVE,
          PullingAway.SQUAT,
          DriveFindings.SLACK,
          BalanceFindings.BALANCE,
          WindFindings.WIND);

  private MachineChecks() {}

  /** Returns what is found of the parts as they are drawn, and of how the machine stands. */
  static List<Finding> asDrawn(
      Placed placed,
      Map<String, PartShape> shapes,
      Wheels wheels,
      GapRules rules,
      GapFindings gaps,
      Optional<Nudged> nudged,
      List<Sitting> sittings,
      List<Standing> standings) {
    Layout layout = placed.layout();
    Places places = placed.places();
    List<Finding> findings = new ArrayList<>(wheelFaults(wheels));
    findings.addAll(AxleFindings.of(placed));
    findings.addAll(TyreFindings.sizes(placed));
    findings.addAll(PlaceFindings.of(placed, wheels));
    findings.addAll(MovedFindings.of(layout, wheels));
    findings.addAll(EdgeFindings.of(layout, places));
    findings.addAll(BreadthFindings.of(layout, places));
    findings.addAll(FormerFindings.of(layout, places));
    findings.addAll(FoldFindings.of(layout, places));
    findings.addAll(BendFindings.of(layout, places));
    findings.add(new CompletenessFindings(layout, wheels, gaps).of());
    findings.addAll(ColdFindings.of(layout));
    findings.addAll(ChainFindings.of(placed));
    Weights.of(shapes.values()).finding().ifPresent(findings::add);
    SpringCare.of(wheels).finding().ifPresent(findings::add);
    add(findings, DoorwayFindings.DOORWAY, () -> DoorwayFindings.of(layout, standings));
    add(findings, GroundFindings.CLEARANCE, () -> GroundFindings.of(layout, standings, nudged));
    findings.addAll(HubFindings.of(layout, rules, places, shapes, sittings, standings));
    findings.addAll(TyreFindings.grown(placed));
    ElectricFindings.of(layout, places).ifPresent(findings::add);
    findings.addAll(swung(layout, wheels, rules, gaps, shapes, standings));
    if (wheels.stands()) {
      add(findings, SagFindings.SAG, () -> SagFindings.of(wheels, standings));
    }
    return findings;
  }

  /** Returns what swings into the road, and what legs of stands swing into. */
  static List<Finding> swung(
      Layout layout,
      Wheels wheels,
      GapRules rules,
      GapFindings gaps,
      Map<String, PartShape> shapes,
      List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    findings.addAll(SwungFindings.of(layout, wheels, shapes, standings));
    JointFindings joints = new JointFindings(layout, rules, wheels, shapes, standings);
    findings.addAll(new StandSwing(layout, rules, gaps, joints).all());
    return findings;
  }

  /** Returns how far it leans, and what touches the road then. */
  static List<Finding> leaning(
      Layout layout,
      Wheels wheels,
      Optional<Nudged> nudged,
      List<Standing> standings,
      Progress progress) {
    List<Finding> findings = new ArrayList<>();
    if (wheels.stands()) {
      add(
          findings,
          LeanFindings.LEAN,
          () -> new LeanFindings(layout, wheels, nudged).of(standings, progress));
    }
    return findings;
  }

  /** Returns what is found of the machine parked and in motion, and what its tyres hold. */
  static List<Finding> onRoad(
      Placed placed,
      Map<String, PartShape> shapes,
      Wheels wheels,
      List<Sitting> sittings,
      List<Standing> standings) {
    Layout layout = placed.layout();
    List<Finding> findings = new ArrayList<>();
    if (wheels.stands()) {
      add(findings, StandFindings.STAND, () -> StandFindings.of(layout, wheels, standings));
      add(
          findings,
          WorkStandFindings.WORK_STAND,
          () -> WorkStandFindings.of(layout, wheels, standings));
      add(findings, SteeringFindings.TRAIL, () -> SteeringFindings.of(wheels, standings));
      findings.addAll(AimFindings.of(layout, standings));
      TurningFindings.of(wheels, standings).ifPresent(findings::add);
      add(findings, ShockFindings.STROKE, () -> ShockFindings.of(layout, wheels));
      add(findings, RunFindings.RUN, () -> RunFindings.of(placed, sittings, standings));
      moving(findings, placed, shapes, wheels, standings);
    }
    loads(findings, layout, wheels, standings);
    return findings;
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
    add(findings, PullingAway.SQUAT, () -> DriveFindings.of(placed, wheels, standings));
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

  private static List<Finding> wheelFaults(Wheels wheels) {
    return wheels.faults().stream()
        .map(
            fault ->
                Finding.note(
                    SUSPENSION,
                    About.thing(fault.about(), fault.about()),
                    Verdict.FAIL,
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
