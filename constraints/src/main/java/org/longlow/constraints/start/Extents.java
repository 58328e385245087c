package org.longlow.constraints.start;

import org.locationtech.jts.geom.Coordinate;

/** How far a closed outline reaches beyond a line; its edges are long, so corners do not do. */
final class Extents {

  private Extents() {}

  /**
   * Returns its lowest place from {@code xMm} on, mm; the greatest double where it is not there.
   */
  static double lowestFrom(Coordinate[] ring, double xMm) {
    double lowest = Double.MAX_VALUE;
    for (int k = 1; k < ring.length; k++) {
      Coordinate a = ring[k - 1];
      Coordinate b = ring[k];
      if (b.x >= xMm) {
        lowest = Math.min(lowest, b.y);
      }
      if (a.x >= xMm != b.x >= xMm) {
        lowest = Math.min(lowest, a.y + (b.y - a.y) * (xMm - a.x) / (b.x - a.x));
      }
    }
    return lowest;
  }

  /**
   * Returns its foremost place from {@code zMm} up, mm; negative infinity where it is not there.
   */
  static double foremostAbove(Coordinate[] ring, double zMm) {
    double foremost = Double.NEGATIVE_INFINITY;
    for (int k = 1; k < ring.length; k++) {
      Coordinate a = ring[k - 1];
      Coordinate b = ring[k];
      if (b.y >= zMm) {
        foremost = Math.max(foremost, b.x);
      }
      if (a.y >= zMm != b.y >= zMm) {
        foremost = Math.max(foremost, a.x + (b.x - a.x) * (zMm - a.y) / (b.y - a.y));
      }
    }
    return foremost;
  }
}
