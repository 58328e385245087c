package org.longlow.constraints.layout;

import org.longlow.constraints.formula.Formula;

/**
 * A named point of the elevation that parts share.
 *
 * @param x where it is now, forward of the rear contact point
 * @param z where it is now, above the ground
 * @param nailed true if the solver may not move it
 * @param with what it moves with when the machine moves: {@link #FRAME}, {@link #FRONT_WHEEL},
 *     {@link #REAR_WHEEL} or the name of a section
 * @param note for people, may be empty
 */
public record Pin(Formula x, Formula z, boolean nailed, String with, String note) {

  /** Moves with the sprung frame. */
  public static final String FRAME = "frame";

  /** Moves with the front wheel's carrier. */
  public static final String FRONT_WHEEL = "front-wheel";

  /** Moves with the rear wheel's carrier. */
  public static final String REAR_WHEEL = "rear-wheel";

  /** Returns a copy at another place. */
  public Pin at(Formula newX, Formula newZ) {
    return new Pin(newX, newZ, nailed, with, note);
  }
}
