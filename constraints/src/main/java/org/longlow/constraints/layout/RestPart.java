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
 * A grip, peg, footboard or handhold.
 *
 * @param seat whose it is
 * @param at its centre; the rear end of a footboard
 * @param to the front end of a footboard; absent otherwise
 * @param diameter of a grip, peg or handhold, thickness of a board
 * @param y distance of its middle from the middle plane; there is one on each side
 * @param length sideways
 * @param folds true if it folds up when it touches the road
 * @param heelStop true if an edge of a footboard holds the heel
 */
public record RestPart(
    PartBase base,
    Kind type,
    String seat,
    String at,
    Optional<String> to,
    Formula diameter,
    Formula y,
    Formula length,
    boolean folds,
    boolean heelStop)
    implements Part.Seated {

  /** A rest that holds no heel. */
  public RestPart(
      PartBase base,
      Kind type,
      String seat,
      String at,
      Optional<String> to,
      Formula diameter,
      Formula y,
      Formula length,
      boolean folds) {
    this(base, type, seat, at, to, diameter, y, length, folds, false);
  }

  /** What a hand or foot rests on or takes hold of. */
  public enum Kind {
    GRIP(Limb.HAND, false),
    PEG(Limb.FOOT, false),
    FOOTBOARD(Limb.FOOT, true),
    /** Is held, or pushed on, to get in and out. */
    HANDHOLD(Limb.NONE, false);

    private final Limb limb;
    private final boolean board;

    Kind(Limb limb, boolean board) {
      this.limb = limb;
      this.board = board;
    }

    /** What rests on it. */
    public Limb limb() {
      return limb;
    }

    /** Whether it is a board from one pin to another, which a shop makes; else a bought bar. */
    public boolean board() {
      return board;
    }
  }

  /** The end of a limb that rests on it while the machine is ridden. */
  public enum Limb {
    HAND,
    FOOT,
    NONE
  }

  @Override
  public boolean paired() {
    return true;
  }

  @Override
  public Traits traits() {
    Make make = type.board() ? Make.MADE : Make.BOUGHT;
    Optional<Formula> depth = Optional.of(diameter);
    return new Traits(Names.word(type), Duty.LOAD, Joint.OTHER, depth, Heat.BEARS, make, true);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.rest(this);
  }

  @Override
  public List<String> pins() {
    return to.isPresent() ? List.of(at, to.get()) : List.of(at);
  }
}
