package org.longlow.constraints.stand;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;

/**
 * The machine in one stance.
 *
 * @param condition the stance, and who is on the machine
 * @param rider their bodies
 * @param frontTravelMm front wheel travel from the drawn position, bump positive
 * @param rearTravelMm rear wheel travel, likewise
 * @param places pins in the axes of the frame; wheels moved, sections shut
 * @param ground the road in the axes of the frame
 * @param shapes every part in this stance; those that did not move are shared with the drawn ones
 * @param moved those of {@code shapes} that are not where they are drawn
 * @param load masses and axle loads
 * @param springs what the springs carry, where they are in balance
 * @param emptied the same at rest with tanks and boxes empty, where some part says what it holds
 */
public record Standing(
    Condition condition,
    Rider rider,
    double frontTravelMm,
    double rearTravelMm,
    Places places,
    Ground ground,
    Map<String, PartShape> shapes,
    Map<String, PartShape> moved,
    Load load,
    Optional<Springs> springs,
    Optional<Standing> emptied) {

  /** One of a machine that holds nothing. */
  public Standing(
      Condition condition,
      Rider rider,
      double frontTravelMm,
      double rearTravelMm,
      Places places,
      Ground ground,
      Map<String, PartShape> shapes,
      Map<String, PartShape> moved,
      Load load,
      Optional<Springs> springs) {
    this(
        condition,
        rider,
        frontTravelMm,
        rearTravelMm,
        places,
        ground,
        shapes,
        moved,
        load,
        springs,
        Optional.empty());
  }

  /** Returns this with the same machine emptied beside it. */
  Standing emptied(Standing light) {
    return of(condition, load, Optional.of(light));
  }

  /** Returns this with what axles carry when it weighs something else. */
  Standing carrying(Load other) {
    return of(condition, other, emptied);
  }

  /** Returns this under another name. */
  Standing named(Condition other) {
    return of(other, load, emptied);
  }

  private Standing of(Condition now, Load carried, Optional<Standing> light) {
    return new Standing(
        now,
        rider,
        frontTravelMm,
        rearTravelMm,
        places,
        ground,
        shapes,
        moved,
        carried,
        springs,
        light);
  }

  public Stance.Kind kind() {
    return condition.kind();
  }

  /**
   * Returns the condition in which the machine carries somebody with as few others as may be; of
   * them alone if they are on it in none.
   */
  public static Condition under(Occupant who, List<Standing> standings) {
    return carrying(who, standings).map(Standing::condition).orElse(Condition.laden(List.of(who)));
  }

  /** Returns the first one that carries somebody with as few others as may be. */
  public static Optional<Standing> carrying(Occupant who, List<Standing> standings) {
    int least = who.rides() ? 1 : 2; // whoever steers is aboard with everybody else
    Standing best = null;
    for (Standing s : standings) {
      int aboard = s.condition().aboard().size();
      if ((best == null || aboard < best.condition().aboard().size())
          && s.condition().aboard().contains(who)) {
        best = s;
        if (aboard == least) {
          break; // there are as many of them as pairs of people: not all are looked at
        }
      }
    }
    return Optional.ofNullable(best);
  }
}
