package org.longlow.constraints.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.rider.geom.PointMm;

/**
 * A hole in place: all that is nearer than a radius to a point, a line or an area. What is asked of
 * it so is exact; no round end is cut into chords.
 *
 * @param core the centre of a round hole, the centre line of a slot, the area of a cut; mm
 * @param radiusMm of the round hole or the ends of the slot; 0 for a cut
 */
public record Opening(Geometry core, double radiusMm) {

  /** A hole whose image is nearer than this to itself lies on the axis, mm. */
  private static final double ON_AXIS_MM = 0.01;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  public static Opening round(PointMm at, double diameterMm) {
    return new Opening(FACTORY.createPoint(coordinate(at)), diameterMm / 2);
  }

  /** A slot; a round hole where both ends are in one place. */
  public static Opening slot(PointMm from, PointMm to, double widthMm) {
    return from.distance(to) == 0
        ? round(from, widthMm)
        : new Opening(
            FACTORY.createLineString(new Coordinate[] {coordinate(from), coordinate(to)}),
            widthMm / 2);
  }

  /**
   * A cut.
   *
   * @param edge its points in order, three or more, the first not repeated
   */
  public static Opening cut(List<PointMm> edge) {
    return new Opening(polygon(edge), 0);
  }

  /** Returns the area within points in order; it may cross itself. */
  public static Polygon polygon(List<PointMm> points) {
    List<Coordinate> ring = new ArrayList<>();
    points.forEach(p -> ring.add(coordinate(p)));
    ring.add(coordinate(points.get(0)));
    return FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
  }

  /**
   * Returns how much stands between it and the edge of a part, mm; less than 0 by how far it runs
   * out over the edge.
   *
   * @param part the area within the edge of the part, holes left out of account
   */
  public double webMm(Geometry part) {
    if (part.contains(core)) {
      return part.getBoundary().distance(core) - radiusMm;
    }
    double out = 0;
    for (Coordinate c : core.getCoordinates()) {
      out = Math.max(out, part.distance(FACTORY.createPoint(c)));
    }
    return -out - radiusMm;
  }

  /** Returns how much stands between it and another, mm; 0 or less if they run into each other. */
  public double webMm(Opening other) {
    return core.distance(other.core) - radiusMm - other.radiusMm;
  }

  /** Returns its image across the line through two points; empty where that is itself. */
  public Optional<Opening> image(PointMm a, PointMm b) {
    Geometry there =
        AffineTransformation.reflectionInstance(a.x(), a.z(), b.x(), b.z()).transform(core);
    return DiscreteHausdorffDistance.distance(core, there) <= ON_AXIS_MM
        ? Optional.empty()
        : Optional.of(new Opening(there, radiusMm));
  }

  private static Coordinate coordinate(PointMm p) {
    return new Coordinate(p.x(), p.z());
  }
}
