package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
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
      List<Finding> person = new ArrayList<>(SeatFindings.of(sitting));
      person.addAll(PoseFindings.of(sitting));
      person.addAll(SightFindings.of(layout, sitting, standings));
      person.forEach(f -> findings.add(f.about(sitting.person(), sitting.seat())));
    }
    GapRules rules = new GapRules(layout, placed.places());
    GapFindings gaps = new GapFindings(layout, rules, shapes);
    findings.addAll(gaps.of(standings));
    List<Body> people = new ArrayList<>();
    for (Sitting sitting : sittings) {
      Optional<Body> person = sitting.solid();
      if (person.isPresent()) {
        people.add(person.get());
        PersonGaps.of(rules, gaps, sitting, person.get())
            .forEach(f -> findings.add(f.about(sitting.person(), sitting.seat())));
      }
    }
    findings.addAll(new SectionFindings(layout, rules, gaps, placed.places(), people).all());
    wheels
        .faults()
        .forEach(
            fault ->
                findings.add(
                    Finding.note(
                        "suspension." + fault.about(),
                        fault.about(),
                        "",
                        wheels.stands() ? Verdict.CAUTION : Verdict.FAIL,
                        Double.NaN,
                        "",
                        "plane geometry of links",
                        sentence(fault.text()))));
    findings.addAll(PlaceFindings.of(placed, wheels));
    findings.addAll(ChainFindings.of(placed));
    Weights weights = Weights.of(shapes.values());
    weights.finding().ifPresent(findings::add);
    List<Finding> weighed = new ArrayList<>();
    add(weighed, "clearance", () -> GroundFindings.of(layout, standings));
    if (wheels.stands()) {
      add(weighed, "sag", () -> SagFindings.of(wheels, standings));
      add(weighed, "lean", () -> new LeanFindings(layout, wheels).of(standings));
      add(weighed, "stand", () -> StandFindings.of(layout, wheels, standings));
      add(weighed, "trail", () -> SteeringFindings.of(wheels, standings));
    }
    add(weighed, "load", () -> LoadFindings.of(layout, standings));
    weighed.forEach(f -> findings.add(weights.held(f)));
    add(findings, "law", () -> LawFindings.of(layout, sittings, standings));
    return List.copyOf(findings);
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  /**
   * Adds findings of calculations that refuse machines no road has seen (an axis lying flat, a mass
   * in the ground): the refusal is then the finding, and the rest is still answered.
   */
  private static void add(List<Finding> into, String id, Supplier<List<Finding>> group) {
    try {
      into.addAll(group.get());
    } catch (IllegalArgumentException e) {
      into.add(
          Finding.note(
              id,
              id,
              "",
              Verdict.FAIL,
              Double.NaN,
              "",
              "range of the calculation",
              "This cannot be worked out for the machine as it stands: " + e.getMessage() + "."));
    }
  }
}
