package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A cable, hose or loom, led through points of the machine that may move against each other.
 *
 * @param kind what it is
 * @param diameter outside
 * @param points what it is led through, from end to end
 * @param length what it is cut to, between its ends; absent while that is to be found
 * @param bend the least radius that it may be bent to; absent for what is usual for its kind
 * @param note for people, may be empty
 */
public record Line(
    Kind kind,
    Formula diameter,
    List<Point> points,
    Optional<Formula> length,
    Optional<Formula> bend,
    String note) {

  /** What a line is. */
  public enum Kind {
    /** A control cable in its housing. */
    CABLE,
    HOSE,
    /** A hose that fuel goes through. */
    FUEL_HOSE,
    /** Wires in one sleeve. */
    LOOM
  }

  /**
   * A place where a line is held.
   *
   * @param pin a pin, which says what it moves with
   * @param y how far to the left of the middle, mm; right negative
   */
  public record Point(String pin, Formula y) {}

  public Line {
    points = List.copyOf(points);
  }
}
