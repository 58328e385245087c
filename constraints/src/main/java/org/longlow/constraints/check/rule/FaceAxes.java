package org.longlow.constraints.check.rule;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.shape.Lamps;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;

/**
 * Where the face of a lamp is and which way it looks, in the axes of the frame: x, y, z.
 *
 * @param at its centre, mm
 * @param ahead the way it looks, a unit vector
 * @param out away from the middle plane; of a lamp that looks sideways, forward
 * @param up square to the road
 */
record FaceAxes(double[] at, double[] ahead, double[] out, double[] up) {

  /** The corners of a body ahead, outwards and up of the centre of the face. */
  List<double[][]> of(Piece piece) {
    return piece.rings().stream()
        .map(ring -> Arrays.stream(ring).map(this::of).toArray(double[][]::new))
        .toList();
  }

  private double[] of(double[] p) {
    double[] from = {p[0] - at[0], p[1] - at[1], p[2] - at[2]};
    return new double[] {dot(ahead, from), dot(out, from), dot(up, from)};
  }

  static FaceAxes of(LampItem lamp, Ground ground) {
    PointMm along = ground.along();
    PointMm at = ground.toFrame(new PointMm(lamp.xMm(), lamp.zMm()));
    int side = lamp.yMm() < 0 ? -1 : 1;
    double[] up = {-along.z(), 0, along.x()};
    double[] outwards = {0, side, 0};
    double[] forward = {along.x(), 0, along.z()};
    if (lamp.kind() == LampPart.Kind.SIDE_REFLECTOR) {
      double face = lamp.yMm() + side * lamp.halfWidthMm();
      return new FaceAxes(new double[] {at.x(), face, at.z()}, outwards, forward, up);
    }
    double[] ahead =
        Lamps.facesForward(lamp.kind()) ? forward : new double[] {-along.x(), 0, -along.z()};
    return new FaceAxes(new double[] {at.x(), lamp.yMm(), at.z()}, ahead, outwards, up);
  }

  /**
   * Returns how far a body reaches from the centre of the face, mm.
   *
   * @param reach how far it reaches along a way from the origin of the frame, mm
   * @param way one of these axes
   * @param side 1 along it, -1 against it
   */
  double reachMm(ToDoubleFunction<double[]> reach, double[] way, int side) {
    double[] along = {side * way[0], side * way[1], side * way[2]};
    return reach.applyAsDouble(along) - dot(along, at);
  }

  static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
