package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * By what of the rider a lever is worked, and where.
 *
 * @param by what works it
 * @param pad the pin where that lies: front face of a hand lever, a button, the middle of a pedal's
 *     rubber
 * @param pivot the pin that a pedal turns about; said with its travel
 * @param travel how far the rubber of a pedal goes; of one for the toes to either side
 */
public record Control(By by, String pad, Optional<String> pivot, Optional<Formula> travel) {

  /** What of the rider works it. */
  public enum By {
    /** A hand lever, pulled to the grip. */
    FINGERS,
    /** A switch beside the grip. */
    THUMB,
    /** A pedal that the sole presses, such as that of a brake. */
    SOLE,
    /** A pedal that the toes press and lift, such as that of the gears. */
    TOES;

    /** Whether a foot works it. */
    public boolean pedal() {
      return this == SOLE || this == TOES;
    }
  }
}
