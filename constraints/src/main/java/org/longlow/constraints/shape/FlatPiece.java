package org.longlow.constraints.shape;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.rider.words.Words;

/**
 * A piece of sheet laid flat, to its middle: what is cut before it is bent.
 *
 * @param what it is, such as left side
 * @param count how many of it, half of them turned over where they are for both sides
 * @param outline to cut, mm; of a side x to the right and z up, of a strip along the edge to the
 *     right and y up, seen on its outer face
 * @param folds where it is folded
 * @param longMm its length along the bend
 * @param faults what cannot be folded as it is drawn; where there are some, lengths are those
 *     drawn, without what folds take
 */
public record FlatPiece(
    String what, int count, Geometry outline, List<Fold> folds, double longMm, List<Words> faults) {

  public FlatPiece {
    folds = List.copyOf(folds);
    faults = List.copyOf(faults);
  }

  /** Returns whether it can be folded as it is drawn. */
  public boolean isFoldable() {
    return faults.isEmpty();
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
