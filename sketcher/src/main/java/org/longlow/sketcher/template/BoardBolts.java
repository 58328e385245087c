package org.longlow.sketcher.template;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.rider.geom.PointMm;

/**
 * Where a bracket is bolted to a board: two bolts M6 or 1/4 in in each footprint, middles 25 mm
 * from the edge of the board, at least four diameters apart. Common practice, from memory.
 */
final class BoardBolts {

  /** Middle of a bolt to the edge of a board, mm; common practice. */
  static final double EDGE_MM = 25;

  /** Between the middles of two M6, mm: four diameters; common practice. */
  static final double PITCH_MM = 24;

  private BoardBolts() {}

  /**
   * Returns their middles: two at a quarter of the longer side from its ends, one where there is no
   * room for two, none where the footprint lies too near to the edge.
   *
   * @param foot where the bracket lies against the board
   * @param board the board in plan
   */
  static List<PointMm> of(Envelope foot, Envelope board) {
    Envelope room = new Envelope(board);
    room.expandBy(-EDGE_MM);
    Envelope within = foot.intersection(room);
    if (room.isNull() || within.isNull()) {
      return List.of();
    }
    boolean along = within.getWidth() >= within.getHeight();
    double half = Math.max(within.getWidth(), within.getHeight()) / 4;
    PointMm middle = new PointMm(within.centre().x, within.centre().y);
    if (2 * half < PITCH_MM) {
      // ends of the footprint, where its quarters are too near to each other
      half = Math.max(within.getWidth(), within.getHeight()) / 2;
      if (2 * half < PITCH_MM) {
        return List.of(middle);
      }
      half = PITCH_MM / 2;
    }
    PointMm by = along ? new PointMm(half, 0) : new PointMm(0, half);
    return List.of(middle.minus(by), middle.plus(by));
  }
}
