package org.longlow.constraints.lock;

import org.longlow.constraints.shape.Interval;

/** A convex outline of the elevation over a breadth. */
final class Block implements Convex {

  private final double[] x;
  private final double[] z;
  private final Interval across;

  /**
   * @param ring x and z of its corners in turn
   */
  Block(double[] ring, Interval across) {
    x = new double[ring.length / 2];
    z = new double[ring.length / 2];
    for (int i = 0; i < x.length; i++) {
      x[i] = ring[2 * i];
      z[i] = ring[2 * i + 1];
    }
    this.across = across;
  }

  @Override
  public void farthest(double[] d, double[] out) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double there = x[i] * d[0] + z[i] * d[2];
      if (there > most) {
        most = there;
        best = i;
      }
    }
    out[0] = x[best];
    out[1] = d[1] > 0 ? across.to() : across.from();
    out[2] = z[best];
  }
}
