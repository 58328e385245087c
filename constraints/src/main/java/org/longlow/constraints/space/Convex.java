package org.longlow.constraints.space;

/** A convex body in space, told by how far it reaches each way. Immutable. */
public interface Convex {

  /**
   * Puts into {@code out} the point of the body that is farthest towards a direction.
   *
   * @param d the direction, of any length but zero
   */
  void farthest(double[] d, double[] out);
}
