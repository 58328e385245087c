package org.longlow.constraints.machine.linkage;

import org.longlow.rider.geom.PointMm;

/** How a section of the bodywork moves between shut and open. */
public interface SectionMotion extends Moving {

  /**
   * Returns how fast it moves at an opening; very fast where the mechanism is at a dead point.
   *
   * @param opening 0 shut to 1 open
   */
  MotionRate rate(double opening);

  @Override
  SectionMotion seenFrom(PointMm origin, double gridMm);

  /** Returns a point in axes with another origin, on a grid. */
  static PointMm onGrid(PointMm point, PointMm origin, double gridMm) {
    return new PointMm(
        Math.rint((point.x() - origin.x()) / gridMm) * gridMm,
        Math.rint((point.z() - origin.z()) / gridMm) * gridMm);
  }
}
