package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Turning;
import org.longlow.rider.geom.PointMm;

/**
 * What of a body may touch the road, leaning to one side: of each of its prisms the face on that
 * side.
 */
final class LowSide {

  /** More than the last digits of a height can err, mm. */
  private static final double ROUNDING_MM = 1e-6;

  /** Nothing that is higher than this is looked at as the lowest, mm. */
  private static final double HIGH_MM = 1e3;

  private final List<Face> faces;
  private final Envelope box = new Envelope();
  private final double mostY;

  /**
   * The point that is lowest over the road, in the axes of the frame.
   *
   * @param yMm how far it is to the side leaned to, mm
   */
  record Low(double heightMm, PointMm at, double yMm) {}

  /** An outline so far out to the side leaned to. */
  private static final class Face {
    private final double y;
    private final Geometry outline;
    private final List<Piece> pieces;
    private final Envelope box;
    private volatile Coordinate[] corners;

    /**
     * @param pieces what is within the outline, the side leaned to at the left; none if all of it
     */
    Face(double y, Geometry outline, List<Piece> pieces, Envelope box) {
      this.y = y;
      this.outline = outline;
      this.pieces = pieces;
      this.box = box;
    }

    /** Returns its lowest point with all that is higher than a height left out; null for none. */
    Low lowest(Turning.State state, PointMm shift, double belowMm) {
      double least = belowMm;
      PointMm at = null;
      double out = y;
      double[] down = state.down();
      double[] point = new double[3];
      for (Piece piece : pieces) {
        piece.farthest(down, point);
        double height = state.heightMm(point[0] + shift.x(), point[1], point[2] + shift.z());
        if (height < least) {
          least = height;
          at = new PointMm(point[0] + shift.x(), point[2] + shift.z());
          out = point[1];
        }
      }
      if (pieces.isEmpty()) {
        for (Coordinate c : corners()) {
          double height = state.heightMm(c.x + shift.x(), y, c.y + shift.z());
          if (height < least) {
            least = height;
            at = new PointMm(c.x + shift.x(), c.y + shift.z());
          }
        }
      }
      return at == null ? null : new Low(least, at, out);
    }

    Coordinate[] corners() {
      Coordinate[] known = corners;
      if (known == null) {
        known = outline.getCoordinates();
        corners = known;
      }
      return known;
    }
  }

  private LowSide(List<Face> faces) {
    this.faces = faces;
    faces.forEach(f -> box.expandToInclude(f.box));
    mostY = faces.stream().mapToDouble(f -> f.y).max().orElse(0);
  }

  /** Returns the underside of a body; what does not reach past the middle is never lowest. */
  static LowSide of(List<Prism> body, boolean left) {
    List<Face> faces = new ArrayList<>();
    for (Prism prism : body) {
      double y = left ? prism.across().to() : -prism.across().from();
      Envelope box = new Envelope(prism.outline().getEnvelopeInternal());
      if (y > 0 && !box.isNull()) {
        List<Piece> pieces =
            left ? prism.pieces() : prism.pieces().stream().map(Piece::mirrored).toList();
        // of a tube that is thicker than its bends are wide they reach past the outline
        for (Piece piece : pieces) {
          double[] from = piece.box().from();
          double[] to = piece.box().to();
          box.expandToInclude(new Envelope(from[0], to[0], from[2], to[2]));
        }
        faces.add(new Face(y, prism.outline(), pieces, box));
      }
    }
    return new LowSide(faces);
  }

  /**
   * Returns whether all that is within a box of the elevation, so far out, is clear of the road.
   */
  boolean isClear(Turning.State state, Envelope within) {
    return faces.isEmpty() || state.leastMm(within, mostY) > ROUNDING_MM;
  }

  /**
   * Returns whether its lowest point is on the road or in it; most things are far above it.
   *
   * @param shift how far the body is from where it was described
   */
  boolean reachesRoad(Turning.State state, PointMm shift) {
    // no point is lower than the lowest corner of the box of all, as far out as the farthest
    if (isClear(state, shifted(box, shift))) {
      return false;
    }
    for (Face face : faces) {
      if (state.leastMm(shifted(face.box, shift), face.y) > ROUNDING_MM) {
        continue;
      }
      if (face.lowest(state, shift, Math.nextUp(0.0)) != null) {
        return true;
      }
    }
    return false;
  }

  /** Returns its lowest point, shifted likewise. */
  Low lowest(Turning.State state, PointMm shift) {
    Low least = new Low(Double.POSITIVE_INFINITY, PointMm.ORIGIN, 0);
    for (Face face : faces) {
      double corner = state.leastMm(shifted(face.box, shift), face.y);
      if (corner < Math.min(least.heightMm() + ROUNDING_MM, HIGH_MM)) {
        Low low = face.lowest(state, shift, least.heightMm());
        least = low == null ? least : low;
      }
    }
    return least;
  }

  private static Envelope shifted(Envelope box, PointMm by) {
    return by == PointMm.ORIGIN
        ? box
        : new Envelope(
            box.getMinX() + by.x(),
            box.getMaxX() + by.x(),
            box.getMinY() + by.z(),
            box.getMaxY() + by.z());
  }
}
