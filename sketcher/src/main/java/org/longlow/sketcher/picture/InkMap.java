package org.longlow.sketcher.picture;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;

/**
 * Where lines run on a picture, in small squares, so that the ink under any box is known at once.
 * Hairlines, of which hatching is made, do not count: words on card stand well on them.
 */
final class InkMap {

  /** Side of a square, paper mm. */
  private static final double SQUARE_MM = 1.4;

  /** Card as thick as this hides what is under it. */
  private static final double HIDES = 0.9;

  private final double square;
  private final double left;
  private final double low;
  private final int columns;
  private final int rows;

  /** First whether a line runs through a square; then how many do, left of and below a corner. */
  private final int[] ink;

  /** Maps the lines of a picture that is shown at 1:{@code denominator}. */
  InkMap(Drawing picture, double denominator) {
    Envelope box = picture.boundsMm();
    square = SQUARE_MM * denominator;
    left = box.isNull() ? 0 : box.getMinX();
    low = box.isNull() ? 0 : box.getMinY();
    columns = (int) (box.getWidth() / square) + 2;
    rows = (int) (box.getHeight() / square) + 2;
    ink = new int[(columns + 1) * (rows + 1)];
    for (Layer layer : picture.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape s) {
          if (s.style().fill() == Tone.PAPER && s.style().fillOpacity() > HIDES) {
            hide(s.geometry());
          }
          if (s.style().stroke() != null && s.style().strokeMm() > Canvas.HAIR_MM) {
            add(s.geometry());
          }
        }
      }
    }
    for (int r = 1; r <= rows; r++) {
      for (int c = 1; c <= columns; c++) {
        ink[at(c, r)] += ink[at(c - 1, r)] + ink[at(c, r - 1)] - ink[at(c - 1, r - 1)];
      }
    }
  }

  /** Takes away the lines inside an area, row by row. */
  private void hide(Geometry g) {
    if (!(g instanceof Polygon p)) {
      for (int i = 0; i < g.getNumGeometries(); i++) {
        if (g.getGeometryN(i) != g) {
          hide(g.getGeometryN(i));
        }
      }
      return;
    }
    Envelope box = p.getEnvelopeInternal();
    int first = row(box.getMinY());
    int last = row(box.getMaxY());
    if (last - first < 2 || box.getWidth() < 3 * square) {
      return;
    }
    double[][] crossings = new double[last - first + 1][4];
    int[] count = new int[crossings.length];
    cross(p.getExteriorRing(), first, crossings, count);
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      cross(p.getInteriorRingN(i), first, crossings, count);
    }
    for (int r = 0; r < crossings.length; r++) {
      Arrays.sort(crossings[r], 0, count[r]);
      for (int k = 0; k + 1 < count[r]; k += 2) {
        int from = column(crossings[r][k]) + 2;
        int to = column(crossings[r][k + 1]) + 1;
        if (from < to) {
          Arrays.fill(ink, at(from, first + r + 1), at(to, first + r + 1), 0);
        }
      }
    }
  }

  /** Notes where a ring crosses the middles of rows. */
  private void cross(LineString ring, int first, double[][] crossings, int[] count) {
    CoordinateSequence c = ring.getCoordinateSequence();
    for (int i = 1; i < c.size(); i++) {
      double ay = (c.getY(i - 1) - low) / square - 0.5;
      double by = (c.getY(i) - low) / square - 0.5;
      int from = (int) Math.ceil(Math.min(ay, by));
      int to = (int) Math.ceil(Math.max(ay, by));
      for (int row = Math.max(first, from); row < Math.min(to, first + count.length); row++) {
        double t = (row - ay) / (by - ay);
        int r = row - first;
        if (count[r] == crossings[r].length) {
          crossings[r] = Arrays.copyOf(crossings[r], 2 * count[r]);
        }
        crossings[r][count[r]++] = c.getX(i - 1) + t * (c.getX(i) - c.getX(i - 1));
      }
    }
  }

  private int at(int column, int row) {
    return row * (columns + 1) + column;
  }

  private void add(Geometry g) {
    if (g instanceof Polygon p) {
      line(p.getExteriorRing());
      for (int i = 0; i < p.getNumInteriorRing(); i++) {
        line(p.getInteriorRingN(i));
      }
    } else if (g instanceof LineString l) {
      line(l);
    } else {
      for (int i = 0; i < g.getNumGeometries(); i++) {
        if (g.getGeometryN(i) != g) {
          add(g.getGeometryN(i));
        }
      }
    }
  }

  private void line(LineString line) {
    CoordinateSequence c = line.getCoordinateSequence();
    for (int i = 1; i < c.size(); i++) {
      double x = c.getX(i - 1);
      double y = c.getY(i - 1);
      double dx = c.getX(i) - x;
      double dy = c.getY(i) - y;
      int steps = (int) (1.5 * Math.max(Math.abs(dx), Math.abs(dy)) / square) + 1;
      for (int k = 0; k < steps; k++) {
        double t = (k + 0.5) / steps;
        int column = column(x + t * dx);
        int row = row(y + t * dy);
        ink[at(column + 1, row + 1)] = 1;
      }
    }
  }

  private int column(double x) {
    return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - left) / square)));
  }

  private int row(double y) {
    return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - low) / square)));
  }

  /** Returns how many squares under a box have a line through them. */
  int under(Envelope box) {
    int c0 = column(box.getMinX());
    int c1 = column(box.getMaxX()) + 1;
    int r0 = row(box.getMinY());
    int r1 = row(box.getMaxY()) + 1;
    return ink[at(c1, r1)] - ink[at(c0, r1)] - ink[at(c1, r0)] + ink[at(c0, r0)];
  }

  /** Returns how many squares with a line in them a straight way runs through. */
  int along(Coordinate from, Coordinate to) {
    int steps = (int) (from.distance(to) / square) + 1;
    int sum = 0;
    for (int k = 0; k <= steps; k++) {
      double t = (double) k / steps;
      int column = column(from.x + t * (to.x - from.x));
      int row = row(from.y + t * (to.y - from.y));
      sum +=
          ink[at(column + 1, row + 1)]
              - ink[at(column, row + 1)]
              - ink[at(column + 1, row)]
              + ink[at(column, row)];
    }
    return sum;
  }
}
