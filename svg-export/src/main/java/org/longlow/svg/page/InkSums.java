package org.longlow.svg.page;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;

/**
 * How much ink lies in any box of a region, told at once: sums over small squares. A box counts
 * whole squares, so it may find ink that passes it by one square at most.
 */
final class InkSums {

  private static final double LEAST_SQUARE_MM = 0.5;

  /** Squares along the side of a region as large as a square, at most. */
  private static final double MOST_SQUARES = 700;

  /** Sums are whole numbers, so that they differ by exactly nothing where there is none. */
  private static final double PARTS_PER_MM = 100;

  private final Envelope region;
  private final double square;
  private final int columns;
  private final int rows;
  private final long[] sums;
  private boolean summed;

  InkSums(Envelope region) {
    this.region = region;
    this.square = Math.max(LEAST_SQUARE_MM, Math.sqrt(region.getArea()) / MOST_SQUARES);
    this.columns = 1 + (int) (region.getWidth() / square);
    this.rows = 1 + (int) (region.getHeight() / square);
    this.sums = new long[(columns + 1) * (rows + 1)];
  }

  /** Adds lines, each mm at a cost; to be done before sums are asked for. */
  void lines(Geometry lines, double cost) {
    GeometryComponentFilter each =
        part -> {
          if (part instanceof LineString line) {
            Coordinate[] c = line.getCoordinates();
            for (int i = 1; i < c.length; i++) {
              line(c[i - 1], c[i], cost);
            }
          }
        };
    lines.apply(each);
  }

  private void line(Coordinate a, Coordinate b, double cost) {
    double length = a.distance(b);
    int n = 1 + (int) (2 * length / square);
    long each = Math.max(1, Math.round(length / n * cost * PARTS_PER_MM));
    for (int k = 0; k < n; k++) {
      double t = (k + 0.5) / n;
      add(column(a.x + t * (b.x - a.x)), row(a.y + t * (b.y - a.y)), each);
    }
  }

  /** Fills a box, each mm² at a cost. */
  void area(Envelope box, double cost) {
    long each = Math.max(1, Math.round(square * square * cost * PARTS_PER_MM));
    for (int r = row(box.getMinY()); r <= row(box.getMaxY()); r++) {
      for (int c = column(box.getMinX()); c <= column(box.getMaxX()); c++) {
        add(c, r, each);
      }
    }
  }

  private void add(int column, int row, long cost) {
    sums[(row + 1) * (columns + 1) + column + 1] += cost;
  }

  private int column(double x) {
    return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - region.getMinX()) / square)));
  }

  private int row(double y) {
    return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - region.getMinY()) / square)));
  }

  /** Returns what lies in a box, as far as it is in the region. */
  double in(Envelope box) {
    if (!summed) {
      sum();
    }
    if (!box.intersects(region)) {
      return 0;
    }
    int left = column(box.getMinX());
    int right = column(box.getMaxX()) + 1;
    int low = row(box.getMinY()) * (columns + 1);
    int high = (row(box.getMaxY()) + 1) * (columns + 1);
    return (sums[high + right] - sums[high + left] - sums[low + right] + sums[low + left])
        / PARTS_PER_MM;
  }

  private void sum() {
    summed = true;
    for (int r = 1; r <= rows; r++) {
      long along = 0;
      for (int c = 1; c <= columns; c++) {
        int at = r * (columns + 1) + c;
        along += sums[at];
        sums[at] = along + sums[at - columns - 1];
      }
    }
  }
}
