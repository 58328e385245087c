package org.longlow.constraints.shape;

import java.util.ArrayList;
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
    List<Coordinate> ring = new ArrayList<>(WAYS + 1);
    List<Integer> outermost = new ArrayList<>();
    double[] at = new double[3];
    for (int i = 0; i < WAYS; i++) {
      double a = 2 * Math.PI * i / WAYS;
      seen.farthest(new double[] {exact(Math.cos(a)), exact(Math.sin(a)), 0}, at);
      Coordinate next = new Coordinate(at[0], at[1]);
      if (ring.isEmpty() || ring.get(ring.size() - 1).distance(next) > SAME_MM) {
        ring.add(next);
      }
      if (i % (WAYS / 4) == 0) {
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
    return Curves.FACTORY.createMultiPointFromCoords(kept.toArray(Coordinate[]::new)).convexHull();
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
