package org.longlow.constraints.gap;

import org.longlow.rider.geom.PointMm;

/**
 * The second end of two edges that lie along each other: where a corner is nearest to an edge, one
 * of its own edges leads away from there, and the far end of that, or of the other edge if it is
 * the shorter, is the next place to come close when the bodies turn.
 */
final class Alongside {

  /** Edges that turn less are one edge, sine. */
  private static final double STRAIGHT = 1e-9;

  private Alongside() {}

  /**
   * Returns that contact, or null if there is none.
   *
   * @param of outline with the corner
   * @param near the contact of the corner
   */
  static Contact of(Edges of, Edges other, Contact near) {
    if (near.share() <= 0 || near.share() >= 1) {
      return null;
    }
    boolean ofA = near.kind() == Contact.Kind.CORNER_OF_A;
    PointMm corner = start(of, near.point());
    PointMm from = start(other, near.edge());
    PointMm along = end(other, near.edge()).minus(from);
    int before = next(of, near.point(), -1);
    PointMm ahead = end(of, straight(of, near.point(), 1));
    PointMm behind = start(of, straight(of, before, -1));
    boolean goesOn = along.cross(ahead.minus(behind)) >= 0;
    PointMm far = goesOn ? ahead : behind;
    double side = far.minus(from).dot(along);
    boolean back = side < near.share() * along.dot(along);
    int last = straight(other, near.edge(), back ? -1 : 1);
    PointMm lastEnd = back ? start(other, last) : end(other, last);
    double reach = lastEnd.minus(from).dot(along);
    if (back ? side >= reach : side <= reach) {
      int point = goesOn ? next(of, straight(of, near.point(), 1), 1) : straight(of, before, -1);
      return near.corner(ofA, point, near.edge(), 0.5).measured(of, other);
    }
    PointMm own = far.minus(corner);
    double share = lastEnd.minus(corner).dot(own) / own.dot(own);
    if (!(share > 0 && share < 1)) {
      return null;
    }
    int point = back ? last : next(other, last, 1);
    return near.corner(!ofA, point, goesOn ? near.point() : before, 0.5).measured(other, of);
  }

  private static PointMm start(Edges edges, int edge) {
    return new PointMm(edges.ends[4 * edge], edges.ends[4 * edge + 1]);
  }

  private static PointMm end(Edges edges, int edge) {
    return new PointMm(edges.ends[4 * edge + 2], edges.ends[4 * edge + 3]);
  }

  /** The last edge of the straight run that goes on from an edge. */
  private static int straight(Edges edges, int edge, int way) {
    int last = edge;
    int more = next(edges, last, way);
    while (more != edge && inLine(edges, last, more)) {
      last = more;
      more = next(edges, last, way);
    }
    return last;
  }

  private static boolean inLine(Edges edges, int i, int j) {
    PointMm u = end(edges, i).minus(start(edges, i));
    PointMm v = end(edges, j).minus(start(edges, j));
    return Math.abs(u.cross(v)) <= STRAIGHT * u.length() * v.length() && u.dot(v) > 0;
  }

  /** The edge after (or before) an edge of the same ring. */
  private static int next(Edges edges, int edge, int way) {
    int r = 0;
    while (edge >= edges.rings[r + 1]) {
      r++;
    }
    int first = edges.rings[r];
    int size = edges.rings[r + 1] - first;
    return first + (edge - first + way + size) % size;
  }
}
