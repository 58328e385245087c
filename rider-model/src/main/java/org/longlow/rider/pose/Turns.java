package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/** Angles between directions in the elevation, rad. */
final class Turns {

  private Turns() {}

  /** Returns the angle at a joint, from one neighbour to another, counter-clockwise. */
  static double at(PointMm joint, PointMm from, PointMm to) {
    return ccw(from.minus(joint), to.minus(joint));
  }

  /** Returns the turn from one direction to another, counter-clockwise, in [0, 2π). */
  static double ccw(PointMm from, PointMm to) {
    double turn = Math.atan2(from.cross(to), from.dot(to));
    return turn < 0 ? turn + 2 * Math.PI : turn;
  }
}
