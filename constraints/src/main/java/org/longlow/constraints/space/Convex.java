package org.longlow.constraints.space;

import java.util.List;

/** A convex body in space, told by how far it reaches each way. Immutable. */
public interface Convex {

  /**
   * Puts into {@code out} the point of the body that is farthest towards a direction.
   *
   * @param d the direction, of any length but zero
   */
  void farthest(double[] d, double[] out);

  /** Returns the hull of some bodies, for one thread. */
  static Convex hullOf(List<? extends Convex> bodies) {
    double[] at = new double[3];
    double[] way = new double[3];
    return (d, out) -> {
      System.arraycopy(d, 0, way, 0, 3);
      double most = Double.NEGATIVE_INFINITY;
      for (Convex body : bodies) {
        body.farthest(way, at);
        double far = way[0] * at[0] + way[1] * at[1] + way[2] * at[2];
        if (far > most) {
          most = far;
          System.arraycopy(at, 0, out, 0, 3);
        }
      }
    };
  }
}
