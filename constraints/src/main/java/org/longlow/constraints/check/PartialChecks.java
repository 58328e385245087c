package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.gap.GapRules;
import org.longlow.constraints.check.gap.JointFindings;
import org.longlow.constraints.check.road.GroundFindings;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;

/**
 * Findings about a few things only, for searches that ask again and again. The figures are those of
 * {@link Checks#all}, made by the same code. Not for several threads: what is asked of each pair is
 * kept.
 */
public final class PartialChecks {

  private final Layout layout;
  private final Wheels wheels;
  private final GapRules rules;
  private final Map<String, Map<String, Double>> between = new HashMap<>();

  /**
   * @param wheels the wheels of the layout
   * @param places where its pins are
   */
  public PartialChecks(Layout layout, Wheels wheels, Places places) {
    this.layout = layout;
    this.wheels = wheels;
    this.rules = new GapRules(layout, places);
  }

  /** Returns how one person sits, how their joints are bent, what they see and reach. */
  public List<Finding> crew(Sitting sitting, List<Standing> standings) {
    return Checks.ofPerson(layout, sitting, standings, wheels.drawn()).stream().toList();
  }

  /** Returns ground clearance, lean and loads of standings that may hold some parts only. */
  public List<Finding> machine(List<Standing> standings) {
    List<Finding> findings = new ArrayList<>(GroundFindings.of(layout, standings));
    if (wheels.stands()) {
      findings.addAll(new LeanFindings(layout, wheels).of(standings));
    }
    findings.addAll(LoadFindings.of(layout, standings));
    return findings;
  }

  /**
   * Returns how much nearer to their pins the joints of some parts end than they may, mm, by the id
   * of their finding; negative where they reach too far.
   *
   * @param shapes every part as drawn, where it is now
   * @param bodies likewise, as bodies
   * @param now where the pins are now
   */
  public Map<String, Double> jointsMm(
      Set<String> moved,
      Map<String, PartShape> shapes,
      Function<String, Solid> bodies,
      Places now) {
    return new JointFindings(layout, rules, wheels, shapes, List.of()).sparedMm(moved, bodies, now);
  }

  /**
   * Returns the smallest gap allowed between two parts, mm, or NaN where they may touch.
   *
   * @param b another part than {@code a}
   */
  public double leastMm(String a, String b) {
    return between
        .computeIfAbsent(a, k -> new HashMap<>())
        .computeIfAbsent(
            b, k -> rules.mayNotTouch(a, b) ? rules.limitMm(a, b, rules.demand(a, b)) : Double.NaN);
  }

  /** Returns the smallest gap allowed between somebody and a part, mm, or NaN where any touch. */
  public double leastMm(String part, Sitting sitting) {
    return rules.clearOfPeople(part) ? rules.limitMm(part, sitting) : Double.NaN;
  }

  /** Returns what of somebody that gap holds for. */
  public Resting.Clear clear(String part, Sitting sitting) {
    return rules.clear(layout.parts().get(part), sitting);
  }
}
