package org.longlow.constraints.shape;

import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * A piece of sheet laid flat, to its middle: what is cut before it is bent.
 *
 * @param what it is, such as left side
 * @param count how many of it, half of them turned over where they are for both sides
 * @param outline to cut, mm; of a side x to the right and z up, of a strip along the edge to the
 *     right and y up, seen on its outer face
 * @param folds where it is folded
 * @param longMm its length along the bend
 */
public record FlatPiece(String what, int count, Geometry outline, List<Fold> folds, double longMm) {

  public FlatPiece {
    folds = List.copyOf(folds);
  }

  /**
   * A fold.
   *
   * @param line the middle of it
   * @param alongMm its place along the bend
   * @param rad the angle; positive folds away from whoever looks at the outer face
   */
  public record Fold(Geometry line, double alongMm, double rad) {}
}
