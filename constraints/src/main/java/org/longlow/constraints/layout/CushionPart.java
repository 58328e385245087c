package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;

/**
 * A cushion: foam on a board.
 *
 * @param seat whose seat it belongs to, {@code rider} unless said otherwise
 * @param from the board's face: rear end of a pan, lower end of a back or head rest
 * @param to the board's face: front end of a pan, upper end of a back or head rest
 * @param board thickness of the board, on the far side from the person
 * @param layers foam from the top (next to the person) down to the board
 * @param brackets where the board is carried, from its first end; none where that is not said
 * @param coverGive how much longer the cover can get along the board than the foam it lies on
 */
public record CushionPart(
    PartBase base,
    Role role,
    String seat,
    String from,
    String to,
    Formula board,
    List<FoamSpec> layers,
    List<Formula> brackets,
    Optional<Formula> coverGive)
    implements Part.Seated {

  /** Which cushion of a seat. */
  public enum Role {
    PAN,
    BACK,
    HEAD
  }

  public CushionPart {
    layers = List.copyOf(layers);
    brackets = List.copyOf(brackets);
  }

  /** Returns the same cushion with other foam. */
  public CushionPart of(List<FoamSpec> other) {
    return new CushionPart(base, role, seat, from, to, board, other, brackets, coverGive);
  }

  @Override
  public Traits traits() {
    return new Traits("cushion", Duty.LOAD, Joint.OTHER, Heat.SUFFERS, Make.FOAM, true);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.cushion(this);
  }

  @Override
  public List<String> pins() {
    return List.of(from, to);
  }
}
