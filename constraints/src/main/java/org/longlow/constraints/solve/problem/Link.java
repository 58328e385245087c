package org.longlow.constraints.solve.problem;

/**
 * A relation that keeps two points a given length apart.
 *
 * <p>The solver watches each pair of links that share a point, so that no single step turns such a
 * two-link chain over to its mirror image.
 */
public interface Link extends Relation {
  /** One end. */
  Pt first();

  /** The other end. */
  Pt second();
}
