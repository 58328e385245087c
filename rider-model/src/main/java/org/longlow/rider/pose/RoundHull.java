package org.longlow.rider.pose;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.rider.geom.PointMm;

/**
 * Convex hull of a few circles, each a regular polygon of {@link #CORNERS} corners.
 *
 * <p>All the polygons have their corners in the same directions, so between two neighbouring edge
 * directions only corner k of each circle can be on the hull: the hull is walked direction by
 * direction, without sorting.
 */
final class RoundHull {

  /** Corners of a circle; its outline lies at most 0.5 % of the radius inside the true one. */
  static final int CORNERS = 32;

  private static final double[] COS = new double[CORNERS];
  private static final double[] SIN = new double[CORNERS];

  /** Directions of the edges' normals; edge k leads to corner k. */
  private static final double[] NORMAL_X = new double[CORNERS];

  private static final double[] NORMAL_Z = new double[CORNERS];

  static {
    for (int k = 0; k < CORNERS; k++) {
      COS[k] = Math.cos(2 * Math.PI * k / CORNERS);
      SIN[k] = Math.sin(2 * Math.PI * k / CORNERS);
      NORMAL_X[k] = Math.cos(2 * Math.PI * (k - 0.5) / CORNERS);
      NORMAL_Z[k] = Math.sin(2 * Math.PI * (k - 0.5) / CORNERS);
    }
  }

  private RoundHull() {}

  /**
   * A circle.
   *
   * @param centre mm
   * @param radius mm, &gt; 0
   */
  record Circle(PointMm centre, double radius) {}

  /** Returns the hull's corners, counter-clockwise, the first repeated at the end. */
  static Coordinate[] ring(Circle... circles) {
    List<Coordinate> ring = new ArrayList<>(CORNERS + 2 * circles.length);
    Coordinate[] corners = new Coordinate[circles.length];
    for (int k = 0; k < CORNERS; k++) {
      for (int i = 0; i < circles.length; i++) {
        PointMm c = circles[i].centre();
        double r = circles[i].radius();
        corners[i] = new Coordinate(c.x() + r * COS[k], c.z() + r * SIN[k]);
      }
      int next = (k + 1) % CORNERS;
      int at = farthest(corners, NORMAL_X[k], NORMAL_Z[k]);
      int last = farthest(corners, NORMAL_X[next], NORMAL_Z[next]);
      add(ring, corners[at]);
      while (at != last) {
        at = next(corners, at, last, k);
        add(ring, corners[at]);
      }
    }
    if (ring.size() > 1 && ring.get(0).equals2D(ring.get(ring.size() - 1))) {
      ring.remove(ring.size() - 1);
    }
    ring.add(ring.get(0).copy());
    return ring.toArray(Coordinate[]::new);
  }

  private static void add(List<Coordinate> ring, Coordinate corner) {
    if (ring.isEmpty() || !ring.get(ring.size() - 1).equals2D(corner)) {
      ring.add(corner);
    }
  }

  private static int farthest(Coordinate[] corners, double nx, double nz) {
    int best = 0;
    for (int i = 1; i < corners.length; i++) {
      double more = (corners[i].x - corners[best].x) * nx + (corners[i].y - corners[best].y) * nz;
      if (more > 0) {
        best = i;
      }
    }
    return best;
  }

  /**
   * Returns the corner after {@code at} on the way to {@code last}: the rightmost turn among those
   * that lie ahead. Of corners in one line rounding can make any the rightmost, one behind too, and
   * the walk would go to and fro.
   */
  private static int next(Coordinate[] corners, int at, int last, int k) {
    int next = last;
    Coordinate from = corners[at];
    for (int i = 0; i < corners.length; i++) {
      Coordinate to = corners[next];
      Coordinate c = corners[i];
      double cross = (to.x - from.x) * (c.y - from.y) - (to.y - from.y) * (c.x - from.x);
      double ahead = (c.y - from.y) * COS[k] - (c.x - from.x) * SIN[k];
      if (ahead > 0 && cross < 0) {
        next = i;
      }
    }
    return next;
  }
}
