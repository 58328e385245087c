package org.longlow.constraints.gap;

import org.longlow.rider.geom.PointMm;

/**
 * A place where two bodies come close in the elevation: a corner of one and what of the other it is
 * nearest to, or an overlap. It can be measured again on the same bodies a little changed.
 * Immutable.
 *
 * @param faceA face of the first body
 * @param faceB face of the second body
 * @param kind which of them has the corner, or the edge that leads out
 * @param point the corner: the edge of its outline that starts there
 * @param edge the edge of the other outline; of an overlap, the edge across which it ends
 * @param share 0 where the start of that edge is nearest, 1 where its end is; else the line of it
 * @param acrossMm distance of the two faces across the machine, mm; negative where they overlap
 * @param sideMm their distance in the elevation, mm; negative where they overlap
 */
record Contact(
    int faceA,
    int faceB,
    Kind kind,
    int point,
    int edge,
    double share,
    double acrossMm,
    double sideMm) {

  enum Kind {
    CORNER_OF_A,
    CORNER_OF_B,
    /** The way out is across an edge of the first outline. */
    OUT_OF_A,
    /** The way out is across an edge of the second. */
    OUT_OF_B
  }

  /** Returns the distance in the elevation that leaves {@code gapMm} between the faces, mm. */
  double neededMm(double gapMm) {
    return acrossMm > 0 ? Math.sqrt(Math.max(0, gapMm * gapMm - acrossMm * acrossMm)) : gapMm;
  }

  /** Returns the derivative of {@link #neededMm}. */
  double neededSlope(double gapMm) {
    double needed = neededMm(gapMm);
    return acrossMm > 0 && needed > 0 ? gapMm / needed : 1;
  }

  /** Returns {@link #sideMm} on changed outlines; NaN if they have other corners. */
  double sideMm(Edges a, Edges b) {
    return switch (kind) {
      case CORNER_OF_A -> cornerMm(a, b);
      case CORNER_OF_B -> cornerMm(b, a);
      case OUT_OF_A -> edge < a.count() ? -WayOut.depthMm(a, b, edge) : Double.NaN;
      case OUT_OF_B -> edge < b.count() ? -WayOut.depthMm(b, a, edge) : Double.NaN;
    };
  }

  /** Returns this pair of faces with a corner of one of them against an edge of the other. */
  Contact corner(boolean ofA, int point, int edge, double share) {
    Kind which = ofA ? Kind.CORNER_OF_A : Kind.CORNER_OF_B;
    return new Contact(faceA, faceB, which, point, edge, share, acrossMm, 0);
  }

  /** Returns this pair of faces with the edge of one of them across which the other comes out. */
  Contact overlap(boolean ofA, int edge) {
    Kind which = ofA ? Kind.OUT_OF_A : Kind.OUT_OF_B;
    return new Contact(faceA, faceB, which, 0, edge, 0, acrossMm, 0);
  }

  /** Returns the overlap of two outlines of this pair of faces; null if they do not overlap. */
  Contact overlap(Edges a, Edges b) {
    WayOut way = WayOut.of(a, b);
    return way == null ? null : overlap(way.ofA(), way.edge()).withSide(-way.depthMm());
  }

  boolean isOverlap() {
    return kind == Kind.OUT_OF_A || kind == Kind.OUT_OF_B;
  }

  /** Returns this contact with its distance measured from the outline with the corner. */
  Contact measured(Edges of, Edges other) {
    return withSide(cornerMm(of, other));
  }

  Contact withSide(double mm) {
    return new Contact(faceA, faceB, kind, point, edge, share, acrossMm, mm);
  }

  /** Returns its point on the first outline and that on the second. */
  PointMm[] ends(Edges a, Edges b) {
    boolean ofA = kind == Kind.CORNER_OF_A;
    Edges of = ofA ? a : b;
    double[] e = ofA ? b.ends : a.ends;
    PointMm corner = new PointMm(of.ends[4 * point], of.ends[4 * point + 1]);
    PointMm from = new PointMm(e[4 * edge], e[4 * edge + 1]);
    PointMm to = new PointMm(e[4 * edge + 2], e[4 * edge + 3]);
    PointMm foot = share <= 0 ? from : share >= 1 ? to : foot(corner, from, to);
    return ofA ? new PointMm[] {corner, foot} : new PointMm[] {foot, corner};
  }

  private static PointMm foot(PointMm corner, PointMm from, PointMm to) {
    PointMm along = to.minus(from);
    return from.plus(along.times(corner.minus(from).dot(along) / along.dot(along)));
  }

  private double cornerMm(Edges of, Edges other) {
    if (point >= of.count() || edge >= other.count()) {
      return Double.NaN;
    }
    double x = of.ends[4 * point];
    double z = of.ends[4 * point + 1];
    double[] e = other.ends;
    int k = 4 * edge;
    if (share <= 0) {
      return PointMm.norm(x - e[k], z - e[k + 1]);
    }
    if (share >= 1) {
      return PointMm.norm(x - e[k + 2], z - e[k + 3]);
    }
    return Edges.offLine(e, k, x, z);
  }
}
