package org.longlow.constraints.space;

import org.longlow.rider.geom.PointMm;

/** A point of the machine, or a displacement, in mm: x forward, y left, z up (ISO 8855). */
public record SpaceMm(double x, double y, double z) {

  /** Returns a point of the elevation so far to the left of the middle plane. */
  public static SpaceMm of(PointMm p, double yMm) {
    return new SpaceMm(p.x(), yMm, p.z());
  }

  /** Returns where it is seen in the elevation. */
  public PointMm side() {
    return new PointMm(x, z);
  }

  public SpaceMm plus(SpaceMm o) {
    return new SpaceMm(x + o.x, y + o.y, z + o.z);
  }

  public SpaceMm minus(SpaceMm o) {
    return new SpaceMm(x - o.x, y - o.y, z - o.z);
  }

  public SpaceMm times(double factor) {
    return new SpaceMm(x * factor, y * factor, z * factor);
  }

  public double dot(SpaceMm o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public SpaceMm cross(SpaceMm o) {
    return new SpaceMm(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public double distance(SpaceMm o) {
    return minus(o).length();
  }

  /** Returns the angle to another direction, rad, in [0, π]. */
  public double angleRad(SpaceMm o) {
    return Math.atan2(cross(o).length(), dot(o));
  }
}
