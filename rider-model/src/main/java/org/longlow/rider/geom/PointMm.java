package org.longlow.rider.geom;

/**
 * A point (or a displacement) of the elevation, in mm: x forward, z up, origin on the ground under
 * the rear contact point (axes after ISO 8855).
 *
 * @param x forward, mm, finite
 * @param z up, mm, finite
 */
public record PointMm(double x, double z) {

  /** The origin of the elevation: the ground under the rear contact point. */
  public static final PointMm ORIGIN = new PointMm(0, 0);

  public PointMm {
    if (!Double.isFinite(x) || !Double.isFinite(z)) {
      throw new OutOfRange("point needs finite mm coordinates, got x=" + x + ", z=" + z);
    }
  }

  /** Returns the unit vector at {@code angleRad} from +x, counter-clockwise (towards +z). */
  public static PointMm unit(double angleRad) {
    return new PointMm(Math.cos(angleRad), Math.sin(angleRad));
  }

  public PointMm plus(PointMm other) {
    return new PointMm(x + other.x, z + other.z);
  }

  public PointMm minus(PointMm other) {
    return new PointMm(x - other.x, z - other.z);
  }

  public PointMm times(double factor) {
    return new PointMm(x * factor, z * factor);
  }

  /** Returns the point {@code share} of the way from here to {@code other}; 0 is here. */
  public PointMm towards(PointMm other, double share) {
    return new PointMm(x + share * (other.x - x), z + share * (other.z - z));
  }

  public double dot(PointMm other) {
    return x * other.x + z * other.z;
  }

  /** Returns x·other.z − z·other.x, positive when {@code other} lies counter-clockwise of this. */
  public double cross(PointMm other) {
    return x * other.z - z * other.x;
  }

  /** Returns this vector turned a quarter turn counter-clockwise. */
  public PointMm left() {
    return new PointMm(-z, x);
  }

  /** Returns this vector turned by {@code angleRad} counter-clockwise about the origin. */
  public PointMm turned(double angleRad) {
    return turnedTo(unit(angleRad));
  }

  /** Returns this vector turned as the x axis is turned to a unit vector. */
  public PointMm turnedTo(PointMm ahead) {
    return new PointMm(ahead.x * x - ahead.z * z, ahead.z * x + ahead.x * z);
  }

  /** Returns this point turned by {@code angleRad} counter-clockwise about {@code centre}. */
  public PointMm turnedAbout(PointMm centre, double angleRad) {
    return minus(centre).turned(angleRad).plus(centre);
  }

  /** Returns the image of this point across the line through two points; itself if they are one. */
  public PointMm mirrored(PointMm a, PointMm b) {
    PointMm along = b.minus(a);
    double square = along.dot(along);
    if (square == 0) {
      return this;
    }
    PointMm from = minus(a);
    return a.plus(along.times(2 * from.dot(along) / square)).minus(from);
  }

  public double length() {
    return norm(x, z);
  }

  public double distance(PointMm other) {
    return norm(x - other.x, z - other.z);
  }

  /**
   * Returns the length of a vector. Lengths of machines are far from where squares overflow, so
   * this is many times quicker than {@link Math#hypot} and as near the truth but for the last bit.
   */
  public static double norm(double x, double z) {
    return Math.sqrt(x * x + z * z);
  }

  /** Returns the direction of this vector from +x, rad in (−π, π], counter-clockwise. */
  public double angleRad() {
    return Math.atan2(z, x);
  }
}
