package org.longlow.constraints.lock;

import org.longlow.rider.geom.PointMm;

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
    if (Math.abs(rad) <= Math.PI) {
      return rad;
    }
    // up to a turn and a half the difference is exact, as the remainder is, and much quicker
    return Math.abs(rad) <= 3 * Math.PI
        ? rad - Math.copySign(2 * Math.PI, rad)
        : Math.IEEEremainder(rad, 2 * Math.PI);
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
    double left2 = mm * mm - along * along;
    if (along >= mm || out * out >= left2) {
      return Double.NaN;
    }
    double left = Math.sqrt(left2);
    double near = Math.max(nearMm, other.nearMm);
    // something so far out is at least that times the sine off a direction, and off all behind it
    double chord = left >= near ? Math.PI : Math.asin(left / near);
    return halfRad + other.halfRad + chord;
  }

  /** Returns the box, from and to forward, to the left and up, that holds it over a turn, mm. */
  Swept swept(SteeringAxis axis, double fromRad, double toRad) {
    double low = middleRad - halfRad + fromRad;
    double high = middleRad + halfRad + toRad;
    double[] ahead = reach(low, high);
    double[] left = reach(low - Math.PI / 2, high - Math.PI / 2);
    double[] from = {Double.POSITIVE_INFINITY, left[0], Double.POSITIVE_INFINITY};
    double[] to = {Double.NEGATIVE_INFINITY, left[1], Double.NEGATIVE_INFINITY};
    for (int k = 0; k < 4; k++) {
      PointMm p = axis.point(ahead[k & 1], (k & 2) == 0 ? alongFrom : alongTo);
      from[0] = Math.min(from[0], p.x());
      to[0] = Math.max(to[0], p.x());
      from[2] = Math.min(from[2], p.z());
      to[2] = Math.max(to[2], p.z());
    }
    return new Swept(from, to);
  }

  /** Least and greatest place towards direction 0 of what lies between two directions. */
  private double[] reach(double low, double high) {
    double most = has(low, high, 0) ? 1 : Math.max(Math.cos(low), Math.cos(high));
    double least = has(low, high, Math.PI) ? -1 : Math.min(Math.cos(low), Math.cos(high));
    return new double[] {least * (least < 0 ? farMm : nearMm), most * (most < 0 ? nearMm : farMm)};
  }

  private static boolean has(double low, double high, double rad) {
    return Math.floor((high - rad) / (2 * Math.PI)) >= Math.ceil((low - rad) / (2 * Math.PI));
  }

  /** A box of the axes of the machine. */
  record Swept(double[] from, double[] to) {

    double apartMm(Swept other) {
      double square = 0;
      for (int k = 0; k < 3; k++) {
        double gap = Math.max(0, Math.max(from[k] - other.to[k], other.from[k] - to[k]));
        square += gap * gap;
      }
      return Math.sqrt(square);
    }
  }

  /** Returns the turn that brings its middle to that of another, rad. */
  double offRad(Around other) {
    return turn(other.middleRad - middleRad);
  }
}
