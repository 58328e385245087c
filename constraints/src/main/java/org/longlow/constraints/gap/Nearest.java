package org.longlow.constraints.gap;

import org.longlow.rider.geom.PointMm;

/**
 * Searches the nearest points of two outlines' edges: both trees are gone down together, the nearer
 * boxes first, and boxes no nearer than the best found are passed over. Distances stay squared
 * until the end. For one thread and one search.
 */
final class Nearest {

  /** Closer than this is touching, mm: what is left of it is rounding. */
  static final double TOUCH_MM = 1e-9;

  private final Edges a;
  private final Edges b;
  private double best;
  private boolean found;

  private double ax;
  private double az;
  private double bx;
  private double bz;

  private Nearest(Edges a, Edges b, double cutMm) {
    this.a = a;
    this.b = b;
    this.best = cutMm * cutMm;
  }

  /**
   * Returns the search, done, or null if no edges are nearer than {@code cutMm}.
   *
   * @param cutMm only distances below this matter, mm, &gt;= 0
   */
  static Nearest of(Edges a, Edges b, double cutMm) {
    Nearest search = new Nearest(a, b, cutMm);
    if (search.between(1, 1) < search.best) {
      search.descend(1, 1);
    }
    return search.found ? search : null;
  }

  /** Returns the distance, mm; exactly 0 where the edges touch. */
  double distanceMm() {
    return best < TOUCH_MM * TOUCH_MM ? 0 : Math.sqrt(best);
  }

  /** Returns the middle between the nearest points. */
  PointMm middle() {
    return new PointMm((ax + bx) / 2, (az + bz) / 2);
  }

  private void descend(int i, int j) {
    boolean leafA = i >= a.firstLeaf;
    boolean leafB = j >= b.firstLeaf;
    if (leafA && leafB) {
      runs(i - a.firstLeaf, j - b.firstLeaf);
      return;
    }
    boolean splitA = leafB || (!leafA && size(a, i) >= size(b, j));
    int i0 = splitA ? 2 * i : i;
    int j0 = splitA ? j : 2 * j;
    int i1 = splitA ? i0 + 1 : i;
    int j1 = splitA ? j : j0 + 1;
    double near = between(i0, j0);
    double far = between(i1, j1);
    if (near <= far) {
      if (near < best) {
        descend(i0, j0);
      }
      if (far < best) {
        descend(i1, j1);
      }
    } else {
      if (far < best) {
        descend(i1, j1);
      }
      if (near < best) {
        descend(i0, j0);
      }
    }
  }

  private static double size(Edges edges, int node) {
    int k = 4 * node;
    return edges.boxes[k + 2] - edges.boxes[k] + edges.boxes[k + 3] - edges.boxes[k + 1];
  }

  /** Returns the squared distance of two boxes; infinite if one is empty. */
  private double between(int i, int j) {
    int p = 4 * i;
    int q = 4 * j;
    double dx = Math.max(a.boxes[p] - b.boxes[q + 2], b.boxes[q] - a.boxes[p + 2]);
    double dz = Math.max(a.boxes[p + 1] - b.boxes[q + 3], b.boxes[q + 1] - a.boxes[p + 3]);
    return (dx > 0 ? dx * dx : 0) + (dz > 0 ? dz * dz : 0);
  }

  private void runs(int leafA, int leafB) {
    int fromA = 4 * Edges.RUN * leafA;
    int fromB = 4 * Edges.RUN * leafB;
    int toA = Math.min(fromA + 4 * Edges.RUN, a.ends.length);
    int toB = Math.min(fromB + 4 * Edges.RUN, b.ends.length);
    for (int p = fromA; p < toA; p += 4) {
      for (int q = fromB; q < toB; q += 4) {
        edges(
            a.ends[p],
            a.ends[p + 1],
            a.ends[p + 2],
            a.ends[p + 3],
            b.ends[q],
            b.ends[q + 1],
            b.ends[q + 2],
            b.ends[q + 3]);
      }
    }
  }

  /** Two edges are nearest at an end of one of them, unless they cross. */
  private void edges(
      double p0x,
      double p0z,
      double p1x,
      double p1z,
      double q0x,
      double q0z,
      double q1x,
      double q1z) {
    double dx =
        Math.max(Math.min(p0x, p1x) - Math.max(q0x, q1x), Math.min(q0x, q1x) - Math.max(p0x, p1x));
    double dz =
        Math.max(Math.min(p0z, p1z) - Math.max(q0z, q1z), Math.min(q0z, q1z) - Math.max(p0z, p1z));
    double least = (dx > 0 ? dx * dx : 0) + (dz > 0 ? dz * dz : 0);
    if (least >= best) {
      return;
    }
    if (least == 0) {
      double ux = p1x - p0x;
      double uz = p1z - p0z;
      double vx = q1x - q0x;
      double vz = q1z - q0z;
      double cross = ux * vz - uz * vx;
      double wx = q0x - p0x;
      double wz = q0z - p0z;
      double t = (wx * vz - wz * vx) / cross;
      double s = (wx * uz - wz * ux) / cross;
      if (t >= 0 && t <= 1 && s >= 0 && s <= 1) {
        double x = p0x + t * ux;
        double z = p0z + t * uz;
        keep(0, x, z, x, z);
        return;
      }
    }
    fromEnd(p0x, p0z, q0x, q0z, q1x, q1z, true);
    fromEnd(p1x, p1z, q0x, q0z, q1x, q1z, true);
    fromEnd(q0x, q0z, p0x, p0z, p1x, p1z, false);
    fromEnd(q1x, q1z, p0x, p0z, p1x, p1z, false);
  }

  private void fromEnd(
      double x, double z, double x0, double z0, double x1, double z1, boolean endOfA) {
    double ux = x1 - x0;
    double uz = z1 - z0;
    double length2 = ux * ux + uz * uz;
    double t = length2 > 0 ? ((x - x0) * ux + (z - z0) * uz) / length2 : 0;
    t = t < 0 ? 0 : t > 1 ? 1 : t;
    double fx = x0 + t * ux;
    double fz = z0 + t * uz;
    double d2 = (x - fx) * (x - fx) + (z - fz) * (z - fz);
    if (d2 < best) {
      if (endOfA) {
        keep(d2, x, z, fx, fz);
      } else {
        keep(d2, fx, fz, x, z);
      }
    }
  }

  private void keep(double d2, double onAx, double onAz, double onBx, double onBz) {
    best = d2;
    found = true;
    ax = onAx;
    az = onAz;
    bx = onBx;
    bz = onBz;
  }
}
