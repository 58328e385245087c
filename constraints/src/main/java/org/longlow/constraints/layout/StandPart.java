package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;

/**
 * A side stand.
 *
 * @param pivot where it hinges
 * @param foot its foot on the ground when parked
 * @param stowed its foot when riding
 * @param y sideways place of the foot when parked, left positive
 * @param diameter of the leg
 * @param lean how far the parked machine leans towards the stand
 */
public record StandPart(
    PartBase base,
    String pivot,
    String foot,
    String stowed,
    Formula y,
    Formula diameter,
    Formula lean)
    implements Part {
  @Override
  public Traits traits() {
    return new Traits(
        "stand", Duty.STAND, Joint.BAR, Optional.of(diameter), Heat.BEARS, Make.MADE, false);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.stand(this);
  }

  @Override
  public List<String> pins() {
    return List.of(pivot, foot, stowed);
  }
}
