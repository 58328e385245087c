package org.longlow.constraints.gap;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.rider.geom.PointMm;

/**
 * The shortest way by which one of two overlapping outlines leaves the other, straight across one
 * of its edges.
 *
 * <p>Across an edge, the other outline has to come out with its innermost point. Where that outline
 * is convex all of it counts, so that for two convex outlines this is their penetration depth
 * (separating axes). One that wraps round the edge would never come out as a whole: of that only
 * what lies inside counts.
 *
 * @param ofA whether the edge is one of the first outline
 * @param edge the edge
 * @param depthMm how deep the other outline is behind it, mm, &gt; 0
 */
record WayOut(boolean ofA, int edge, double depthMm) {

  /** Rounding that still counts as inside, mm. */
  private static final double NEAR = 1e-6;

  /** Returns the shortest way out of two outlines; null if they do not overlap. */
  static WayOut of(Edges p, Edges q) {
    List<Coordinate> common = new Overlap(p, q).corners();
    WayOut best = null;
    for (boolean ofA : new boolean[] {true, false}) {
      Edges owner = ofA ? p : q;
      Edges other = ofA ? q : p;
      boolean whole = convex(other);
      for (int e = 0; e < owner.count(); e++) {
        double depth = depth(owner, other, e, whole, common);
        if (depth > 0
            && (best == null || depth < best.depthMm)
            && (whole || allInside(owner, e, common))) {
          best = new WayOut(ofA, e, depth);
        }
      }
    }
    return best;
  }

  /**
   * Returns how deep one outline is behind an edge of another, mm.
   *
   * @param owner the outline with the edge
   */
  static double depthMm(Edges owner, Edges other, int edge) {
    boolean whole = convex(other);
    return depth(
        owner, other, edge, whole, whole ? List.of() : new Overlap(owner, other).corners());
  }

  private static double depth(
      Edges owner, Edges other, int edge, boolean whole, List<Coordinate> common) {
    int k = 4 * edge;
    double deepest = 0;
    if (whole) {
      for (int v = 0; v < other.ends.length; v += 4) {
        deepest =
            Math.max(deepest, -Edges.offLine(owner.ends, k, other.ends[v], other.ends[v + 1]));
      }
    } else {
      for (Coordinate c : common) {
        deepest = Math.max(deepest, -Edges.offLine(owner.ends, k, c.x, c.y));
      }
    }
    return deepest;
  }

  private static boolean allInside(Edges owner, int edge, List<Coordinate> common) {
    return common.stream().allMatch(c -> Edges.offLine(owner.ends, 4 * edge, c.x, c.y) < NEAR);
  }

  private static boolean convex(Edges edges) {
    if (edges.rings.length != 2) {
      return false;
    }
    double[] e = edges.ends;
    for (int i = 0; i < e.length; i += 4) {
      int j = i + 4 < e.length ? i + 4 : 0;
      double ux = e[i + 2] - e[i];
      double uz = e[i + 3] - e[i + 1];
      double vx = e[j + 2] - e[j];
      double vz = e[j + 3] - e[j + 1];
      if (ux * vz - uz * vx < -NEAR * PointMm.norm(ux, uz) * PointMm.norm(vx, vz)) {
        return false;
      }
    }
    return true;
  }
}
