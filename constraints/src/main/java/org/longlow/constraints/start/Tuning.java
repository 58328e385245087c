package org.longlow.constraints.start;

/**
 * What is found by trying.
 *
 * @param seatAheadMm how much farther ahead the seat is than it need be
 * @param longerMm how much longer the wheelbase is than it need be
 * @param front spring at the front wheel
 * @param rear spring at the rear wheel
 * @param standXMm foot of the stand ahead of the rear contact
 * @param standZMm its height with the machine upright
 */
record Tuning(
    double seatAheadMm,
    double longerMm,
    Spring front,
    Spring rear,
    double standXMm,
    double standZMm) {

  /** A spring as seen at the wheel. */
  record Spring(double rateNPerMm, double preloadN) {}

  static final Tuning FIRST = new Tuning(0, 0, new Spring(12, 250), new Spring(20, 450), 560, 6);

  Tuning withSeatAhead(double mm) {
    return new Tuning(mm, longerMm, front, rear, standXMm, standZMm);
  }

  Tuning withLonger(double mm) {
    return new Tuning(seatAheadMm, mm, front, rear, standXMm, standZMm);
  }

  Tuning withSprings(Spring ahead, Spring behind) {
    return new Tuning(seatAheadMm, longerMm, ahead, behind, standXMm, standZMm);
  }

  Tuning withStand(double xMm, double zMm) {
    return new Tuning(seatAheadMm, longerMm, front, rear, xMm, zMm);
  }
}
