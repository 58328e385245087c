package org.longlow.constraints.layout;

import java.util.List;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;

/**
 * A lamp, reflector or number plate.
 *
 * @param at centre of the lit area
 * @param y distance of its centre from the middle plane
 * @param pair true if there is one on each side
 * @param halfWidth half the lit width
 * @param halfHeight half the lit height
 * @param depth length along the machine, behind the lit face
 * @param colour of the light given or sent back
 * @param electric what it takes from the electrics
 */
public record LampPart(
    PartBase base,
    Kind type,
    String at,
    Formula y,
    boolean pair,
    Formula halfWidth,
    Formula halfHeight,
    Formula depth,
    Colour colour,
    Electric electric)
    implements Part {

  /** What a lamp rule speaks of. */
  public enum Kind {
    /** Lower beam, with or without the upper beam in the same lamp. */
    HEADLAMP,
    /** A separate lamp with only the upper beam. */
    DRIVING_BEAM,
    DAYTIME,
    FRONT_FOG,
    /** Rear position lamp. */
    TAIL,
    STOP,
    REAR_FOG,
    FRONT_SIGNAL,
    REAR_SIGNAL,
    FRONT_POSITION,
    /** The lamp that lights the number plate. */
    PLATE_LAMP,
    REAR_REFLECTOR,
    SIDE_REFLECTOR,
    /** The number plate itself; it gives no light. */
    PLATE
  }

  /** Colour of the light given or sent back. */
  public enum Colour {
    WHITE,
    AMBER,
    RED
  }

  /** Whether it gives light of its own. */
  public boolean lights() {
    return switch (type) {
      case PLATE, REAR_REFLECTOR, SIDE_REFLECTOR -> false;
      default -> true;
    };
  }

  @Override
  public String what() {
    return switch (type) {
      case PLATE -> "number plate";
      case REAR_REFLECTOR, SIDE_REFLECTOR -> "reflector";
      default -> kind();
    };
  }

  @Override
  public boolean paired() {
    return pair;
  }

  @Override
  public Traits traits() {
    return new Traits("lamp", Duty.LOAD, Joint.BODY, Heat.BEARS, Make.BOUGHT, false);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.lamp(this);
  }

  @Override
  public List<String> pins() {
    return List.of(at);
  }
}
