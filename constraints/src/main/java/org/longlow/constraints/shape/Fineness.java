package org.longlow.constraints.shape;

/**
 * How finely bodies whose breadth varies are divided.
 *
 * @param flatnessMm what points are left out within
 * @param chordMm what chords of a curved edge keep within before that
 * @param stationPieces pieces from one station to the next where the breadth is curved
 */
record Fineness(double flatnessMm, double chordMm, int stationPieces) {

  /** Curves of bodies lie within this of the true ones, mm. */
  static final double FLATNESS_MM = 0.2;

  /** For bodies in space. */
  static final Fineness BODY = new Fineness(FLATNESS_MM, Curves.FLATNESS_MM, 24);

  /** For what is cut from them at full size. */
  static final Fineness SHOP = new Fineness(0.01, 0.005, 160);
}
