package org.longlow.constraints.mend;

import java.util.Optional;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Something of a layout that can be changed by steps, to either side. Immutable. */
interface Dial {

  /** Returns the thing that is changed; two dials of one thing are two ways to change it. */
  String thing();

  Grid grid();

  /**
   * Returns what is typed to change it.
   *
   * @param steps negative to the other side
   * @return empty if it cannot be changed so far
   */
  Optional<Rewrite> turned(int steps);

  /**
   * Returns the change in words, such as {@code raise seatHeight by 12 mm to 640 mm}.
   *
   * @param before where everything was
   * @param after where everything is after so many steps
   */
  Words says(int steps, Places before, Places after);

  /** Returns how large a change that is; 1 is much. */
  default double size(int steps, Places before, Places after) {
    return Math.abs(steps) / grid().much();
  }

  /** Something that moves in the elevation, along one direction. */
  interface Moving extends Dial {

    /** Returns the direction of a step to the positive side, of length 1. */
    PointMm way();

    /** Returns the same thing moved along another direction. */
    Moving along(PointMm way);
  }
}
