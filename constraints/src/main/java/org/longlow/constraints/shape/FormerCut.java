package org.longlow.constraints.shape;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.rider.geom.PointMm;

/**
 * A former as it is cut: a section of a body with its skin taken off.
 *
 * <p>The line is that of the face at the place; the sheet lies on the side where the body is no
 * smaller, so that left square it stands out nowhere it can be helped.
 *
 * @param name for people, never empty
 * @param way which plane it lies in
 * @param placeMm along the local x axis, or across the machine, left positive
 * @param thicknessMm of its own sheet
 * @param skinMm taken off square to the surface
 * @param ahead whether its sheet lies ahead (to the left) of the face that the line is of
 * @param line the section: across y to the right and z up, along x to the right and z up, mm
 * @param board what is cut: the line with notches and flange
 * @param other the section at its other face
 * @param leans how its edge leans where that is most, by the side of it
 * @param notches let into it
 * @param flange its rim, if it has one
 */
public record FormerCut(
    String name,
    Slices.Way way,
    double placeMm,
    double thicknessMm,
    double skinMm,
    boolean ahead,
    Geometry line,
    Geometry board,
    Geometry other,
    List<Lean> leans,
    List<Notch> notches,
    Optional<Flange> flange) {

  /** A smaller piece is none, mm². */
  private static final double LEAST_MM2 = 0.01;

  public FormerCut {
    leans = List.copyOf(leans);
    notches = List.copyOf(notches);
  }

  /** Which side of a former an edge is at. */
  public enum Edge {
    TOP,
    BOTTOM,
    /** The left side of one across, the front of one along. */
    LEFT,
    /** The right side of one across, the rear of one along. */
    RIGHT
  }

  /**
   * How an edge leans against square.
   *
   * @param edge which
   * @param offMm how far the other face's line lies from this one's, outward positive
   * @param rad the angle of the bevel, outward positive
   */
  public record Lean(Edge edge, double offMm, double rad) {}

  /**
   * A notch for a stringer.
   *
   * @param name of the stringer
   * @param at its middle on the line
   * @param widthMm along the line
   * @param depthMm square to it
   */
  public record Notch(String name, PointMm at, double widthMm, double depthMm) {}

  /**
   * A rim turned over until it lies on the skin: square where that runs on square to the sheet.
   *
   * @param breadthMm over its outside
   * @param leastRad how far it is turned over where that is least
   * @param mostRad where it is most
   * @param leastDeductionMm taken off where it is folded least; nothing of one that is too narrow
   * @param mostDeductionMm where it is folded most
   * @param setBackMm how far the fold reaches over it where it is folded most
   * @param radiusMm inside the fold
   * @param board what is cut without notches, laid flat
   * @param fold the middle of the fold on the flat sheet
   */
  public record Flange(
      double breadthMm,
      double leastRad,
      double mostRad,
      double leastDeductionMm,
      double mostDeductionMm,
      double setBackMm,
      double radiusMm,
      Geometry board,
      Geometry fold) {

    /** Returns whether its fold takes more than all of it. */
    public boolean tooNarrow() {
      return breadthMm < setBackMm;
    }
  }

  /** Returns whether its notches cut it into more pieces than the body has there. */
  public boolean fallsApart() {
    return pieces(board) > pieces(line);
  }

  private static int pieces(Geometry area) {
    int n = 0;
    for (int i = 0; i < area.getNumGeometries(); i++) {
      n += area.getGeometryN(i).getArea() > LEAST_MM2 ? 1 : 0;
    }
    return n;
  }

  /** Returns whether it is square to the local x axis. */
  public boolean across() {
    return way == Slices.Way.ACROSS;
  }
}
