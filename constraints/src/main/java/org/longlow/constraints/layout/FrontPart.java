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
 * The front system, from the steering axis to the axle.
 *
 * @param top upper pin of the steering axis
 * @param bottom lower pin of the steering axis
 * @param pivot link pivot; absent for a telescopic fork
 * @param axle front axle pin
 * @param tube diameter of stanchion, stem or link
 * @param y distance of each leg from the middle plane
 * @param bump wheel travel up from the drawn position
 * @param droop wheel travel down from the drawn position
 * @param rate force for each mm that the axle moves along its way
 * @param preload force along that way carried already at full droop
 * @param postTop upper pin of the axis that the bars turn about, where they stand on a post of
 *     their own and a link takes their turn to the fork, as far as they turn; absent where they
 *     turn about the steering axis
 * @param postBottom lower pin of that axis
 * @param brakeRod true if a rod beside the link holds the brake, so that it does not swing with the
 *     link
 */
public record FrontPart(
    PartBase base,
    Kind type,
    String top,
    String bottom,
    Optional<String> pivot,
    String axle,
    Formula tube,
    Formula y,
    Formula bump,
    Formula droop,
    Optional<Formula> rate,
    Optional<Formula> preload,
    Optional<String> postTop,
    Optional<String> postBottom,
    boolean brakeRod)
    implements Part.Carrier {

  /** How the front wheel is carried. */
  public enum Kind {
    TELESCOPIC,
    LEADING_LINK,
    TRAILING_LINK
  }

  /** Returns whether links carry the axle; a shop can make these and the legs. */
  public boolean linked() {
    return pivot.isPresent();
  }

  @Override
  public Part.End end() {
    return Part.End.FRONT;
  }

  @Override
  public Traits traits() {
    return new Traits(
        "front", Duty.CARRIER, Joint.BAR, Optional.of(tube), Heat.BEARS, Make.BOUGHT, false);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.front(this);
  }

  @Override
  public List<String> pins() {
    List<String> pins = new ArrayList<>(List.of(top, bottom));
    pivot.ifPresent(pins::add);
    pins.add(axle);
    return pins;
  }
}
