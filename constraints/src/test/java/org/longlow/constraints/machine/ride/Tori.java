package org.longlow.constraints.machine.ride;

import java.util.function.DoubleUnaryOperator;

/**
 * Two tori pitched and rolled in space until one road touches both: matrices, and searches for the
 * lowest points, where the machine's own sums have closed forms. Axes of the road: x forward, y to
 * the side leaned to, z up, from the rear contact's height.
 */
public final class Tori {

  private static final double STEEPEST_PITCH = 1;

  private final double roll;
  private final double pitch;
  private final double down;

  /** The lowest point of each tyre, mm. */
  public final double[] frontContact;

  public final double[] rearContact;

  /** Tyres of these radii and crowns, upright on one line, rolled. */
  public Tori(
      double wheelbase,
      double frontRadius,
      double frontCrown,
      double rearRadius,
      double rearCrown,
      double roll) {
    this.roll = roll;
    double low = -STEEPEST_PITCH;
    double high = STEEPEST_PITCH;
    for (int i = 0; i < 56; i++) {
      double middle = (low + high) / 2;
      double front = lowest(middle, wheelbase, frontRadius, frontCrown)[2];
      double rear = lowest(middle, 0, rearRadius, rearCrown)[2];
      if (front < rear) { // nose too low
        low = middle;
      } else {
        high = middle;
      }
    }
    pitch = low;
    double[] front = lowest(pitch, wheelbase, frontRadius, frontCrown);
    double[] rear = lowest(pitch, 0, rearRadius, rearCrown);
    down = rear[2];
    frontContact = new double[] {front[0], front[1], front[2] - down};
    rearContact = new double[] {rear[0], rear[1], 0};
  }

  /** Where a point of the upright machine has gone. */
  public double[] at(double x, double y, double z) {
    double[] p = turned(pitch, x, y, z);
    return new double[] {p[0], p[1], p[2] - down};
  }

  private double[] turned(double nose, double x, double y, double z) {
    double ahead = x * Math.cos(nose) - z * Math.sin(nose);
    double up = x * Math.sin(nose) + z * Math.cos(nose);
    return new double[] {
      ahead, y * Math.cos(roll) + up * Math.sin(roll), up * Math.cos(roll) - y * Math.sin(roll)
    };
  }

  /** A torus is a ring of balls: the lowest ball of the ring, found by thirds, and its bottom. */
  private double[] lowest(double nose, double x, double radius, double crown) {
    double ring = radius - crown;
    double sin = Math.sin(nose);
    double cos = Math.cos(nose);
    // by how much a ball is up in the plane of the wheel
    DoubleUnaryOperator height =
        a -> (x + ring * Math.cos(a)) * sin + (radius + ring * Math.sin(a)) * cos;
    double low = -Math.PI / 2 - STEEPEST_PITCH;
    double high = -Math.PI / 2 + STEEPEST_PITCH;
    for (int i = 0; i < 56; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (height.applyAsDouble(a) < height.applyAsDouble(b)) {
        high = b;
      } else {
        low = a;
      }
    }
    double[] ball = turned(nose, x + ring * Math.cos(low), 0, radius + ring * Math.sin(low));
    return new double[] {ball[0], ball[1], ball[2] - crown};
  }

  /**
   * How far a point is past the vertical plane through the contacts, and how high, by the moments
   * of unit forces about the line of the contacts.
   */
  public double[] levers(double x, double y, double z) {
    double[] p = at(x, y, z);
    double[] line = {frontContact[0] - rearContact[0], frontContact[1] - rearContact[1], 0};
    double length = Math.hypot(line[0], line[1]);
    double[] arm = {p[0] - rearContact[0], p[1] - rearContact[1], p[2]};
    // weight (0, 0, -1) and a pull across the wheels (0, -1, 0): arm x force, along the line
    double weight = (-arm[1] * line[0] + arm[0] * line[1]) / length;
    double pull = arm[2] * line[0] / length;
    return new double[] {-weight, pull};
  }
}
