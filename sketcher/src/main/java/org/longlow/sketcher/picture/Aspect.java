package org.longlow.sketcher.picture;

import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.SeenFrom;
import org.longlow.rider.geom.PointMm;

/** From where a machine is seen besides its side; all on the road's axes. */
enum Aspect {
  /** From ahead: y, left, to the right of the page and z up it. */
  FRONT,
  /** From above: x, forward, to the right of the page and y, left, up it. */
  PLAN;

  private SeenFrom from() {
    return this == FRONT ? SeenFrom.FRONT : SeenFrom.ABOVE;
  }

  /** Returns where a point of the road's axes is across the page, mm. */
  double across(double x, double y) {
    return from().across(x, y);
  }

  /** Returns where it is up the page, mm. */
  double up(double y, double z) {
    return from().up(y, z);
  }

  /**
   * A convex piece as it is seen.
   *
   * @param area its outline on the page
   * @param nearMm how near its nearest point is to the viewer; more is nearer
   */
  record Shadow(Geometry area, double nearMm) {}

  /** Returns how a piece in the axes of the frame looks to somebody on the road. */
  Shadow of(Piece piece, Ground ground) {
    double[] at = new double[3];
    double[] towards =
        this == FRONT ? SeenFrom.inFrame(ground, 1, 0, 0) : SeenFrom.inFrame(ground, 0, 0, 1);
    piece.farthest(towards, at);
    PointMm nearest = ground.toRoad(new PointMm(at[0], at[2]));
    return new Shadow(from().shadow(piece, ground), this == FRONT ? nearest.x() : nearest.z());
  }
}
