package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/** Where both hands are held. */
public sealed interface HandContact {

  /**
   * Hands on grips.
   *
   * @param centre centre of the grip in the side view
   */
  record Grip(PointMm centre) implements HandContact {}

  /** Hands resting on the thighs. */
  record OnThighs() implements HandContact {}
}
