package org.longlow.constraints.machine.linkage;

import org.longlow.rider.geom.PointMm;

/** How a body moves on a known way, from shut to open. */
public interface Moving {

  /**
   * Returns the motion from shut to an opening.
   *
   * @param opening 0 shut to 1 open
   * @throws IllegalArgumentException outside that range, or where the mechanism cannot go
   */
  RigidMotion at(double opening);

  /**
   * Returns a bound of how much the body moves between any two of a range of openings.
   *
   * @param from 0 shut to 1 open
   * @param to not less than {@code from}
   */
  Swing swing(double from, double to);

  /**
   * Returns the same motion in axes with another origin, its pins on a grid.
   *
   * @param gridMm mm, &gt; 0
   */
  Moving seenFrom(PointMm origin, double gridMm);

  /**
   * A bound of a motion: its pole shifts by no more than this, and it turns about that by no more.
   *
   * @param pole a point of the body, shut
   * @param shiftMm mm, &gt;= 0
   * @param turnRad rad, &gt;= 0
   */
  record Swing(PointMm pole, double shiftMm, double turnRad) {

    /** Returns how far at most a point moves that is so far from the pole, mm. */
    public double mostMm(double fromPoleMm) {
      // the chord of an arc is no longer than the arc
      return shiftMm + fromPoleMm * turnRad;
    }
  }
}
