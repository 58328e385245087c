package org.longlow.constraints.lock;

/**
 * The room about an axis that a body keeps to. A turn about that axis changes the angle alone.
 *
 * @param alongFrom least place along the axis, mm
 * @param alongTo greatest place along it, mm
 * @param nearMm least distance from the axis, mm
 * @param farMm greatest distance from it, mm
 * @param middleRad middle of the directions that it lies in, 0 ahead, left positive
 * @param halfRad half of what they span; π where it lies all round
 */
record Around(
    double alongFrom,
    double alongTo,
    double nearMm,
    double farMm,
    double middleRad,
    double halfRad) {

  /** Returns the room of a box: from and to ahead of the axis, to the left, and along it. */
  static Around box(double[] from, double[] to) {
    double dx = Math.max(0, Math.max(from[0], -to[0]));
    double dy = Math.max(0, Math.max(from[1], -to[1]));
    double far =
        Math.hypot(
            Math.max(Math.abs(from[0]), Math.abs(to[0])),
            Math.max(Math.abs(from[1]), Math.abs(to[1])));
    double near = Math.hypot(dx, dy);
    if (near == 0) {
      return new Around(from[2], to[2], 0, far, 0, Math.PI);
    }
    double middle = Math.atan2((from[1] + to[1]) / 2, (from[0] + to[0]) / 2);
    double half = 0;
    for (int k = 0; k < 4; k++) {
      double x = (k & 1) == 0 ? from[0] : to[0];
      double y = (k & 2) == 0 ? from[1] : to[1];
      half = Math.max(half, Math.abs(turn(Math.atan2(y, x) - middle)));
    }
    return new Around(from[2], to[2], near, far, middle, half);
  }

  /** Returns an angle as one from -π to π. */
  static double turn(double rad) {
    return Math.IEEEremainder(rad, 2 * Math.PI);
  }

  /** Returns the room that holds this and another. */
  Around with(Around other) {
    double half = Math.max(halfRad, Math.abs(turn(other.middleRad - middleRad)) + other.halfRad);
    return new Around(
        Math.min(alongFrom, other.alongFrom),
        Math.max(alongTo, other.alongTo),
        Math.min(nearMm, other.nearMm),
        Math.max(farMm, other.farMm),
        middleRad,
        Math.min(Math.PI, half));
  }

  /**
   * Returns by how much this may be turned to each side of {@link #offRad} and be nearer to another
   * than a distance, rad; at least π where any turn will do, NaN where none will.
   */
  double withinRad(Around other, double mm) {
    double along = Math.max(0, Math.max(alongFrom - other.alongTo, other.alongFrom - alongTo));
    double out = Math.max(0, Math.max(nearMm - other.farMm, other.nearMm - farMm));
    if (Math.hypot(along, out) >= mm) {
      return Double.NaN;
    }
    double left = Math.sqrt(mm * mm - along * along);
    double near = Math.max(nearMm, other.nearMm);
    // something so far out is at least that times the sine off a direction, and off all behind it
    double chord = left >= near ? Math.PI : Math.asin(left / near);
    return halfRad + other.halfRad + chord;
  }

  /** Returns the turn that brings its middle to that of another, rad. */
  double offRad(Around other) {
    return turn(other.middleRad - middleRad);
  }
}
