package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/** Where both feet are held. */
public sealed interface FootContact {

  /**
   * Ball of the foot on a peg; the foot finds its own slope.
   *
   * @param contact where the sole touches the peg
   */
  record BallOnPeg(PointMm contact) implements FootContact {}

  /**
   * Sole flat on a footboard; the heel slides to where the knee is most comfortable.
   *
   * @param rear end of the board nearer the rider's heel
   * @param front end towards the toes
   */
  record Footboard(PointMm rear, PointMm front) implements FootContact {}
}
