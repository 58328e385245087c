package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/**
 * What parts and people show to wind from the side, counted in columns: quick enough for every
 * edit, and within two thousandths of {@link Silhouettes}.
 *
 * @param areaMm2 area of all together, mm²
 * @param momentX ∫x over it, mm³, in the axes of the frame
 * @param momentZ ∫z over it, mm³
 * @param fromMm where it begins at the rear, mm
 * @param toMm where it ends ahead, mm
 */
public record Broadside(
    double areaMm2, double momentX, double momentZ, double fromMm, double toMm) {

  /** Nothing is shown. */
  public static final Broadside NONE = new Broadside(0, 0, 0, Double.NaN, Double.NaN);

  /** So many columns make 10 mm of a long machine. */
  private static final int COLUMNS = 240;

  /** Returns what parts and people show. */
  public static Broadside of(Collection<PartShape> shapes, Rider rider) {
    return of(polygons(shapes, rider), List.of()).all();
  }

  /**
   * What is shown with and without some of it.
   *
   * @param all of it together
   * @param more what of it only the others show
   */
  public record Both(Broadside all, Broadside more) {}

  /** Returns what parts and people show, and what other parts show besides. */
  public static Both with(Collection<PartShape> shapes, Rider rider, Collection<PartShape> others) {
    return of(polygons(shapes, rider), polygons(others, Rider.NOBODY));
  }

  private static List<Polygon> polygons(Collection<PartShape> shapes, Rider rider) {
    List<Polygon> polygons = new ArrayList<>();
    shapes.forEach(shape -> add(shape.outline(), polygons));
    for (Rider.Seated person : rider.seated()) {
      for (Prism prism : person.body()) {
        add(prism.outline(), polygons);
      }
    }
    return polygons;
  }

  private static void add(Geometry outline, List<Polygon> into) {
    for (int i = 0; i < outline.getNumGeometries(); i++) {
      if (outline.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        into.add(polygon);
      }
    }
  }

  private static Both of(List<Polygon> polygons, List<Polygon> others) {
    Envelope box = new Envelope();
    polygons.forEach(p -> box.expandToInclude(p.getEnvelopeInternal()));
    others.forEach(p -> box.expandToInclude(p.getEnvelopeInternal()));
    if (!(box.getWidth() > 0)) {
      return new Both(NONE, NONE);
    }
    Columns columns = new Columns(COLUMNS, box.getMinX(), box.getWidth() / COLUMNS);
    polygons.forEach(columns::add);
    Broadside without = sum(columns, box);
    if (others.isEmpty()) {
      return new Both(without, NONE);
    }
    others.forEach(columns::add);
    Broadside all = sum(columns, box);
    return new Both(
        all,
        new Broadside(
            all.areaMm2 - without.areaMm2,
            all.momentX - without.momentX,
            all.momentZ - without.momentZ,
            all.fromMm,
            all.toMm));
  }

  private static Broadside sum(Columns columns, Envelope box) {
    double width = box.getWidth() / COLUMNS;
    double area = 0;
    double mx = 0;
    double mz = 0;
    for (int k = 0; k < COLUMNS; k++) {
      double[] spans = columns.spans(k);
      double x = columns.x(k);
      double reached = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < columns.end(k); i += 2) {
        double from = Math.max(spans[i], reached);
        double to = spans[i + 1];
        if (to > from) {
          double shown = (to - from) * width;
          area += shown;
          mx += shown * x;
          mz += shown * (to + from) / 2;
          reached = to;
        }
      }
    }
    return new Broadside(area, mx, mz, box.getMinX(), box.getMaxX());
  }

  /** Returns the middle of the area, in the axes of the frame. */
  public PointMm centroid() {
    return new PointMm(momentX / areaMm2, momentZ / areaMm2);
  }
}
