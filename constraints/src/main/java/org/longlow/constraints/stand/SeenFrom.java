package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.space.Piece;
import org.longlow.rider.geom.PointMm;

/** From where bodies are looked at; all on the road's axes. */
public enum SeenFrom {
  /** From the right: x, forward, to the right of the page and z up it. */
  SIDE,
  /** From ahead: y, left, to the right of the page and z up it. */
  FRONT,
  /** From above, which has the outline that it has from below: x to the right and y up. */
  ABOVE;

  /**
   * Into how many directions of the page a piece is asked how far it reaches; a multiple of 4, so
   * that the outermost points are among them. A circle of 300 mm is drawn to within 0.1 mm.
   */
  private static final int WAYS = 128;

  /** Returns where a point of the road's axes is across the page, mm. */
  public double across(double x, double y) {
    return this == FRONT ? y : x;
  }

  /** Returns where it is up the page, mm. */
  public double up(double y, double z) {
    return this == ABOVE ? y : z;
  }

  /** Returns the outline on the page of a convex piece in the axes of the frame, mm. */
  public Geometry shadow(Piece piece, Ground ground) {
    List<Coordinate> points = new ArrayList<>(WAYS);
    double[] at = new double[3];
    for (int i = 0; i < WAYS; i++) {
      double a = 2 * Math.PI * i / WAYS;
      double c = exact(Math.cos(a));
      double s = exact(Math.sin(a));
      piece.farthest(
          switch (this) {
            case SIDE -> inFrame(ground, c, 0, s);
            case FRONT -> inFrame(ground, 0, c, s);
            case ABOVE -> inFrame(ground, c, s, 0);
          },
          at);
      PointMm p = ground.toRoad(new PointMm(at[0], at[2]));
      points.add(new Coordinate(across(p.x(), at[1]), up(at[1], p.z())));
    }
    return Curves.FACTORY
        .createMultiPointFromCoords(points.toArray(Coordinate[]::new))
        .convexHull();
  }

  private static double exact(double v) {
    return Math.abs(v) < 1e-12 ? 0 : v;
  }

  /** Returns a direction of the road's axes in those of the frame. */
  public static double[] inFrame(Ground ground, double x, double y, double z) {
    PointMm along = ground.along();
    PointMm p = along.times(x).plus(along.left().times(z));
    return new double[] {p.x(), y, p.z()};
  }
}
