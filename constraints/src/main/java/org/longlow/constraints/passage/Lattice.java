package org.longlow.constraints.passage;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/**
 * Square cells over a window of the elevation. What is told of a point is told of its cell, so
 * figures are good to {@link #CELL_MM}.
 *
 * @param x0 rear edge, mm
 * @param z0 lower edge, mm
 * @param columns cells along
 * @param rows cells up
 */
record Lattice(double x0, double z0, int columns, int rows) {

  /** Breadth of a cell, mm. */
  static final double CELL_MM = 20;

  /** Farther than this nothing is looked for, cells. */
  private static final int FAR = 60;

  static Lattice over(double x0, double x1, double z0, double z1) {
    return new Lattice(
        x0,
        z0,
        Math.max(1, (int) Math.ceil((x1 - x0) / CELL_MM)),
        Math.max(1, (int) Math.ceil((z1 - z0) / CELL_MM)));
  }

  int cells() {
    return columns * rows;
  }

  /** The cell of a point; that at the edge of the window for one beyond it. */
  int cell(PointMm p) {
    return row(p.z()) * columns + column(p.x());
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) Math.floor((x - x0) / CELL_MM)));
  }

  private int row(double z) {
    return Math.max(0, Math.min(rows - 1, (int) Math.floor((z - z0) / CELL_MM)));
  }

  PointMm middle(int cell) {
    return new PointMm(
        x0 + (cell % columns + 0.5) * CELL_MM, z0 + (cell / columns + 0.5) * CELL_MM);
  }

  /** Whether a body reaches into the window. */
  boolean sees(Geometry outline) {
    var box = outline.getEnvelopeInternal();
    return box.getMaxX() > x0
        && box.getMinX() < x0 + columns * CELL_MM
        && box.getMaxY() > z0
        && box.getMinY() < z0 + rows * CELL_MM;
  }

  /** Returns the cells that bodies reach into within a band across the machine. */
  boolean[] filled(List<Prism> bodies, Interval band) {
    boolean[] filled = new boolean[cells()];
    for (Prism body : bodies) {
      if (body.across().gap(band) < 0) {
        fill(filled, body.outline());
      }
    }
    return filled;
  }

  private void fill(boolean[] filled, Geometry outline) {
    for (int i = 0; i < outline.getNumGeometries(); i++) {
      if (outline.getGeometryN(i) instanceof Polygon polygon && sees(polygon)) {
        edge(filled, polygon.getExteriorRing().getCoordinates());
        for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
          edge(filled, polygon.getInteriorRingN(k).getCoordinates());
        }
        inside(filled, polygon);
      }
    }
  }

  /** Every cell that an edge goes through. */
  private void edge(boolean[] filled, Coordinate[] ring) {
    for (int i = 0; i + 1 < ring.length; i++) {
      double dx = ring[i + 1].x - ring[i].x;
      double dz = ring[i + 1].y - ring[i].y;
      int steps = (int) Math.ceil(2 * Math.hypot(dx, dz) / CELL_MM) + 1;
      for (int k = 0; k <= steps; k++) {
        mark(filled, ring[i].x + dx * k / steps, ring[i].y + dz * k / steps);
      }
    }
  }

  private void mark(boolean[] filled, double x, double z) {
    int c = (int) Math.floor((x - x0) / CELL_MM);
    int r = (int) Math.floor((z - z0) / CELL_MM);
    if (c >= 0 && c < columns && r >= 0 && r < rows) {
      filled[r * columns + c] = true;
    }
  }

  /** Cells whose middle it holds, row by row between crossings. */
  private void inside(boolean[] filled, Polygon polygon) {
    var box = polygon.getEnvelopeInternal();
    double[] crossings = new double[16];
    for (int r = row(box.getMinY()); r <= row(box.getMaxY()); r++) {
      double z = z0 + (r + 0.5) * CELL_MM;
      int n = 0;
      for (int k = -1; k < polygon.getNumInteriorRing(); k++) {
        Coordinate[] ring =
            (k < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(k)).getCoordinates();
        for (int i = 0; i + 1 < ring.length; i++) {
          if (ring[i].y > z != ring[i + 1].y > z) {
            if (n == crossings.length) {
              crossings = Arrays.copyOf(crossings, 2 * n);
            }
            crossings[n++] =
                ring[i].x
                    + (z - ring[i].y) * (ring[i + 1].x - ring[i].x) / (ring[i + 1].y - ring[i].y);
          }
        }
      }
      Arrays.sort(crossings, 0, n);
      for (int i = 0; i + 1 < n; i += 2) {
        int from = (int) Math.ceil((crossings[i] - x0) / CELL_MM - 0.5);
        int to = (int) Math.floor((crossings[i + 1] - x0) / CELL_MM - 0.5);
        for (int c = Math.max(0, from); c <= Math.min(columns - 1, to); c++) {
          filled[r * columns + c] = true;
        }
      }
    }
  }

  /**
   * Returns how far the middle of each cell is from the edge of the nearest filled one, mm, at most
   * {@link #FAR} cells; exact distances of middles (Felzenszwalb and Huttenlocher 2012, distance
   * transforms of sampled functions), less half a cell.
   */
  int[] clearMm(boolean[] filled) {
    int[] down = new int[cells()];
    for (int c = 0; c < columns; c++) {
      int since = FAR;
      for (int r = 0; r < rows; r++) {
        int i = r * columns + c;
        since = filled[i] ? 0 : Math.min(FAR, since + 1);
        down[i] = since;
      }
      since = FAR;
      for (int r = rows - 1; r >= 0; r--) {
        int i = r * columns + c;
        since = filled[i] ? 0 : Math.min(FAR, since + 1);
        down[i] = Math.min(down[i], since);
      }
    }
    int[] clear = new int[cells()];
    int[] at = new int[columns];
    double[] from = new double[columns + 1];
    for (int r = 0; r < rows; r++) {
      along(down, r * columns, at, from, clear);
    }
    return clear;
  }

  /** Lower envelope of the parabolas of one row. */
  private void along(int[] down, int row, int[] at, double[] from, int[] clear) {
    int k = 0;
    at[0] = 0;
    from[0] = Double.NEGATIVE_INFINITY;
    from[1] = Double.POSITIVE_INFINITY;
    for (int q = 1; q < columns; q++) {
      double s = meets(down, row, at[k], q);
      while (s <= from[k]) {
        k--;
        s = meets(down, row, at[k], q);
      }
      k++;
      at[k] = q;
      from[k] = s;
      from[k + 1] = Double.POSITIVE_INFINITY;
    }
    k = 0;
    for (int q = 0; q < columns; q++) {
      while (from[k + 1] < q) {
        k++;
      }
      int d = down[row + at[k]];
      double square = (double) (q - at[k]) * (q - at[k]) + (double) d * d;
      double cells = Math.min(FAR, Math.sqrt(square));
      clear[row + q] = (int) Math.round(Math.max(0, cells - 0.5) * CELL_MM);
    }
  }

  private static double meets(int[] down, int row, int p, int q) {
    double fp = (double) down[row + p] * down[row + p] + (double) p * p;
    double fq = (double) down[row + q] * down[row + q] + (double) q * q;
    return (fq - fp) / (2.0 * (q - p));
  }
}
