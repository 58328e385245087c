package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.gap.Body;
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
    List<Finding> findings = new ArrayList<>(SolveFindings.of(placed));
    for (Sitting sitting : sittings) {
      findings.addAll(SeatFindings.of(sitting));
      findings.addAll(PoseFindings.of(sitting));
      findings.addAll(SightFindings.of(layout, sitting, standings));
    }
    GapRules rules = new GapRules(layout, placed.places());
    GapFindings gaps = new GapFindings(layout, rules, shapes);
    findings.addAll(gaps.of(standings));
    List<Body> people = new ArrayList<>();
    for (Sitting sitting : sittings) {
      Optional<Body> person = sitting.solid();
      if (person.isPresent()) {
        people.add(person.get());
        findings.addAll(PersonGaps.of(rules, gaps, sitting, person.get()));
      }
    }
    findings.addAll(new SectionFindings(layout, rules, gaps, placed.places(), people).all());
    wheels
        .faults()
        .forEach(
            fault ->
                findings.add(
                    Finding.note(
                        "suspension",
                        "suspension",
                        "",
                        Verdict.CAUTION,
                        Double.NaN,
                        "",
                        "plane geometry of links",
                        fault + ".")));
    findings.addAll(GroundFindings.of(layout, standings));
    if (wheels.stands()) {
      findings.addAll(new LeanFindings(layout, wheels).of(standings));
      findings.addAll(StandFindings.of(layout, wheels, standings));
      findings.addAll(SteeringFindings.of(wheels, standings));
    }
    findings.addAll(LampFindings.of(layout, standings));
    findings.addAll(LoadFindings.of(layout, standings));
    return List.copyOf(findings);
  }
}
