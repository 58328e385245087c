package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.longlow.constraints.space.Piece;

/**
 * A convex body as seen from a point: the convex polygon of its corners, each told by how far it is
 * to one side and up for each mm ahead. What is straight stays straight so.
 */
final class Tangents {

  /** What is nearer ahead than this is left off, mm. */
  private static final double NEAREST_MM = 0.1;

  /** Sides told apart no finer. */
  private static final double FINE = 1e-9;

  /** Side and up of its corners, in turn. */
  private final List<double[]> ring;

  private Tangents(List<double[]> ring) {
    this.ring = ring;
  }

  /**
   * Returns how a body is seen.
   *
   * @param rings of its corners as {@link Piece#rings} tells them, each ahead, to the side and up
   *     of the point, mm
   */
  static Tangents of(List<double[][]> rings) {
    List<double[]> seen = new ArrayList<>();
    for (int k = 0; k < rings.size(); k++) {
      double[][] ring = rings.get(k);
      for (int i = 0; i < ring.length; i++) {
        double[] c = ring[i];
        if (c[0] >= NEAREST_MM) {
          seen.add(new double[] {c[1] / c[0], c[2] / c[0]});
        }
        if (ring.length == 1) {
          rings.subList(k + 1, rings.size()).forEach(other -> addCut(c, other[0], seen));
        } else {
          addCut(c, ring[(i + 1) % ring.length], seen);
          if (k + 1 < rings.size()) {
            addCut(c, rings.get(k + 1)[i], seen);
          }
        }
      }
    }
    return new Tangents(hull(seen));
  }

  /** Adds where an edge comes as near to the face as is looked, if it comes from beyond that. */
  private static void addCut(double[] c, double[] d, List<double[]> seen) {
    if (c[0] < NEAREST_MM != d[0] < NEAREST_MM) {
      double share = (NEAREST_MM - c[0]) / (d[0] - c[0]);
      seen.add(
          new double[] {
            (c[1] + share * (d[1] - c[1])) / NEAREST_MM, (c[2] + share * (d[2] - c[2])) / NEAREST_MM
          });
    }
  }

  /** Corners of the hull, against the clock (Andrew's chain). */
  private static List<double[]> hull(List<double[]> points) {
    if (points.isEmpty()) {
      return List.of();
    }
    List<double[]> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
    List<double[]> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int start = hull.size();
      for (double[] p : sorted) {
        while (hull.size() > start + 1
            && turn(hull.get(hull.size() - 2), hull.get(hull.size() - 1), p) <= 0) {
          hull.remove(hull.size() - 1);
        }
        hull.add(p);
      }
      if (hull.size() > start + 1 || pass > 0) {
        hull.remove(hull.size() - 1);
      }
      Collections.reverse(sorted);
    }
    return hull;
  }

  /** Returns whether the body stands straight ahead, on the level. */
  boolean straightAhead() {
    return first(1, 0, 0, 0) == 0;
  }

  private static double turn(double[] a, double[] b, double[] c) {
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  }

  /**
   * Returns the first angle to one side at which the body stands somewhere between two elevations,
   * rad; a right angle if it does nowhere.
   *
   * @param side 1 or -1
   * @param most as far as is looked, less than a right angle, rad
   * @param down the lowest ray below the level, rad
   * @param up the highest ray above the level, rad
   */
  double first(int side, double most, double down, double up) {
    double[] tangents = {-Math.tan(down), Math.tan(up)};
    double end = Math.tan(most);
    List<Double> sides = new ArrayList<>(List.of(0.0));
    for (int i = 0; i < ring.size(); i++) {
      double[] p = ring.get(i);
      double[] q = ring.get((i + 1) % ring.size());
      sides.add(side * p[0]);
      for (double tangent : tangents) {
        crossings(side * p[0], p[1], side * q[0], q[1], tangent, sides);
      }
    }
    double first = Double.POSITIVE_INFINITY;
    for (double s : sides) {
      if (s >= 0 && s <= end && s < first && stands(side * s, tangents)) {
        first = s;
      }
    }
    return Math.atan(first);
  }

  /** Where an edge crosses the rays of an elevation, which rise as the root of 1 + s². */
  private static void crossings(
      double s, double w, double s2, double w2, double tangent, List<Double> sides) {
    if (Math.abs(s2 - s) < FINE) {
      return;
    }
    double slope = (w2 - w) / (s2 - s);
    double at = w - slope * s;
    double a = tangent * tangent - slope * slope;
    double b = -2 * at * slope;
    double c = tangent * tangent - at * at;
    if (Math.abs(a) < 1e-15) {
      if (b != 0) {
        sides.add(-c / b);
      }
      return;
    }
    double root = b * b - 4 * a * c;
    if (root >= 0) {
      sides.add((-b + Math.sqrt(root)) / (2 * a));
      sides.add((-b - Math.sqrt(root)) / (2 * a));
    }
  }

  private boolean stands(double s, double[] tangents) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      double[] p = ring.get(i);
      double[] q = ring.get((i + 1) % ring.size());
      double from = Math.min(p[0], q[0]) - FINE;
      double to = Math.max(p[0], q[0]) + FINE;
      if (s < from || s > to) {
        continue;
      }
      boolean upright = Math.abs(q[0] - p[0]) < FINE;
      double share = upright ? 0 : Math.max(0, Math.min(1, (s - p[0]) / (q[0] - p[0])));
      double w = p[1] + share * (q[1] - p[1]);
      low = Math.min(low, upright ? Math.min(p[1], q[1]) : w);
      high = Math.max(high, upright ? Math.max(p[1], q[1]) : w);
    }
    double rise = Math.sqrt(1 + s * s);
    return low <= tangents[1] * rise + FINE && high >= tangents[0] * rise - FINE;
  }
}
