package org.longlow.constraints.stand;

import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;

/**
 * The machine in one stance.
 *
 * @param name the stance, with who is on it, such as {@code laden, Mara}
 * @param kind which state
 * @param rider who is on it
 * @param section the section that is open, or empty
 * @param frontTravelMm front wheel travel from the drawn position, bump positive
 * @param rearTravelMm rear wheel travel, likewise
 * @param places pins in the axes of the frame; wheels and open sections moved
 * @param ground the road in the axes of the frame
 * @param shapes every part in this stance; those that did not move are shared with the drawn ones
 * @param moved those of {@code shapes} that are not where they are drawn
 * @param load masses and axle loads
 * @param springs what the springs carry, where they are in balance
 */
public record Standing(
    String name,
    Stance.Kind kind,
    Rider rider,
    String section,
    double frontTravelMm,
    double rearTravelMm,
    Places places,
    Ground ground,
    Map<String, PartShape> shapes,
    Map<String, PartShape> moved,
    Load load,
    Optional<Springs> springs) {

  /** Returns who is on it in words, empty for nobody. */
  public String people() {
    return rider.names();
  }
}
