package org.longlow.constraints.passage;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;

/** The cells of the plane that an outline reaches into; some twice. */
final class ReachedCells {

  /** Breadth of a cell, mm. */
  static final double CELL_MM = 25;

  private int[] cells = new int[64];
  private int used;

  ReachedCells(Geometry outline) {
    for (int i = 0; i < outline.getNumGeometries(); i++) {
      if (outline.getGeometryN(i) instanceof Polygon polygon) {
        edge(polygon.getExteriorRing().getCoordinates());
        for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
          edge(polygon.getInteriorRingN(k).getCoordinates());
        }
        inside(polygon);
      }
    }
  }

  /** Columns and rows of the cells, one after the other. */
  int[] cells() {
    return Arrays.copyOf(cells, used);
  }

  private void mark(int column, int row) {
    if (used > 0 && cells[used - 2] == column && cells[used - 1] == row) {
      return;
    }
    if (used == cells.length) {
      cells = Arrays.copyOf(cells, 2 * used);
    }
    cells[used++] = column;
    cells[used++] = row;
  }

  /** Every cell that an edge goes through. */
  private void edge(Coordinate[] ring) {
    for (int i = 0; i + 1 < ring.length; i++) {
      double dx = ring[i + 1].x - ring[i].x;
      double dz = ring[i + 1].y - ring[i].y;
      int steps = (int) Math.ceil(2 * PointMm.norm(dx, dz) / CELL_MM) + 1;
      for (int k = 0; k <= steps; k++) {
        mark(
            (int) Math.floor((ring[i].x + dx * k / steps) / CELL_MM),
            (int) Math.floor((ring[i].y + dz * k / steps) / CELL_MM));
      }
    }
  }

  /** Cells whose middle it holds, row by row between crossings. */
  private void inside(Polygon polygon) {
    var box = polygon.getEnvelopeInternal();
    double[] crossings = new double[16];
    int last = (int) Math.floor(box.getMaxY() / CELL_MM);
    for (int r = (int) Math.floor(box.getMinY() / CELL_MM); r <= last; r++) {
      double z = (r + 0.5) * CELL_MM;
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
        int to = (int) Math.floor(crossings[i + 1] / CELL_MM - 0.5);
        for (int c = (int) Math.ceil(crossings[i] / CELL_MM - 0.5); c <= to; c++) {
          mark(c, r);
        }
      }
    }
  }
}
