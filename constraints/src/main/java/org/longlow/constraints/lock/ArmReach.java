package org.longlow.constraints.lock;

import org.longlow.rider.geom.PointMm;

/**
 * How far a shoulder is from a grip that turns about an axis: by the law of cosines the square of
 * it is a constant less one cosine of the turn.
 *
 * @param square that constant, mm²
 * @param swing the factor of the cosine, mm², &gt;= 0
 * @param leastRad the turn at which the grip is nearest, left positive, rad
 */
record ArmReach(double square, double swing, double leastRad) {

  /**
   * Returns it.
   *
   * @param yShoulder middle plane to the shoulder, left positive, mm
   * @param yGrip middle plane to the grip, likewise
   */
  static ArmReach of(
      SteeringAxis axis, PointMm shoulder, double yShoulder, PointMm grip, double yGrip) {
    double s = axis.aheadMm(shoulder);
    double g = axis.aheadMm(grip);
    double along = axis.alongMm(shoulder) - axis.alongMm(grip);
    double cos = s * g + yShoulder * yGrip;
    double sin = yShoulder * g - s * yGrip;
    return new ArmReach(
        along * along + s * s + yShoulder * yShoulder + g * g + yGrip * yGrip,
        2 * Math.hypot(cos, sin),
        Math.atan2(sin, cos));
  }

  /** Returns the distance at a turn, mm. */
  double mm(double turnRad) {
    return Math.sqrt(Math.max(0, square - swing * Math.cos(turnRad - leastRad)));
  }

  /** Returns the greatest distance on the way to a lock on either side, mm. */
  double mostMm(double lockRad) {
    double farthest = leastRad > 0 ? leastRad - Math.PI : leastRad + Math.PI;
    double ends = Math.max(mm(lockRad), mm(-lockRad));
    return Math.abs(farthest) <= lockRad ? Math.max(ends, mm(farthest)) : ends;
  }

  /** Returns the least distance on the way to a lock on either side, mm. */
  double leastMm(double lockRad) {
    double ends = Math.min(mm(lockRad), mm(-lockRad));
    return Math.abs(leastRad) <= lockRad ? Math.min(ends, mm(leastRad)) : ends;
  }

  /**
   * Returns how far it may turn to a side before the grip is farther than {@code most} or nearer
   * than {@code least}, mm; rad, 0 where it is so straight ahead.
   */
  double keptRad(boolean left, double least, double most) {
    double straight = mm(0);
    if (straight > most || straight < least) {
      return 0;
    }
    // to the right it is the mirror image
    double nearest = left ? leastRad : -leastRad;
    double far = turn(nearest + half(most));
    double near = half(least) > 0 ? turn(nearest - half(least)) : Double.POSITIVE_INFINITY;
    return Math.min(half(most) >= Math.PI ? Double.POSITIVE_INFINITY : far, near);
  }

  /** How far on both sides of the nearest turn it is nearer than a distance, rad, 0 to π. */
  private double half(double mm) {
    double cos = (square - mm * mm) / swing;
    return cos >= 1 ? 0 : cos <= -1 || swing == 0 ? Math.PI : Math.acos(cos);
  }

  private static double turn(double rad) {
    double once = rad % (2 * Math.PI);
    return once < 0 ? once + 2 * Math.PI : once;
  }
}
