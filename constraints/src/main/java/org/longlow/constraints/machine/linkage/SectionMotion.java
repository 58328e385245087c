package org.longlow.constraints.machine.linkage;

import org.longlow.rider.geom.PointMm;

/** How a section of the bodywork moves between shut and open. */
public interface SectionMotion {

  /**
   * Returns the motion from shut to an opening.
   *
   * @param opening 0 shut to 1 open
   * @throws IllegalArgumentException outside that range, or where the mechanism cannot go
   */
  RigidMotion at(double opening);

  /**
   * Returns how fast it moves at an opening; very fast where the mechanism is at a dead point.
   *
   * @param opening 0 shut to 1 open
   */
  MotionRate rate(double opening);

  /**
   * Returns a bound of how much the section moves between any two of a range of openings.
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
  SectionMotion seenFrom(PointMm origin, double gridMm);

  /** Returns a point in axes with another origin, on a grid. */
  static PointMm onGrid(PointMm point, PointMm origin, double gridMm) {
    return new PointMm(
        Math.rint((point.x() - origin.x()) / gridMm) * gridMm,
        Math.rint((point.z() - origin.z()) / gridMm) * gridMm);
  }

  /**
   * A bound of a motion: its pole shifts by no more than this, and it turns about that by no more.
   *
   * @param pole a point of the section, shut
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
