package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.check.gap.GapRules;
import org.longlow.constraints.check.gap.HeatFindings;
import org.longlow.constraints.check.gap.PersonBody;
import org.longlow.constraints.check.gap.PersonGaps;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.road.GroundFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.check.road.SagFindings;
import org.longlow.constraints.check.road.SpringCare;
import org.longlow.constraints.check.road.TyreFindings;
import org.longlow.constraints.check.road.Weights;
import org.longlow.constraints.check.section.OpenerFindings;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.body.Body;

/**
 * What depends on the body of whoever rides, for thousands of them on one machine: how they sit,
 * bend, reach and see, what they work, feet at a stop, ways in and out, what comes near to them,
 * hands on turned grips, how far the springs sink, clearance and loads under them. Verdicts are
 * those of {@link Checks#all} with them alone aboard; what the machine is without them is made
 * once. Not judged anew for each: lean, what turns past limbs at full lock, sections that open past
 * them. For several threads.
 */
public final class BodyChecks {

  /**
   * One answer.
   *
   * @param kind what was asked
   * @param about what it is about
   * @param verdict how it came out
   */
  public record Answer(FindingKind kind, About about, Verdict verdict) {}

  private final Layout layout;
  private final SeatParts seat;
  private final Places places;
  private final Map<String, PartShape> shapes;
  private final Wheels wheels;
  private final Stances stances;
  private final List<Standing> ends;
  private final GapRules rules;
  private final GapFindings gaps;
  private final Weights weights;
  private final SpringCare springs;
  private final List<Finding> wayOuts;
  private final Checks.Reached reached;

  /**
   * @param seat whose rider is judged
   * @param places where the pins are
   * @param shapes the parts as drawn
   */
  public BodyChecks(Layout layout, SeatParts seat, Places places, Map<String, PartShape> shapes) {
    this.layout = layout;
    this.seat = seat;
    this.places = places;
    this.shapes = shapes;
    wheels = Wheels.of(layout, places);
    stances = new Stances(wheels, shapes);
    ends = wheels.stands() ? stances.ends() : List.of();
    rules = new GapRules(layout, places);
    gaps = new GapFindings(layout, rules, shapes);
    weights = Weights.of(shapes.values());
    springs = SpringCare.of(wheels);
    wayOuts = wayOuts();
    reached = new Checks.Reached(layout, shapes, wheels);
  }

  private BodyChecks(BodyChecks other, Places places, Map<String, PartShape> instead) {
    layout = other.layout;
    seat = other.seat;
    this.places = places;
    shapes = new HashMap<>(other.shapes);
    shapes.putAll(instead);
    wheels = Wheels.of(layout, places);
    stances = new Stances(wheels, shapes);
    ends = wheels.stands() ? stances.ends() : List.of();
    rules = other.rules;
    gaps = other.gaps.with(instead);
    weights = other.weights;
    springs = other.springs;
    wayOuts = wayOuts();
    reached = new Checks.Reached(layout, shapes, wheels);
  }

  /** They open as the machine stands with nobody on it. */
  private List<Finding> wayOuts() {
    boolean any = layout.sections().values().stream().anyMatch(s -> s.opens().wayOut());
    return any && wheels.stands()
        ? OpenerFindings.wayOuts(
            layout,
            places,
            shapes,
            List.of(stances.balanced(Condition.empty(Stance.Kind.UNLADEN), Rider.NOBODY)))
        : List.of();
  }

  /**
   * Returns the same machine with parts of the seat elsewhere, as on rails: the bodies of all
   * others stay where they are, also of those that share pins with them.
   *
   * @param moved where the pins of these parts are
   */
  public BodyChecks with(Set<Part> parts, Places moved) {
    Map<String, PartShape> instead = new HashMap<>();
    parts.forEach(part -> instead.put(part.name(), Shapes.of(part, moved, false)));
    return new BodyChecks(this, moved, instead);
  }

  /** Returns pairs of these parts and all others that are nearer than asked, in words. */
  public Set<String> fouled(Set<Part> parts) {
    Set<String> names = new LinkedHashSet<>();
    for (Part part : parts) {
      for (String other : layout.parts().keySet()) {
        if (parts.stream().noneMatch(p -> p.name().equals(other))
            && rules.mayNotTouch(part.name(), other)) {
          double limit = rules.limitMm(part.name(), other, rules.demand(part.name(), other));
          if (gaps.drawn(part.name()).apartMm(gaps.drawn(other), limit) < limit) {
            names.add(part.name() + " and " + other);
          }
        }
      }
    }
    return names;
  }

  /** Returns where the pins are. */
  public Places places() {
    return places;
  }

  /** Returns somebody on the seat. */
  public Sitting sit(String name, Body body) {
    return Seats.sit(name, body, seat, places);
  }

  /** Returns everything that depends on the body of somebody seated. */
  public List<Answer> of(Sitting sitting) {
    List<Standing> standings = new ArrayList<>();
    if (sitting.posture().isPresent() && wheels.stands()) {
      Rider rider =
          new Rider(List.of(new Rider.Seated(sitting.occupant(), sitting.masses(), List.of())));
      standings.add(stances.balanced(Condition.laden(rider.occupants()), rider));
    }
    List<Finding> findings = new ArrayList<>(Checks.ofPerson(layout, sitting, standings, places));
    findings.addAll(HandFindings.of(wheels, List.of(sitting), standings));
    findings.addAll(Checks.controlAndWays(reached, List.of(sitting), standings, wayOuts));
    MachineChecks.add(
        findings, GroundFindings.CLEARANCE, () -> GroundFindings.of(layout, standings));
    MachineChecks.add(findings, SagFindings.SAG, () -> SagFindings.of(wheels, standings));
    MachineChecks.add(findings, LoadFindings.LOAD, () -> LoadFindings.of(layout, standings));
    if (wheels.stands()) {
      MachineChecks.add(
          findings, TyreFindings.TYRE_LOAD, () -> TyreFindings.indexed(wheels, standings));
    }
    List<Answer> answers = new ArrayList<>();
    for (Finding f : Checks.held(findings, weights, springs, List.of(sitting))) {
      answers.add(new Answer(f.kind(), f.about(), f.verdict()));
    }
    PersonBody.of(List.of(sitting)).forEach(person -> near(answers, person, sitting, standings));
    return answers;
  }

  private void near(
      List<Answer> answers, PersonBody person, Sitting sitting, List<Standing> standings) {
    List<Standing> all = new ArrayList<>(standings);
    all.addAll(ends);
    answers.addAll(
        of(
            GapFindings.GAP,
            sitting,
            new PersonGaps(layout, rules, gaps, List.of(person), all).verdicts(person)));
    answers.addAll(
        of(
            HeatFindings.HEAT,
            sitting,
            new HeatFindings(layout, rules, gaps, places, List.of()).verdicts(person)));
  }

  /** What comes too near to somebody, by part. */
  private static List<Answer> of(FindingKind kind, Sitting sitting, Map<String, Verdict> verdicts) {
    return verdicts.entrySet().stream()
        .map(e -> new Answer(kind, About.beside(e.getKey(), sitting.occupant()), e.getValue()))
        .toList();
  }

  /** Returns whether anybody can sit there at all. */
  public Optional<String> refusal() {
    return Seats.geometry(seat, places).isPresent()
        ? Optional.empty()
        : Optional.of(
            "seat "
                + seat.seat()
                + " has no back or nowhere to put the feet: give it a cushion with the role back"
                + " and a peg or footboard");
  }
}
