package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Planar;

/** From where a machine is seen besides its side; all on the road's axes. */
enum Aspect {
  /** From ahead: y, left, to the right of the page and z up it. */
  FRONT,
  /** From above: x, forward, to the right of the page and y, left, up it. */
  PLAN;

  /**
   * Into how many directions of the page a piece is asked how far it reaches; a multiple of 4, so
   * that the outermost points are among them. A circle of 300 mm is drawn to within 0.1 mm.
   */
  private static final int WAYS = 128;

  /** Returns where a point of the road's axes is across the page, mm. */
  double across(double x, double y) {
    return this == FRONT ? y : x;
  }

  /** Returns where it is up the page, mm. */
  double up(double y, double z) {
    return this == FRONT ? z : y;
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
    List<Coordinate> points = new ArrayList<>(WAYS);
    double[] at = new double[3];
    for (int i = 0; i < WAYS; i++) {
      double a = 2 * Math.PI * i / WAYS;
      double c = exact(Math.cos(a));
      double s = exact(Math.sin(a));
      double[] way = this == FRONT ? frame(ground, 0, c, s) : frame(ground, c, s, 0);
      piece.farthest(way, at);
      PointMm p = ground.toRoad(new PointMm(at[0], at[2]));
      points.add(new Coordinate(across(p.x(), at[1]), up(at[1], p.z())));
    }
    double[] towards = this == FRONT ? frame(ground, 1, 0, 0) : frame(ground, 0, 0, 1);
    piece.farthest(towards, at);
    PointMm nearest = ground.toRoad(new PointMm(at[0], at[2]));
    Geometry area =
        Planar.FACTORY.createMultiPointFromCoords(points.toArray(Coordinate[]::new)).convexHull();
    return new Shadow(area, this == FRONT ? nearest.x() : nearest.z());
  }

  private static double exact(double v) {
    return Math.abs(v) < 1e-12 ? 0 : v;
  }

  /** Returns a direction of the road's axes in those of the frame. */
  private static double[] frame(Ground ground, double x, double y, double z) {
    PointMm along = ground.along();
    PointMm p = along.times(x).plus(along.left().times(z));
    return new double[] {p.x(), y, p.z()};
  }
}
