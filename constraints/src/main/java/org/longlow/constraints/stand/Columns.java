package org.longlow.constraints.stand;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** Which stretches of upright lines, equally far apart, lie in polygons. For one thread. */
final class Columns {

  private final double minX;
  private final double width;
  private final double perMm;

  /** From and to of each stretch on a line, in turn. */
  private final double[][] spans;

  private final int[] spanEnd;

  /** Where the polygon at hand crosses a line. */
  private final double[][] crossings;

  private final int[] crossed;

  /**
   * @param count lines, each in the middle of a column
   * @param width of a column, mm
   */
  Columns(int count, double minX, double width) {
    this.minX = minX;
    this.width = width;
    perMm = 1 / width;
    spans = new double[count][32];
    spanEnd = new int[count];
    crossings = new double[count][8];
    crossed = new int[count];
  }

  double x(int column) {
    return minX + (column + 0.5) * width;
  }

  /** Returns from and to of all stretches on a line, those that begin lowest first. */
  double[] spans(int column) {
    double[] all = spans[column];
    for (int i = 2; i < spanEnd[column]; i += 2) {
      double from = all[i];
      double to = all[i + 1];
      int k = i;
      for (; k > 0 && all[k - 2] > from; k -= 2) {
        all[k] = all[k - 2];
        all[k + 1] = all[k - 1];
      }
      all[k] = from;
      all[k + 1] = to;
    }
    return all;
  }

  /** Returns how many numbers of {@link #spans} there are. */
  int end(int column) {
    return spanEnd[column];
  }

  /** Adds what a polygon covers: between its first and second crossing, and so on. */
  void add(Polygon polygon) {
    Envelope box = polygon.getEnvelopeInternal();
    int first = Math.max(0, (int) Math.ceil((box.getMinX() - minX) / width - 0.5));
    int last = Math.min(spans.length - 1, (int) Math.floor((box.getMaxX() - minX) / width - 0.5));
    if (last < first) {
      return;
    }
    Arrays.fill(crossed, first, last + 1, 0);
    cross(polygon.getExteriorRing().getCoordinateSequence(), first, last);
    for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
      cross(polygon.getInteriorRingN(hole).getCoordinateSequence(), first, last);
    }
    for (int k = first; k <= last; k++) {
      Arrays.sort(crossings[k], 0, crossed[k]);
      for (int n = 0; n + 1 < crossed[k]; n += 2) {
        if (spanEnd[k] == spans[k].length) {
          spans[k] = Arrays.copyOf(spans[k], 2 * spanEnd[k]);
        }
        spans[k][spanEnd[k]++] = crossings[k][n];
        spans[k][spanEnd[k]++] = crossings[k][n + 1];
      }
    }
  }

  private void cross(CoordinateSequence ring, int first, int last) {
    for (int i = 0; i + 1 < ring.size(); i++) {
      Coordinate from = ring.getCoordinate(i);
      Coordinate to = ring.getCoordinate(i + 1);
      double low = Math.min(from.x, to.x);
      double high = Math.max(from.x, to.x);
      // one line too early may be looked at, never one too late
      int k = Math.max(first, (int) ((low - minX) * perMm - 0.5 - 1e-9));
      for (; k <= last; k++) {
        double x = x(k);
        if (x >= high) {
          break; // half open, so that a corner is crossed once
        }
        if (x >= low) {
          double share = (x - from.x) / (to.x - from.x);
          int n = crossed[k]++;
          if (n == crossings[k].length) {
            crossings[k] = Arrays.copyOf(crossings[k], 2 * n);
          }
          crossings[k][n] = from.y + share * (to.y - from.y);
        }
      }
    }
  }
}
