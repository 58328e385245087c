package org.longlow.svg.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;

/** Hatching: parallel lines inside an area. */
public final class Hatch {

  /** More lines than this would be grey, not hatching. */
  public static final int MOST_LINES = 20_000;

  private Hatch() {}

  /**
   * Returns the parts inside the area of parallel lines. The lines of two hatchings with the same
   * spacing and angle fall together, because one line of the family always passes through the
   * origin.
   *
   * <p>Each line is cut by the even-odd rule with all rings at once, so areas that overlap cancel
   * out and rings that cross themselves do no harm.
   *
   * @param area polygons or a collection of them, mm; other parts are ignored
   * @param spacingMm distance between lines, mm, greater than 0
   * @param angleRad direction of the lines, rad
   * @throws IllegalArgumentException if more than {@value #MOST_LINES} lines would be needed
   */
  public static Geometry lines(Geometry area, double spacingMm, double angleRad) {
    return lines(area, spacingMm, angleRad, 0);
  }

  /**
   * As {@link #lines(Geometry, double, double)}, the family moved across itself by {@code offMm}.
   */
  public static Geometry lines(Geometry area, double spacingMm, double angleRad, double offMm) {
    if (!(spacingMm > 0)) {
      throw new IllegalArgumentException(
          "hatch spacing is " + spacingMm + " mm; allowed: more than 0");
    }
    List<double[]> edges = edges(area, angleRad);
    double low = edges.stream().mapToDouble(e -> e[1]).min().orElse(0);
    double high = edges.stream().mapToDouble(e -> e[1]).max().orElse(0);
    double first = Math.ceil((low - offMm) / spacingMm);
    double last = Math.floor((high - offMm) / spacingMm);
    if (last - first > MOST_LINES) {
      throw new IllegalArgumentException(
          "hatch spacing of " + spacingMm + " mm needs more than " + MOST_LINES + " lines");
    }
    List<LineString> out = new ArrayList<>();
    for (double k = first; k <= last; k++) {
      cut(edges, k * spacingMm + offMm, angleRad, out);
    }
    return Planar.FACTORY.createMultiLineString(out.toArray(new LineString[0]));
  }

  /** Returns the parts inside the area of the one line through (x, y) in a direction, rad. */
  public static Geometry line(Geometry area, double x, double y, double angleRad) {
    List<LineString> out = new ArrayList<>();
    double across = y * Math.cos(angleRad) - x * Math.sin(angleRad);
    cut(edges(area, angleRad), across, angleRad, out);
    return Planar.FACTORY.createMultiLineString(out.toArray(new LineString[0]));
  }

  /** Returns the edges of all rings in turned axes: u along the lines, v across them. */
  private static List<double[]> edges(Geometry area, double angleRad) {
    double c = Math.cos(angleRad);
    double s = Math.sin(angleRad);
    List<double[]> edges = new ArrayList<>();
    GeometryComponentFilter each =
        part -> {
          if (part instanceof LinearRing ring) {
            Coordinate[] p = ring.getCoordinates();
            for (int i = 1; i < p.length; i++) {
              edges.add(
                  new double[] {
                    p[i - 1].x * c + p[i - 1].y * s,
                    p[i - 1].y * c - p[i - 1].x * s,
                    p[i].x * c + p[i].y * s,
                    p[i].y * c - p[i].x * s
                  });
            }
          }
        };
    area.apply(each);
    return edges;
  }

  /** Adds the parts inside of the line at {@code v}. */
  private static void cut(List<double[]> edges, double v, double angleRad, List<LineString> out) {
    double c = Math.cos(angleRad);
    double s = Math.sin(angleRad);
    double[] crossings =
        edges.stream()
            .filter(e -> e[1] <= v != e[3] <= v)
            .mapToDouble(e -> e[0] + (v - e[1]) / (e[3] - e[1]) * (e[2] - e[0]))
            .toArray();
    Arrays.sort(crossings);
    for (int i = 0; i + 1 < crossings.length; i += 2) {
      double a = crossings[i];
      double b = crossings[i + 1];
      if (b > a) {
        out.add(Planar.line(a * c - v * s, a * s + v * c, b * c - v * s, b * s + v * c));
      }
    }
  }
}
