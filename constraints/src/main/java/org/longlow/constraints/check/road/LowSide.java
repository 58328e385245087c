package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Turning;
import org.longlow.rider.geom.PointMm;

/**
 * What of a body may touch the road, leaning to one side: of each of its prisms the face on that
 * side. For one thread.
 */
final class LowSide {

  /** More than the last digits of a height can err, mm. */
  private static final double ROUNDING_MM = 1e-6;

  /** Nothing that is higher than this is looked at as the lowest, mm. */
  private static final double HIGH_MM = 1e3;

  private final List<Face> faces;
  private final Envelope box = new Envelope();
  private final double mostY;

  /** The point that is lowest over the road, in the axes of the frame. */
  record Low(double heightMm, PointMm at) {}

  /** An outline so far out to the side leaned to. */
  private static final class Face {
    private final double y;
    private final Geometry outline;
    private final Envelope box;
    private Coordinate[] corners;

    Face(double y, Geometry outline, Envelope box) {
      this.y = y;
      this.outline = outline;
      this.box = box;
    }

    Coordinate[] corners() {
      if (corners == null) {
        corners = outline.getCoordinates();
      }
      return corners;
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
      Envelope box = prism.outline().getEnvelopeInternal();
      if (y > 0 && !box.isNull()) {
        faces.add(new Face(y, prism.outline(), box));
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
      for (Coordinate c : face.corners()) {
        if (state.heightMm(c.x + shift.x(), face.y, c.y + shift.z()) <= 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Returns its lowest point, shifted likewise. */
  Low lowest(Turning.State state, PointMm shift) {
    double least = Double.POSITIVE_INFINITY;
    Coordinate at = null;
    for (Face face : faces) {
      double corner = state.leastMm(shifted(face.box, shift), face.y);
      if (corner >= Math.min(least + ROUNDING_MM, HIGH_MM)) {
        continue;
      }
      for (Coordinate c : face.corners()) {
        double height = state.heightMm(c.x + shift.x(), face.y, c.y + shift.z());
        if (height < least) {
          least = height;
          at = c;
        }
      }
    }
    return new Low(
        least, at == null ? PointMm.ORIGIN : new PointMm(at.x + shift.x(), at.y + shift.z()));
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
