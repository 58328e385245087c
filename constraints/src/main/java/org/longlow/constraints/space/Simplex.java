package org.longlow.constraints.space;

/**
 * Up to four points, and of their hull the one nearest to the origin (Ericson, Real-Time Collision
 * Detection, 2005, section 5.1). For one thread.
 */
final class Simplex {

  /** The points, the first {@link #size} of them. */
  final double[][] points = new double[4][3];

  /** What belongs to each point, such as where it comes from. */
  final double[][] with = new double[4][3];

  /** How much of each point is in the nearest one; they add up to 1. */
  private final double[] share = new double[4];

  private final double[] tried = new double[3];
  private final double[] kept = new double[4];
  private int size;

  void clear() {
    size = 0;
  }

  int size() {
    return size;
  }

  void add(double[] point, double[] itsOwn) {
    System.arraycopy(point, 0, points[size], 0, 3);
    System.arraycopy(itsOwn, 0, with[size], 0, 3);
    size++;
  }

  /**
   * Puts the nearest point of the hull into {@code out} and leaves only the points it lies between.
   *
   * @return false if the origin lies within four points
   */
  boolean nearest(double[] out) {
    if (size == 4 && !face()) {
      return false;
    }
    if (size == 3) {
      triangle(0, 1, 2, share);
    } else if (size == 2) {
      segment();
    } else if (size == 1) {
      share[0] = 1;
    }
    reduce();
    for (int k = 0; k < 3; k++) {
      out[k] = 0;
      for (int i = 0; i < size; i++) {
        out[k] += share[i] * points[i][k];
      }
    }
    return true;
  }

  /** Puts what belongs to the nearest point into {@code out}. */
  void itsOwn(double[] out) {
    for (int k = 0; k < 3; k++) {
      out[k] = 0;
      for (int i = 0; i < size; i++) {
        out[k] += share[i] * with[i][k];
      }
    }
  }

  private void segment() {
    double[] a = points[0];
    double[] b = points[1];
    double length2 = 0;
    double on = 0;
    for (int k = 0; k < 3; k++) {
      double u = b[k] - a[k];
      length2 += u * u;
      on -= a[k] * u;
    }
    double t = length2 > 0 ? Math.max(0, Math.min(1, on / length2)) : 0;
    share[0] = 1 - t;
    share[1] = t;
  }

  /** Leaves three of four points: the side of the tetrahedron nearest to an origin outside. */
  private boolean face() {
    double best = Double.POSITIVE_INFINITY;
    int without = -1;
    for (int gone = 0; gone < 4; gone++) {
      int i = gone == 0 ? 1 : 0;
      int j = gone <= 1 ? 2 : 1;
      int k = gone <= 2 ? 3 : 2;
      if (outside(i, j, k, gone)) {
        triangle(i, j, k, tried);
        double far = 0;
        for (int c = 0; c < 3; c++) {
          double at = tried[0] * points[i][c] + tried[1] * points[j][c] + tried[2] * points[k][c];
          far += at * at;
        }
        if (far < best) {
          best = far;
          without = gone;
        }
      }
    }
    if (without < 0) {
      return false;
    }
    drop(without);
    return true;
  }

  /** Whether the origin is not on the side of a plane through three points where a fourth is. */
  private boolean outside(int i, int j, int k, int fourth) {
    double[] a = points[i];
    double ux = points[j][0] - a[0];
    double uy = points[j][1] - a[1];
    double uz = points[j][2] - a[2];
    double vx = points[k][0] - a[0];
    double vy = points[k][1] - a[1];
    double vz = points[k][2] - a[2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double[] d = points[fourth];
    double origin = -(a[0] * nx + a[1] * ny + a[2] * nz);
    double other = (d[0] - a[0]) * nx + (d[1] - a[1]) * ny + (d[2] - a[2]) * nz;
    return origin * other <= 0;
  }

  /** Puts the shares of three points in the point of their triangle nearest to the origin. */
  private void triangle(int i, int j, int k, double[] into) {
    double[] a = points[i];
    double[] b = points[j];
    double[] c = points[k];
    double d1 = 0;
    double d2 = 0;
    double d3 = 0;
    double d4 = 0;
    double d5 = 0;
    double d6 = 0;
    for (int n = 0; n < 3; n++) {
      double ab = b[n] - a[n];
      double ac = c[n] - a[n];
      d1 -= ab * a[n];
      d2 -= ac * a[n];
      d3 -= ab * b[n];
      d4 -= ac * b[n];
      d5 -= ab * c[n];
      d6 -= ac * c[n];
    }
    double va = d3 * d6 - d5 * d4;
    double vb = d5 * d2 - d1 * d6;
    double vc = d1 * d4 - d3 * d2;
    if (d1 <= 0 && d2 <= 0) {
      put(into, 1, 0, 0);
    } else if (d3 >= 0 && d4 <= d3) {
      put(into, 0, 1, 0);
    } else if (d6 >= 0 && d5 <= d6) {
      put(into, 0, 0, 1);
    } else if (vc <= 0 && d1 >= 0 && d3 <= 0) {
      put(into, -d3 / (d1 - d3), d1 / (d1 - d3), 0);
    } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
      put(into, -d6 / (d2 - d6), 0, d2 / (d2 - d6));
    } else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
      double t = (d4 - d3) / (d4 - d3 + (d5 - d6));
      put(into, 0, 1 - t, t);
    } else {
      double sum = va + vb + vc;
      put(into, va / sum, vb / sum, vc / sum);
    }
  }

  private static void put(double[] into, double a, double b, double c) {
    into[0] = a;
    into[1] = b;
    into[2] = c;
  }

  private void reduce() {
    System.arraycopy(share, 0, kept, 0, 4);
    int all = size;
    int gone = 0;
    for (int i = 0; i < all; i++) {
      if (!(kept[i] > 0)) {
        drop(i - gone);
        gone++;
      } else {
        share[i - gone] = kept[i];
      }
    }
  }

  private void drop(int i) {
    double[] point = points[i];
    double[] its = with[i];
    for (int k = i; k + 1 < size; k++) {
      points[k] = points[k + 1];
      with[k] = with[k + 1];
    }
    points[size - 1] = point;
    with[size - 1] = its;
    size--;
  }
}
