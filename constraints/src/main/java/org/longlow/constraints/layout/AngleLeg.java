package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * The second leg of a bracket of angle section: turned square across the machine along a straight
 * edge of its outline, whose plate is the first leg. It is as long as the bracket is broad.
 *
 * @param edge which edge: from this point of the outline to the next, counted from 1
 * @param sheet thickness of both legs; absent where there is no second leg
 * @param turned the side that it is turned to; of a pair that of the left one
 * @param holes of it, x along the edge from that point, z out from the heel
 */
public record AngleLeg(int edge, Optional<Formula> sheet, Side turned, List<Hole> holes) {

  /** None. */
  public static final AngleLeg NONE = new AngleLeg(1, Optional.empty(), Side.LEFT, List.of());

  /** A side of the machine. */
  public enum Side {
    LEFT,
    RIGHT
  }

  public AngleLeg {
    holes = List.copyOf(holes);
  }
}
