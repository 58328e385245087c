package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.words.Names;

/**
 * A round tube through pins, bent at the inner ones.
 *
 * @param corners its pins in order, at least two
 * @param diameter outside diameter
 * @param wall wall thickness
 * @param bendRadius centre-line radius of the bends
 * @param y distance of the tube's centre from the middle plane, left positive, at each pin that
 *     says no other
 * @param both true if there is one on each side
 * @param bought true if it is bought as it is, so that nothing is cut or bent for it
 */
public record TubePart(
    PartBase base,
    Kind type,
    List<Corner> corners,
    Formula diameter,
    Formula wall,
    Formula bendRadius,
    Formula y,
    boolean both,
    boolean bought)
    implements Part {

  /**
   * A pin of a tube.
   *
   * @param y how far from the middle plane its centre is there, left positive; absent where it is
   *     that of the tube
   */
  public record Corner(String pin, Optional<Formula> y) {
    /** A pin where nothing is said across. */
    public static Corner of(String pin) {
      return new Corner(pin, Optional.empty());
    }
  }

  /** What a bent tube is. */
  public enum Kind {
    RAIL(Duty.FRAME, Heat.BEARS),
    EXHAUST(Duty.LOAD, Heat.GIVES);

    private final Duty duty;
    private final Heat heat;

    Kind(Duty duty, Heat heat) {
      this.duty = duty;
      this.heat = heat;
    }

    public boolean usuallyHot() {
      return heat == Heat.GIVES;
    }
  }

  public TubePart {
    corners = List.copyOf(corners);
  }

  /** Returns its pins in order. */
  public List<String> path() {
    return corners.stream().map(Corner::pin).toList();
  }

  @Override
  public String what() {
    return !bought ? kind() : type == Kind.RAIL ? "bought bar" : "bought " + kind();
  }

  @Override
  public boolean paired() {
    return both;
  }

  @Override
  public Traits traits() {
    Optional<Formula> depth = Optional.of(diameter);
    Make make = bought ? Make.BOUGHT : Make.TUBE;
    return new Traits(Names.word(type), type.duty, Joint.BAR, depth, type.heat, make, !bought);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.tube(this);
  }

  @Override
  public List<String> pins() {
    return path().stream().distinct().toList();
  }
}
