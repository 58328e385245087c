package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;

/** Every finding about a machine, in a fixed order. */
public final class Checks {

  private Checks() {}

  /**
   * Returns all findings.
   *
   * @param placed the solved layout
   * @param shapes its parts as drawn
   * @param sittings its crew
   * @param wheels its wheels
   * @param standings its stances
   */
  public static List<Finding> all(
      Placed placed,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      Wheels wheels,
      List<Standing> standings) {
    Layout layout = placed.layout();
    List<Finding> findings = new ArrayList<>();
    add(findings, FindingGroup.LAYOUT, SolveFindings.of(placed));
    add(findings, FindingGroup.SEAT, CrewFindings.of(layout));
    for (Sitting sitting : sittings) {
      List<Finding> person = new ArrayList<>();
      add(person, FindingGroup.SEAT, SeatFindings.of(sitting));
      add(person, FindingGroup.POSTURE, PoseFindings.of(sitting));
      add(person, FindingGroup.SIGHT_AND_FOOT, SightFindings.of(layout, sitting, standings));
      person.forEach(f -> findings.add(f.about(sitting.person(), sitting.seat())));
    }
    GapRules rules = new GapRules(layout, placed.places());
    GapFindings gaps = new GapFindings(layout, rules, shapes);
    add(findings, FindingGroup.GAPS, gaps.of(standings));
    JointFindings joints = new JointFindings(layout, rules, placed.places(), shapes, standings);
    add(findings, FindingGroup.GAPS, joints.all(gaps));
    for (Sitting sitting : sittings) {
      sitting
          .solid()
          .ifPresent(
              body ->
                  PersonGaps.of(rules, gaps, sitting, body)
                      .forEach(
                          f ->
                              findings.add(
                                  f.in(FindingGroup.GAPS)
                                      .about(sitting.person(), sitting.seat()))));
    }
    add(
        findings,
        FindingGroup.OPENING,
        new SectionFindings(layout, rules, gaps, joints, placed.places(), sittings).all());
    add(findings, FindingGroup.PLACES, wheelFaults(wheels));
    add(findings, FindingGroup.PLACES, PlaceFindings.of(placed, wheels));
    add(findings, FindingGroup.PLACES, ChainFindings.of(placed));
    Weights weights = Weights.of(shapes.values());
    weights.finding().ifPresent(f -> findings.add(f.in(FindingGroup.LOADS)));
    List<Finding> weighed = new ArrayList<>();
    add(weighed, FindingGroup.CLEARANCE, () -> GroundFindings.of(layout, standings));
    if (wheels.stands()) {
      add(weighed, FindingGroup.SAG, () -> SagFindings.of(wheels, standings));
      add(weighed, FindingGroup.LEAN, () -> new LeanFindings(layout, wheels).of(standings));
      add(weighed, FindingGroup.STAND, () -> StandFindings.of(layout, wheels, standings));
      add(weighed, FindingGroup.STEERING, () -> SteeringFindings.of(wheels, standings));
    }
    add(weighed, FindingGroup.LOADS, () -> LoadFindings.of(layout, standings));
    weighed.forEach(f -> findings.add(weights.held(f)));
    add(findings, FindingGroup.LAW, () -> LawFindings.of(layout, sittings, standings));
    return findings.stream().map(f -> BodyCare.held(f, sittings)).toList();
  }

  private static List<Finding> wheelFaults(Wheels wheels) {
    return wheels.faults().stream()
        .map(
            fault ->
                Finding.note(
                    "suspension." + fault.about(),
                    fault.about(),
                    "",
                    wheels.stands() ? Verdict.CAUTION : Verdict.FAIL,
                    Double.NaN,
                    "",
                    "plane geometry of links",
                    sentence(fault.text())))
        .toList();
  }

  private static void add(List<Finding> into, FindingGroup group, List<Finding> findings) {
    findings.forEach(f -> into.add(f.in(group)));
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  /**
   * Adds findings of calculations that refuse machines no road has seen (an axis lying flat, a mass
   * in the ground): the refusal is then the finding, and the rest is still answered.
   */
  private static void add(
      List<Finding> into, FindingGroup group, Supplier<List<Finding>> findings) {
    try {
      add(into, group, findings.get());
    } catch (IllegalArgumentException e) {
      into.add(
          Finding.note(
                  "unknown." + group.name().toLowerCase(Locale.ROOT),
                  group.title(),
                  "",
                  Verdict.FAIL,
                  Double.NaN,
                  "",
                  "range of the calculation",
                  "This cannot be worked out for the machine as it stands: " + e.getMessage() + ".")
              .in(group));
    }
  }
}
