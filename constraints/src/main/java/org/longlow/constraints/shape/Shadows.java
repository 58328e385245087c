package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Convex;

/** The outlines of convex bodies on a page. */
public final class Shadows {

  /**
   * Into how many directions of the page a body is asked how far it reaches; a multiple of 4, so
   * that the outermost points are among them. A circle of 300 mm is drawn to within 0.1 mm.
   */
  private static final int WAYS = 128;

  private static final int QUARTER = WAYS / 4;

  private static final double[] ACROSS = new double[WAYS];
  private static final double[] UP = new double[WAYS];

  static {
    for (int i = 0; i < WAYS; i++) {
      double a = 2 * Math.PI * i / WAYS;
      ACROSS[i] = exact(Math.cos(a));
      UP[i] = exact(Math.sin(a));
    }
  }

  /** What so asked lies nearer together is one point, mm. */
  private static final double SAME_MM = 1e-6;

  private Shadows() {}

  /**
   * Returns the outline of a body whose first two axes are those of the page; a line or a point
   * where it has no area. What reaches farthest to each side is exact.
   *
   * @param flatnessMm points are left out where the line past them misses them by no more
   */
  public static Geometry of(Convex seen, double flatnessMm) {
    return Curves.FACTORY.createMultiPointFromCoords(corners(seen, flatnessMm)).convexHull();
  }

  /** Returns points whose hull {@link #of} returns. */
  public static Coordinate[] corners(Convex seen, double flatnessMm) {
    double[][] asked = farthest(seen);
    List<Coordinate> ring = new ArrayList<>();
    List<Integer> outermost = new ArrayList<>();
    Coordinate last = null;
    for (int i = 0; i < WAYS; i++) {
      double[] at = asked[i];
      if (last == null || Math.hypot(last.x - at[0], last.y - at[1]) > SAME_MM) {
        last = new Coordinate(at[0], at[1]);
        ring.add(last);
      }
      if (i % QUARTER == 0) {
        outermost.add(ring.size() - 1);
      }
    }
    ring.add(ring.get(0));
    outermost.add(ring.size() - 1);
    List<Coordinate> kept = new ArrayList<>(List.of(ring.get(0)));
    for (int k = 1; k < outermost.size(); k++) {
      if (outermost.get(k) > outermost.get(k - 1)) {
        thin(ring, outermost.get(k - 1), outermost.get(k), flatnessMm, kept);
        kept.add(ring.get(outermost.get(k)));
      }
    }
    return kept.toArray(Coordinate[]::new);
  }

  /** Returns how far a body reaches each way, without asking between two that reach one corner. */
  private static double[][] farthest(Convex seen) {
    double[][] at = new double[WAYS + 1][];
    for (int i = 0; i < WAYS; i += QUARTER) {
      at[i] = farthest(seen, i);
    }
    at[WAYS] = at[0];
    for (int i = 0; i < WAYS; i += QUARTER) {
      between(seen, i, i + QUARTER, at);
    }
    return at;
  }

  private static void between(Convex seen, int from, int to, double[][] at) {
    if (to - from < 2) {
      return;
    }
    if (at[from][0] == at[to][0] && at[from][1] == at[to][1]) {
      Arrays.fill(at, from + 1, to, at[from]);
      return;
    }
    int middle = (from + to) / 2;
    at[middle] = farthest(seen, middle);
    between(seen, from, middle, at);
    between(seen, middle, to, at);
  }

  private static double[] farthest(Convex seen, int way) {
    double[] at = new double[3];
    seen.farthest(new double[] {ACROSS[way], UP[way], 0}, at);
    return at;
  }

  /** Keeps of what lies between two points of a ring what the line past it would miss. */
  private static void thin(
      List<Coordinate> ring, int from, int to, double flatnessMm, List<Coordinate> kept) {
    double most = flatnessMm;
    int farthest = -1;
    for (int i = from + 1; i < to; i++) {
      double off = Distance.pointToSegment(ring.get(i), ring.get(from), ring.get(to));
      if (off > most) {
        most = off;
        farthest = i;
      }
    }
    if (farthest > 0) {
      thin(ring, from, farthest, flatnessMm, kept);
      kept.add(ring.get(farthest));
      thin(ring, farthest, to, flatnessMm, kept);
    }
  }

  private static double exact(double v) {
    return Math.abs(v) < 1e-12 ? 0 : v;
  }
}
