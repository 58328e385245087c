package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A length or an angle that was measured and is kept on the drawing. It tells; nothing follows it.
 *
 * @param along which way it runs
 * @param ends what it runs between: two; of an upright one that runs to the ground one; of an angle
 *     three, the second of which it is at
 * @param off where its line stands: of a straight one so far to the left of the way from its first
 *     end to its last, of a level one above its first, of an upright one ahead of it, of an angle
 *     so far from the point it is at; absent for beside what is measured
 * @param note for people, may be empty
 */
public record Dimension(Along along, List<End> ends, Optional<Formula> off, String note) {

  public Dimension {
    ends = List.copyOf(ends);
  }

  /** Which way a dimension runs. */
  public enum Along {
    /** The distance itself. */
    STRAIGHT,
    /** The distance along the road. */
    LEVEL,
    /** The distance square to the road. */
    UPRIGHT,
    /** The angle at one point between the ways to two others. */
    ANGLE
  }

  /**
   * What a dimension ends at: a pin, a point of the outline of a part, or the part where it is
   * nearest to the other end.
   *
   * @param pin empty where a part is named
   * @param part empty where a pin is named
   * @param point which point of the outline of the part, counted from 0, a half with its image
   */
  public record End(String pin, String part, Optional<Integer> point) {

    public static End pin(String name) {
      return new End(name, "", Optional.empty());
    }

    public static End point(String part, int point) {
      return new End("", part, Optional.of(point));
    }

    /** The part, where it is nearest to the other end. */
    public static End edge(String part) {
      return new End("", part, Optional.empty());
    }

    /** Returns whether its place depends on the other end. */
    public boolean isEdge() {
      return pin.isEmpty() && point.isEmpty();
    }

    /** Says it, such as {@code point 2 of tank}. */
    public String words() {
      return !pin.isEmpty() ? pin : point.map(i -> "point " + i + " of " + part).orElse(part);
    }
  }
}
