package org.longlow.constraints.gap;

import java.util.AbstractList;
import java.util.List;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.space.Piece;

/**
 * Pieces after a motion, each moved when it is asked for: of a body that is swept most are never
 * near anything. For any number of threads; what two of them move at once comes out alike.
 */
final class MovedPieces extends AbstractList<Piece> {

  private final List<Piece> pieces;
  private final RigidMotion motion;
  private final Piece[] moved;

  MovedPieces(List<Piece> pieces, RigidMotion motion) {
    this.pieces = pieces;
    this.motion = motion;
    this.moved = new Piece[pieces.size()];
  }

  @Override
  public Piece get(int i) {
    Piece there = moved[i];
    if (there == null) {
      there = pieces.get(i).moved(motion);
      moved[i] = there;
    }
    return there;
  }

  @Override
  public int size() {
    return moved.length;
  }
}
