package org.longlow.constraints.lock;

import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Separation;

/** A convex body turned about an axis by an angle that may be changed. For one thread. */
public final class Turned implements Convex {

  /** What is nearer than this is in the same place, mm. */
  private static final double LEAST_MM = 1e-9;

  private final Convex body;
  private final SteeringAxis axis;
  private double cos = 1;
  private double sin;
  private final double[] back = new double[3];
  private final double[] way = new double[3];
  private final double[] on = new double[3];

  Turned(Convex body, SteeringAxis axis) {
    this.body = body;
    this.axis = axis;
  }

  /**
   * Returns a body turned about an axis.
   *
   * @param turnRad left positive, rad
   */
  public static Turned of(Convex body, SteeringAxis axis, double turnRad) {
    Turned turned = new Turned(body, axis);
    turned.turn(turnRad);
    return turned;
  }

  /** Returns where a point, forward, to the left and up, is turned to. */
  public static double[] point(SteeringAxis axis, double[] p, double turnRad) {
    double[] out = new double[3];
    of((d, at) -> {}, axis, turnRad).point(p, out);
    return out;
  }

  void turn(double rad) {
    cos = Math.cos(rad);
    sin = Math.sin(rad);
  }

  @Override
  public void farthest(double[] d, double[] out) {
    turn(d[0], d[1], d[2], -sin, back);
    body.farthest(back, out);
    point(out, out);
  }

  /**
   * Returns how far the body reaches in a direction whose part square to the axis is so many times
   * as long, seen from the axis.
   */
  double reach(double[] d, double longer) {
    double upX = axis.up().x();
    double upZ = axis.up().z();
    double along = (d[0] * upX + d[2] * upZ) * (1 - longer);
    way[0] = longer * d[0] + along * upX;
    way[1] = longer * d[1];
    way[2] = longer * d[2] + along * upZ;
    farthest(way, on);
    double atX = axis.at().x();
    double atZ = axis.at().z();
    return way[0] * (on[0] - atX)
        + way[1] * on[1]
        + way[2] * (on[2] - atZ)
        + d[0] * atX
        + d[2] * atZ;
  }

  /**
   * Returns how far the plane that a search was left with keeps another body from this one while
   * this turns, mm. A direction that turns stays between where it begins, where it ends, and where
   * the tangents there meet; how far a body reaches is convex in the direction, so that of these
   * three most is the bound.
   */
  double keptOver(Separation search, Convex past, double middleRad, double halfRad) {
    double[] v = new double[3];
    search.direction(v);
    double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    if (length < LEAST_MM || halfRad >= Math.PI / 4) {
      return 0;
    }
    double[] minus = {-v[0], -v[1], -v[2]};
    turn(middleRad - halfRad);
    double most = reach(minus, 1);
    turn(middleRad + halfRad);
    most = Math.max(most, reach(minus, 1));
    turn(middleRad);
    most = Math.max(most, reach(minus, 1 / Math.cos(halfRad)));
    past.farthest(v, on);
    return -(most + v[0] * on[0] + v[1] * on[1] + v[2] * on[2]) / length;
  }

  /** Puts where a point of the body is turned to into {@code out}. */
  void point(double[] p, double[] out) {
    turn(p[0] - axis.at().x(), p[1], p[2] - axis.at().z(), sin, out);
    out[0] += axis.at().x();
    out[2] += axis.at().z();
  }

  private void turn(double x, double y, double z, double s, double[] into) {
    double upX = axis.up().x();
    double upZ = axis.up().z();
    double ahead = x * upZ - z * upX;
    double along = x * upX + z * upZ;
    double turned = cos * ahead - s * y;
    into[0] = turned * upZ + along * upX;
    into[1] = s * ahead + cos * y;
    into[2] = along * upZ - turned * upX;
  }
}
