package org.longlow.constraints.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;

/**
 * A stand that is carried along: one leg at a side, or two.
 *
 * @param type what it does
 * @param pivot where it hinges
 * @param foot its foot on the ground when parked
 * @param stowed its foot when riding
 * @param y sideways place of the foot when parked, left positive; of two, of either
 * @param diameter of the leg
 * @param lean how far the parked machine leans towards a side stand
 * @param lever where a foot treads the stand down when parked, turning with its legs
 */
public record StandPart(
    PartBase base,
    Kind type,
    String pivot,
    String foot,
    String stowed,
    Formula y,
    Formula diameter,
    Formula lean,
    Optional<String> lever)
    implements Part {

  /** What a stand does. */
  public enum Kind {
    /** One leg, and the machine leans on it. */
    SIDE,
    /** Two legs side by side lift a wheel off the road. */
    CENTRE,
    /** Two legs come down beside the machine at a stop, both wheels staying on the road. */
    PAIR
  }

  @Override
  public Traits traits() {
    return new Traits(
        "stand", Duty.STAND, Joint.BAR, Optional.of(diameter), Heat.BEARS, Make.MADE, false);
  }

  @Override
  public boolean paired() {
    return type != Kind.SIDE || Part.super.paired();
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.stand(this);
  }

  @Override
  public List<String> pins() {
    return List.of(pivot, foot, stowed);
  }

  @Override
  public List<String> ownPins() {
    List<String> pins = new ArrayList<>(pins());
    lever.ifPresent(pins::add);
    return pins;
  }
}
