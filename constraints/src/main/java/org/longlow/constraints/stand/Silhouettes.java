package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** What parts and people together hide of whoever looks at them from one side. */
public final class Silhouettes {

  private Silhouettes() {}

  /**
   * Returns area and centroid of all together, on the page and the road's axes; empty where nothing
   * is seen.
   */
  public static Optional<Silhouette> of(
      Collection<PartShape> shapes, Rider rider, Ground ground, SeenFrom from) {
    return measured(outline(shapes, rider, ground, from));
  }

  /** Returns the outline of all together on the page. */
  public static Geometry outline(
      Collection<PartShape> shapes, Rider rider, Ground ground, SeenFrom from) {
    List<Geometry> all = new ArrayList<>();
    for (PartShape shape : shapes) {
      add(shape.prisms(), ground, from, all);
    }
    rider.seated().forEach(s -> add(s.body(), ground, from, all));
    return all.isEmpty()
        ? Curves.FACTORY.createPolygon()
        : OverlayNGRobust.union(all, Curves.FACTORY);
  }

  private static void add(List<Prism> prisms, Ground ground, SeenFrom from, List<Geometry> into) {
    for (Prism prism : prisms) {
      prism.convex().stream()
          .map(piece -> from.shadow(piece, ground))
          .filter(Polygonal.class::isInstance)
          .forEach(into::add);
    }
  }

  /** Returns area and centroid of polygons, less their holes; empty where there is no area. */
  static Optional<Silhouette> measured(Geometry outline) {
    double area = 0;
    double mx = 0;
    double mz = 0;
    for (int i = 0; i < outline.getNumGeometries(); i++) {
      if (!(outline.getGeometryN(i) instanceof Polygon polygon) || polygon.isEmpty()) {
        continue;
      }
      for (int k = -1; k < polygon.getNumInteriorRing(); k++) {
        Silhouette s =
            Silhouette.of(ring(k < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(k)));
        double part = k < 0 ? s.areaMm2() : -s.areaMm2();
        area += part;
        mx += part * s.centroid().x();
        mz += part * s.centroid().z();
      }
    }
    return area > 0
        ? Optional.of(new Silhouette(area, new PointMm(mx / area, mz / area)))
        : Optional.empty();
  }

  private static List<PointMm> ring(LineString ring) {
    List<PointMm> points = new ArrayList<>();
    Coordinate[] at = ring.getCoordinates();
    for (int i = 0; i + 1 < at.length; i++) {
      points.add(new PointMm(at[i].x, at[i].y));
    }
    return points;
  }
}
