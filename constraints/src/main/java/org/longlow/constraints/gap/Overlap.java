package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.rider.geom.PointMm;

/**
 * What two outlines have in common.
 *
 * <p>Its border is made of the pieces of each outline's edges that lie inside the other; area and
 * centroid are sums over those pieces (Green's theorem), and its corners are their ends. A piece
 * that runs along an edge of the other outline counts once, with the first outline, and only if
 * both bodies are on the same side of it.
 */
final class Overlap {

  /** Below this the outlines only touch, mm². */
  private static final double TOUCH_MM2 = 1e-6;

  /** Beside a piece, to tell on which side of a shared edge the bodies are, mm. */
  private static final double BESIDE_MM = 1e-7;

  private static final double NEAR = 1e-9;

  private final double x0;
  private final double z0;
  private final List<Coordinate> corners = new ArrayList<>();
  private final List<Coordinate> touches = new ArrayList<>();
  private double[] cuts = new double[8];
  private int cutCount;
  private double twiceArea;
  private double sixX;
  private double sixZ;

  /** Returns whether two outlines have more in common than a touch. */
  static boolean isThere(Edges a, Edges b) {
    return Nearest.of(a, b, Nearest.TOUCH_MM) == null
        ? a.holdsRing(b) || b.holdsRing(a)
        : !new Overlap(a, b).touchesOnly();
  }

  Overlap(Edges first, Edges second) {
    // sums about a point near by keep their digits
    this.x0 =
        (Math.max(first.boxes[4], second.boxes[4]) + Math.min(first.boxes[6], second.boxes[6])) / 2;
    this.z0 =
        (Math.max(first.boxes[5], second.boxes[5]) + Math.min(first.boxes[7], second.boxes[7])) / 2;
    walk(first, second, true);
    walk(second, first, false);
  }

  /** Returns the common area, mm². */
  double areaMm2() {
    return Math.max(0, twiceArea / 2);
  }

  /** Returns the ends of the pieces of its border. */
  List<Coordinate> corners() {
    return corners;
  }

  /** Returns whether they have no more in common than a touch. */
  boolean touchesOnly() {
    return !(areaMm2() > TOUCH_MM2);
  }

  /** Returns its centroid, or the middle of the places where the outlines touch. */
  PointMm middle() {
    if (!touchesOnly()) {
      return new PointMm(x0 + sixX / (3 * twiceArea), z0 + sixZ / (3 * twiceArea));
    }
    double x = 0;
    double z = 0;
    for (Coordinate c : touches) {
      x += c.x / touches.size();
      z += c.y / touches.size();
    }
    return touches.isEmpty() ? new PointMm(x0, z0) : new PointMm(x, z);
  }

  private void walk(Edges of, Edges other, boolean counts) {
    for (int r = 0; r + 1 < of.rings.length; r++) {
      boolean known = false;
      boolean in = false;
      for (int e = of.rings[r]; e < of.rings[r + 1]; e++) {
        double ax = of.ends[4 * e];
        double az = of.ends[4 * e + 1];
        double bx = of.ends[4 * e + 2];
        double bz = of.ends[4 * e + 3];
        double length = Math.sqrt((bx - ax) * (bx - ax) + (bz - az) * (bz - az));
        if (!(length > 0)) {
          continue;
        }
        cutCount = 0;
        cut(other, 1, ax, az, bx, bz, length);
        if (cutCount == 0) {
          // between two cuts nothing changes
          in = known ? in : within(other, ax, az, bx, bz, length, counts);
          known = true;
          if (in) {
            add(ax, az, bx, bz);
          }
          continue;
        }
        known = false;
        keepCut(0);
        keepCut(1);
        Arrays.sort(cuts, 0, cutCount);
        for (int i = 1; i < cutCount; i++) {
          if ((cuts[i] - cuts[i - 1]) * length > NEAR) {
            double px = ax + cuts[i - 1] * (bx - ax);
            double pz = az + cuts[i - 1] * (bz - az);
            double qx = ax + cuts[i] * (bx - ax);
            double qz = az + cuts[i] * (bz - az);
            if (within(other, px, pz, qx, qz, (cuts[i] - cuts[i - 1]) * length, counts)) {
              add(px, pz, qx, qz);
            }
          }
        }
      }
    }
  }

  private static boolean within(
      Edges other, double px, double pz, double qx, double qz, double length, boolean counts) {
    double mx = (px + qx) / 2;
    double mz = (pz + qz) / 2;
    double nx = -(qz - pz) / length * BESIDE_MM;
    double nz = (qx - px) / length * BESIDE_MM;
    return other.inside(mx + nx, mz + nz) && (counts || other.inside(mx - nx, mz - nz));
  }

  private void add(double px, double pz, double qx, double qz) {
    corners.add(new Coordinate(px, pz));
    corners.add(new Coordinate(qx, qz));
    double cross = (px - x0) * (qz - z0) - (pz - z0) * (qx - x0);
    twiceArea += cross;
    sixX += (px + qx - 2 * x0) * cross;
    sixZ += (pz + qz - 2 * z0) * cross;
  }

  private void cut(
      Edges other, int node, double ax, double az, double bx, double bz, double length) {
    int k = 4 * node;
    if (Math.max(ax, bx) < other.boxes[k] - NEAR
        || Math.max(az, bz) < other.boxes[k + 1] - NEAR
        || Math.min(ax, bx) > other.boxes[k + 2] + NEAR
        || Math.min(az, bz) > other.boxes[k + 3] + NEAR) {
      return;
    }
    if (node < other.firstLeaf) {
      cut(other, 2 * node, ax, az, bx, bz, length);
      cut(other, 2 * node + 1, ax, az, bx, bz, length);
      return;
    }
    int from = 4 * Edges.RUN * (node - other.firstLeaf);
    for (int e = from; e < Math.min(from + 4 * Edges.RUN, other.ends.length); e += 4) {
      cutBy(other.ends, e, ax, az, bx, bz, length);
    }
  }

  private void cutBy(
      double[] ends, int e, double ax, double az, double bx, double bz, double length) {
    double ux = (bx - ax) / length;
    double uz = (bz - az) / length;
    double from = ux * (ends[e + 1] - az) - uz * (ends[e] - ax);
    double to = ux * (ends[e + 3] - az) - uz * (ends[e + 2] - ax);
    double alongFrom = ux * (ends[e] - ax) + uz * (ends[e + 1] - az);
    double alongTo = ux * (ends[e + 2] - ax) + uz * (ends[e + 3] - az);
    if (Math.abs(from) <= NEAR) {
      touch(alongFrom, length, ax, az, ux, uz);
    }
    if (Math.abs(to) <= NEAR) {
      touch(alongTo, length, ax, az, ux, uz);
    }
    if (from > 0 != to > 0 && Math.abs(from - to) > NEAR) {
      touch(alongFrom + (alongTo - alongFrom) * from / (from - to), length, ax, az, ux, uz);
    }
  }

  private void touch(double along, double length, double ax, double az, double ux, double uz) {
    if (along >= -NEAR && along <= length + NEAR) {
      keepCut(Math.max(0, Math.min(1, along / length)));
      touches.add(new Coordinate(ax + along * ux, az + along * uz));
    }
  }

  private void keepCut(double share) {
    if (cutCount == cuts.length) {
      cuts = Arrays.copyOf(cuts, 2 * cutCount);
    }
    cuts[cutCount++] = share;
  }
}
