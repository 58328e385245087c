package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.space.Block;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Rod;
import org.longlow.rider.geom.PointMm;

/**
 * A body within an outline of the elevation and an interval across the machine.
 *
 * @param outline polygon or polygons of the elevation, mm
 * @param across where it stands across the machine
 * @param pieces what it is made of, all of it within the two; none where it fills them
 */
public record Prism(Geometry outline, Interval across, List<Piece> pieces) {
  /** Of bodies that were asked for lately. */
  private static final ByThing<Prism, List<Piece>> BLOCKS =
      new ByThing<>(
          1024, full -> List.copyOf(blocks(ConvexPieces.of(full.outline), List.of(full.across))));

  public Prism {
    pieces = List.copyOf(pieces);
  }

  /** A body of constant outline across the machine. */
  public Prism(Geometry outline, Interval across) {
    this(outline, across, List.of());
  }

  /** Returns a ball. */
  public static Prism ball(PointMm at, double yMm, double radiusMm) {
    return new Prism(
        Curves.bar(at, at, 2 * radiusMm),
        new Interval(yMm - radiusMm, yMm + radiusMm),
        List.of(new Rod(at, at, yMm, radiusMm, true, true)));
  }

  /** Returns whether it fills its outline over all of its breadth. */
  public boolean isFull() {
    return pieces.isEmpty();
  }

  /** Returns the convex pieces that it is made of. */
  public List<Piece> convex() {
    return isFull() ? BLOCKS.of(this) : pieces;
  }

  /** Returns convex outlines, x and z of their corners, over each of some breadths. */
  public static List<Piece> blocks(List<double[]> rings, List<Interval> across) {
    List<Piece> blocks = new ArrayList<>();
    for (double[] ring : rings) {
      for (Interval i : across) {
        blocks.add(new Block(ring, i.from(), i.to()));
      }
    }
    return blocks;
  }

  /** Returns its image on the other side of the middle plane. */
  public Prism mirrored() {
    return new Prism(outline, across.mirrored(), pieces.stream().map(Piece::mirrored).toList());
  }
}
