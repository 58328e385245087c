package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What a body looks like cut square to its local x axis, from its lower to its upper edge.
 *
 * @param shape of each side
 * @param corner radius of the corners of a flat one
 * @param drawn points of the sides from below to above, instead of the shape; may be none
 */
public record Profile(Shape shape, Optional<Formula> corner, List<Share> drawn) {

  /** Flat sides with sharp corners, which is what there is where nothing is said. */
  public static final Profile FLAT = new Profile(Shape.FLAT, Optional.empty(), List.of());

  public Profile {
    drawn = List.copyOf(drawn);
  }

  /** What its sides are. */
  public enum Shape {
    /** Straight from the lower to the upper edge. */
    FLAT,
    /** Flat with corners as round as its height and breadth allow. */
    ROUND,
    /** An ellipse. */
    OVAL
  }

  /**
   * A point of a drawn side.
   *
   * @param up its place, 0 at the lower edge to 1 at the upper
   * @param out how far out it is, 0 at the middle to 1 at full breadth
   */
  public record Share(Formula up, Formula out) {}
}
