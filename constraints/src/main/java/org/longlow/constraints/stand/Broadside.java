package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
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
    double width = box.getWidth() / COLUMNS;
    List<List<double[]>> columns = new ArrayList<>();
    for (int k = 0; k < COLUMNS; k++) {
      columns.add(new ArrayList<>());
    }
    polygons.forEach(p -> cross(p, box.getMinX(), width, columns));
    Broadside without = sum(columns, box, width);
    if (others.isEmpty()) {
      return new Both(without, NONE);
    }
    others.forEach(p -> cross(p, box.getMinX(), width, columns));
    Broadside all = sum(columns, box, width);
    return new Both(
        all,
        new Broadside(
            all.areaMm2 - without.areaMm2,
            all.momentX - without.momentX,
            all.momentZ - without.momentZ,
            all.fromMm,
            all.toMm));
  }

  private static Broadside sum(List<List<double[]>> columns, Envelope box, double width) {
    double area = 0;
    double mx = 0;
    double mz = 0;
    for (int k = 0; k < COLUMNS; k++) {
      List<double[]> spans = columns.get(k);
      spans.sort(Comparator.comparingDouble(span -> span[0]));
      double x = box.getMinX() + (k + 0.5) * width;
      double reached = Double.NEGATIVE_INFINITY;
      for (double[] span : spans) {
        double from = Math.max(span[0], reached);
        if (span[1] > from) {
          double shown = (span[1] - from) * width;
          area += shown;
          mx += shown * x;
          mz += shown * (span[1] + from) / 2;
          reached = span[1];
        }
      }
    }
    return new Broadside(area, mx, mz, box.getMinX(), box.getMaxX());
  }

  /**
   * Adds what of each column a polygon covers: between its first and second crossing, and so on.
   */
  private static void cross(
      Polygon polygon, double minX, double width, List<List<double[]>> columns) {
    Envelope box = polygon.getEnvelopeInternal();
    int first = Math.max(0, (int) Math.ceil((box.getMinX() - minX) / width - 0.5));
    int last = Math.min(COLUMNS - 1, (int) Math.floor((box.getMaxX() - minX) / width - 0.5));
    if (last < first) {
      return;
    }
    double[][] at = new double[last - first + 1][4];
    int[] count = new int[last - first + 1];
    for (int ring = -1; ring < polygon.getNumInteriorRing(); ring++) {
      LineString line = ring < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(ring);
      Coordinate[] c = line.getCoordinates();
      for (int i = 0; i + 1 < c.length; i++) {
        double low = Math.min(c[i].x, c[i + 1].x);
        double high = Math.max(c[i].x, c[i + 1].x);
        int k = Math.max(first, (int) Math.ceil((low - minX) / width - 0.5));
        for (; k <= last; k++) {
          double x = minX + (k + 0.5) * width;
          if (x >= high) {
            break; // half open, so that a corner is crossed once
          }
          if (x >= low) {
            double share = (x - c[i].x) / (c[i + 1].x - c[i].x);
            int n = count[k - first]++;
            if (n == at[k - first].length) {
              at[k - first] = Arrays.copyOf(at[k - first], 2 * n);
            }
            at[k - first][n] = c[i].y + share * (c[i + 1].y - c[i].y);
          }
        }
      }
    }
    for (int k = 0; k < count.length; k++) {
      Arrays.sort(at[k], 0, count[k]);
      for (int n = 0; n + 1 < count[k]; n += 2) {
        columns.get(first + k).add(new double[] {at[k][n], at[k][n + 1]});
      }
    }
  }

  /** Returns the middle of the area, in the axes of the frame. */
  public PointMm centroid() {
    return new PointMm(momentX / areaMm2, momentZ / areaMm2);
  }
}
