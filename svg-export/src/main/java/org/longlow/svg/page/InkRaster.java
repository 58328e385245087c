package org.longlow.svg.page;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;

/**
 * Which squares of a grid a picture touches: areas, and lines of any kind. A square that is only
 * brushed at a corner may be left out; who must not miss it grows the picture first.
 *
 * @param left of the first column, mm
 * @param bottom of the first row, mm
 * @param stepMm side of a square
 * @param full [row from below][column]
 */
record InkRaster(double left, double bottom, double stepMm, boolean[][] full) {

  /** Returns the squares of a box that has none of them cut. */
  static InkRaster of(Geometry ink, Envelope box, double stepMm) {
    int columns = Math.max(1, (int) Math.ceil(box.getWidth() / stepMm - 1e-9));
    int rows = Math.max(1, (int) Math.ceil(box.getHeight() / stepMm - 1e-9));
    InkRaster raster =
        new InkRaster(box.getMinX(), box.getMinY(), stepMm, new boolean[rows][columns]);
    ink.apply(
        (GeometryComponentFilter)
            part -> {
              if (part instanceof LineString line) {
                raster.line(line.getCoordinateSequence());
              }
            });
    for (Object o : PolygonExtracter.getPolygons(ink)) {
      raster.area((Polygon) o);
    }
    return raster;
  }

  int rows() {
    return full.length;
  }

  int columns() {
    return full[0].length;
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns() - 1, (int) Math.floor((x - left) / stepMm)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows() - 1, (int) Math.floor((y - bottom) / stepMm)));
  }

  private void line(CoordinateSequence line) {
    for (int i = 1; i < line.size(); i++) {
      double dx = line.getX(i) - line.getX(i - 1);
      double dy = line.getY(i) - line.getY(i - 1);
      int n = 1 + (int) (Math.hypot(dx, dy) / stepMm * 3);
      for (int k = 0; k <= n; k++) {
        full[row(line.getY(i - 1) + dy * k / n)][column(line.getX(i - 1) + dx * k / n)] = true;
      }
    }
  }

  /** Fills rows between crossings of their middles. */
  private void area(Polygon polygon) {
    Envelope box = polygon.getEnvelopeInternal();
    for (int r = row(box.getMinY()); r <= row(box.getMaxY()); r++) {
      double y = bottom + (r + 0.5) * stepMm;
      double[] at = crossings(polygon, y);
      for (int k = 0; k + 1 < at.length; k += 2) {
        Arrays.fill(full[r], column(at[k]), column(at[k + 1]) + 1, true);
      }
    }
  }

  private static double[] crossings(Polygon polygon, double y) {
    double[] at = new double[16];
    int n = 0;
    for (int ring = -1; ring < polygon.getNumInteriorRing(); ring++) {
      Coordinate[] c =
          (ring < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(ring)).getCoordinates();
      for (int i = 1; i < c.length; i++) {
        if (c[i - 1].y <= y != c[i].y <= y) {
          at = n == at.length ? Arrays.copyOf(at, 2 * n) : at;
          at[n++] = c[i - 1].x + (y - c[i - 1].y) / (c[i].y - c[i - 1].y) * (c[i].x - c[i - 1].x);
        }
      }
    }
    double[] out = Arrays.copyOf(at, n);
    Arrays.sort(out);
    return out;
  }

  /** Returns sums over all squares below and left of each corner: [row][column], one more each. */
  int[][] sums() {
    int[][] sum = new int[rows() + 1][columns() + 1];
    for (int r = 0; r < rows(); r++) {
      for (int c = 0; c < columns(); c++) {
        sum[r + 1][c + 1] = sum[r][c + 1] + sum[r + 1][c] - sum[r][c] + (full[r][c] ? 1 : 0);
      }
    }
    return sum;
  }
}
