package org.longlow.constraints.start;

import org.locationtech.jts.geom.Coordinate;

/** How far a closed outline reaches beyond a line; its edges are long, so corners do not do. */
final class Extents {

  private Extents() {}

  /**
   * Returns its lowest place from {@code xMm} on, mm; the greatest double where it is not there.
   */
  static double lowestFrom(Coordinate[] ring, double xMm) {
    double lowest = -farthest(ring, Coordinate.X, xMm, Coordinate.Y, -1);
    return Math.min(lowest, Double.MAX_VALUE);
  }

  /**
   * Returns its foremost place from {@code zMm} up, mm; negative infinity where it is not there.
   */
  static double foremostAbove(Coordinate[] ring, double zMm) {
    return farthest(ring, Coordinate.Y, zMm, Coordinate.X, 1);
  }

  /**
   * Returns the greatest {@code sign} times ordinate {@code of} where ordinate {@code by} is {@code
   * from} or more; negative infinity where it nowhere is.
   */
  private static double farthest(Coordinate[] ring, int by, double from, int of, int sign) {
    double farthest = Double.NEGATIVE_INFINITY;
    for (int k = 1; k < ring.length; k++) {
      double a = ring[k - 1].getOrdinate(by);
      double b = ring[k].getOrdinate(by);
      double start = sign * ring[k - 1].getOrdinate(of);
      double end = sign * ring[k].getOrdinate(of);
      if (b >= from) {
        farthest = Math.max(farthest, end);
      }
      if (a >= from != b >= from) {
        farthest = Math.max(farthest, start + (end - start) * (from - a) / (b - a));
      }
    }
    return farthest;
  }
}
