package org.longlow.constraints.gap;

import java.util.Arrays;

/**
 * The edge of the set of shifts by which one outline meets another, as segments.
 *
 * <p>An outline Q shifted by t meets P where t lies in the Minkowski sum of P and −Q. The edge of
 * that sum is part of the outlines' convolution: each edge of one set on those corners of the other
 * whose two edges enclose its direction; inner corners add nothing to it (Behar and Lien, Fast and
 * robust 2D Minkowski sum using reduced convolution, 2011). What lies inside is on the left.
 */
final class Sums {

  private static final double NEAR = 1e-12;

  /** Start x, start z, end x, end z of each segment, mm. */
  private double[] segments = new double[256];

  private int count;

  int count() {
    return count;
  }

  /** Returns coordinate {@code i} of segment {@code k}: start x, start z, end x, end z. */
  double at(int k, int i) {
    return segments[4 * k + i];
  }

  /** Adds those segments for two outlines that pass nearer to no shift than {@code withinMm}. */
  void add(Edges p, Edges q, double withinMm) {
    join(p, q, incoming(q), withinMm, 1);
    join(q, p, incoming(p), withinMm, -1);
  }

  /** Edges of one outline on outer corners of the other. */
  private void join(Edges of, Edges other, int[] incoming, double within, int sign) {
    for (int i = 0; i < of.firstLeaf; i++) {
      for (int j = 0; j < other.firstLeaf; j++) {
        if (boxesMm2(of, of.firstLeaf + i, other, other.firstLeaf + j) < within * within) {
          runs(of, i, other, j, incoming, within, sign);
        }
      }
    }
  }

  private static double boxesMm2(Edges a, int i, Edges b, int j) {
    int p = 4 * i;
    int q = 4 * j;
    double dx = Math.max(0, Math.max(a.boxes[p] - b.boxes[q + 2], b.boxes[q] - a.boxes[p + 2]));
    double dz =
        Math.max(0, Math.max(a.boxes[p + 1] - b.boxes[q + 3], b.boxes[q + 1] - a.boxes[p + 3]));
    return dx * dx + dz * dz;
  }

  private void runs(
      Edges of, int leafOf, Edges other, int leafOther, int[] incoming, double within, int sign) {
    int toOf = Math.min(Edges.RUN * (leafOf + 1), of.count());
    int toOther = Math.min(Edges.RUN * (leafOther + 1), other.count());
    for (int e = Edges.RUN * leafOf; e < toOf; e++) {
      double x0 = of.ends[4 * e];
      double z0 = of.ends[4 * e + 1];
      double x1 = of.ends[4 * e + 2];
      double z1 = of.ends[4 * e + 3];
      double ux = x1 - x0;
      double uz = z1 - z0;
      if (ux == 0 && uz == 0) {
        continue;
      }
      for (int v = Edges.RUN * leafOther; v < toOther; v++) {
        if (encloses(other.ends, incoming[v], v, ux, uz)) {
          double cx = other.ends[4 * v];
          double cz = other.ends[4 * v + 1];
          if (toSegmentMm2(x0 - cx, z0 - cz, x1 - cx, z1 - cz) < within * within) {
            keep(sign * (x0 - cx), sign * (z0 - cz), sign * (x1 - cx), sign * (z1 - cz));
          }
        }
      }
    }
  }

  /** Whether the corner at the start of an edge, turned half round, encloses a direction. */
  private static boolean encloses(double[] ends, int before, int edge, double ux, double uz) {
    int i = 4 * before;
    int o = 4 * edge;
    double ax = ends[i] - ends[i + 2];
    double az = ends[i + 1] - ends[i + 3];
    double bx = ends[o] - ends[o + 2];
    double bz = ends[o + 1] - ends[o + 3];
    return ax * bz - az * bx >= 0
        && isLeftOrAlong(ax, az, ux, uz)
        && isLeftOrAlong(ux, uz, bx, bz)
        && ax * ux + az * uz + bx * ux + bz * uz > 0
        && (bx != 0 || bz != 0);
  }

  /** Whether a direction is to the left of another or, but for rounding, along it. */
  private static boolean isLeftOrAlong(double fromX, double fromZ, double x, double z) {
    double cross = fromX * z - fromZ * x;
    return cross >= 0
        || cross * cross <= NEAR * NEAR * (fromX * fromX + fromZ * fromZ) * (x * x + z * z);
  }

  /** For each edge the one with a length that comes before it in its ring. */
  private static int[] incoming(Edges edges) {
    int[] before = new int[edges.count()];
    for (int r = 0; r + 1 < edges.rings.length; r++) {
      int first = edges.rings[r];
      int size = edges.rings[r + 1] - first;
      for (int i = 0; i < size; i++) {
        int back = 1;
        while (back < size && !hasLength(edges, first + (i - back + size) % size)) {
          back++;
        }
        before[first + i] = first + (i - back + size) % size;
      }
    }
    return before;
  }

  private static boolean hasLength(Edges edges, int e) {
    return edges.ends[4 * e] != edges.ends[4 * e + 2]
        || edges.ends[4 * e + 1] != edges.ends[4 * e + 3];
  }

  /** Returns the distance of a segment from no shift, squared, mm². */
  static double toSegmentMm2(double x0, double z0, double x1, double z1) {
    double ux = x1 - x0;
    double uz = z1 - z0;
    double square = ux * ux + uz * uz;
    double t = square > 0 ? -(x0 * ux + z0 * uz) / square : 0;
    t = t < 0 ? 0 : t > 1 ? 1 : t;
    double x = x0 + t * ux;
    double z = z0 + t * uz;
    return x * x + z * z;
  }

  private void keep(double x0, double z0, double x1, double z1) {
    if (4 * count == segments.length) {
      segments = Arrays.copyOf(segments, 2 * segments.length);
    }
    segments[4 * count] = x0;
    segments[4 * count + 1] = z0;
    segments[4 * count + 2] = x1;
    segments[4 * count + 3] = z1;
    count++;
  }
}
