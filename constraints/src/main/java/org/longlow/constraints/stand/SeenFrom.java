package org.longlow.constraints.stand;

import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Shadows;
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

  /** Outlines lie within this of the true ones, mm. */
  private static final double FLATNESS_MM = 0.1;

  /** Returns where a point of the road's axes is across the page, mm. */
  private double across(double x, double y) {
    return this == FRONT ? y : x;
  }

  /** Returns where it is up the page, mm. */
  private double up(double y, double z) {
    return this == ABOVE ? y : z;
  }

  /** Returns the outline on the page of a convex piece in the axes of the frame, mm. */
  Geometry shadow(Piece piece, Ground ground) {
    double[] on = new double[3];
    return Shadows.of(
        (way, out) -> {
          piece.farthest(
              switch (this) {
                case SIDE -> inFrame(ground, way[0], 0, way[1]);
                case FRONT -> inFrame(ground, 0, way[0], way[1]);
                case ABOVE -> inFrame(ground, way[0], way[1], 0);
              },
              on);
          PointMm p = ground.toRoad(new PointMm(on[0], on[2]));
          out[0] = across(p.x(), on[1]);
          out[1] = up(on[1], p.z());
        },
        FLATNESS_MM);
  }

  /** Returns a direction of the road's axes in those of the frame. */
  private static double[] inFrame(Ground ground, double x, double y, double z) {
    PointMm along = ground.along();
    PointMm p = along.times(x).plus(along.left().times(z));
    return new double[] {p.x(), y, p.z()};
  }
}
