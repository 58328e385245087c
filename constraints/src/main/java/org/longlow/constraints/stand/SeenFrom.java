package org.longlow.constraints.stand;

import org.locationtech.jts.geom.Coordinate;
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

  /** Returns corners of the outline on the page of a convex piece in the axes of the frame, mm. */
  Coordinate[] corners(Piece piece, Ground ground) {
    PointMm along = ground.along();
    PointMm origin = ground.rearContact();
    double[] in = new double[3];
    double[] on = new double[3];
    return Shadows.corners(
        (way, out) -> {
          // what runs forward and up on the road, in the axes of the frame
          double forward = this == FRONT ? 0 : way[0];
          double up = this == ABOVE ? 0 : way[1];
          in[0] = along.x() * forward - along.z() * up;
          in[1] = this == SIDE ? 0 : this == FRONT ? way[0] : way[1];
          in[2] = along.z() * forward + along.x() * up;
          piece.farthest(in, on);
          double dx = on[0] - origin.x();
          double dz = on[2] - origin.z();
          out[0] = this == FRONT ? on[1] : along.x() * dx + along.z() * dz;
          out[1] = this == ABOVE ? on[1] : along.x() * dz - along.z() * dx;
        },
        FLATNESS_MM);
  }
}
