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

  /**
   * On tiptoe: ball and toes on the ground, bent against each other, the heel off it.
   *
   * @param ball where the ball stands
   * @param soleRad from heel to ball, from level
   * @param groundRad slope of the ground from ball to toe
   */
  record Tiptoe(PointMm ball, double soleRad, double groundRad) implements FootContact {}
}
