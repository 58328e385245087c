package org.longlow.constraints.machine.chassis;

import java.util.function.DoubleUnaryOperator;

/**
 * A front wheel turned about its steering axis, its points turned one by one in space, and the
 * frame pitched until its lowest is on the road. mm and rad.
 */
public record TurnedWheel(
    double wheelbase, double front, double crown, double rear, double rake, double offset) {

  private static final double STEEPEST = 0.3;

  /** Radii of the circles of the front and of the rear contact. */
  public double[] radii(double lock) {
    double low = -STEEPEST;
    double high = STEEPEST;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (lowest(middle, lock)[2] < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double pitch = low;
    double[] touch = lowest(pitch, lock);
    // where the middle plane of the wheel cuts the road, by two points of the wheel at one height
    double[] one = onWheel(pitch, lock, bottom(pitch, lock) - 0.5);
    double level = one[2];
    double other =
        search(
            bottom(pitch, lock), bottom(pitch, lock) + 1, a -> onWheel(pitch, lock, a)[2] - level);
    double[] two = onWheel(pitch, lock, other);
    double[] heading = {two[0] - one[0], two[1] - one[1]};
    // rear: all places abreast of its contact; front: all places square to its heading
    double centre = touch[1] + touch[0] * heading[0] / heading[1];
    return new double[] {
      Math.hypot(touch[0], touch[1] - centre), Math.abs(centre),
    };
  }

  private double[] lowest(double pitch, double lock) {
    double[] ball = onWheel(pitch, lock, bottom(pitch, lock));
    return new double[] {ball[0], ball[1], ball[2] - crown};
  }

  /** The place along the ring of the tyre at which it is lowest, by thirds. */
  private double bottom(double pitch, double lock) {
    double low = -Math.PI;
    double high = 0;
    for (int i = 0; i < 90; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (onWheel(pitch, lock, a)[2] < onWheel(pitch, lock, b)[2]) {
        high = b;
      } else {
        low = a;
      }
    }
    return low;
  }

  private static double search(double from, double to, DoubleUnaryOperator rises) {
    double low = from;
    double high = to;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (rises.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** A point of the ring, turned about the axis by Rodrigues, then with the frame. */
  private double[] onWheel(double pitch, double lock, double angle) {
    double ring = front - crown;
    double[] p = {
      wheelbase + ring * Math.cos(angle), 0, front + ring * Math.sin(angle),
    };
    double[] up = {-Math.sin(rake), 0, Math.cos(rake)};
    double[] at = {wheelbase - offset * Math.cos(rake), 0, front - offset * Math.sin(rake)};
    double[] v = {p[0] - at[0], p[1], p[2] - at[2]};
    double along = v[0] * up[0] + v[2] * up[2];
    double[] square = {
      up[1] * v[2] - up[2] * v[1], up[2] * v[0] - up[0] * v[2], up[0] * v[1] - up[1] * v[0]
    };
    double[] q = new double[3];
    for (int k = 0; k < 3; k++) {
      q[k] =
          at[k]
              + v[k] * Math.cos(lock)
              + square[k] * Math.sin(lock)
              + up[k] * along * (1 - Math.cos(lock));
    }
    double z = q[2] - rear;
    return new double[] {
      q[0] * Math.cos(pitch) - z * Math.sin(pitch),
      q[1],
      rear + q[0] * Math.sin(pitch) + z * Math.cos(pitch)
    };
  }
}
