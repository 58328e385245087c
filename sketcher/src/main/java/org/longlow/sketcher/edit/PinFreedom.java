package org.longlow.sketcher.edit;

import java.util.List;
import java.util.Map;
import org.longlow.rider.geom.PointMm;

/**
 * How a pin can move, to first order.
 *
 * @param pin the pin
 * @param kind how freely
 * @param ways unit directions: two opposite ones along a line, four across a plane, none if it is
 *     held; those that a limit stops are left out
 * @param followers what else moves, mm for each mm of the pin along the first way (or against it,
 *     where that is stopped)
 * @param holders names of the ties that take away what freedom it lacks; of none can one be spared
 * @param stops names of the limits that stop a way it could otherwise go
 */
public record PinFreedom(
    String pin,
    Kind kind,
    List<PointMm> ways,
    Map<String, PointMm> followers,
    List<String> holders,
    List<String> stops) {

  /** How freely a pin moves. */
  public enum Kind {
    /** Fixed in the layout. */
    NAILED,
    /** Ties leave it nowhere to go. */
    HELD,
    /** It runs along a line. */
    LINE,
    /** It goes anywhere. */
    PLANE
  }

  public PinFreedom {
    ways = List.copyOf(ways);
    followers = Map.copyOf(followers);
    holders = List.copyOf(holders);
    stops = List.copyOf(stops);
  }

  /** Returns one sentence on why it moves as it does, in the user's names. */
  public String words() {
    return switch (kind) {
      case NAILED -> pin + " is nailed in place";
      case HELD -> pin + " is held by " + ties(holders);
      case LINE ->
          pin
              + " runs along a line; "
              + ties(holders)
              + (holders.size() == 1 ? " keeps it there" : " keep it there")
              + stopped();
      case PLANE -> pin + " can move" + stopped();
    };
  }

  private String stopped() {
    return stops.isEmpty() ? "" : "; stopped by limit " + String.join(", ", stops);
  }

  private static String ties(List<String> names) {
    if (names.isEmpty()) {
      return "its ties";
    }
    return (names.size() == 1 ? "tie " : "ties ") + String.join(", ", names);
  }
}
