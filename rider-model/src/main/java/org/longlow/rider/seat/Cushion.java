package org.longlow.rider.seat;

import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * Foam on a straight board.
 *
 * @param from board face under the foam: rear end of a pan, lower end of a back or head rest
 * @param to front end of a pan, upper end of a back or head rest
 * @param foam what lies on it; on the rider's side: above a pan, ahead of a back
 * @param widthMm width of the board, mm, in (0, 2000]
 */
public record Cushion(PointMm from, PointMm to, FoamStack foam, double widthMm) {
  public Cushion {
    if (from == null || to == null || foam == null) {
      throw new IllegalArgumentException("a cushion needs both ends of its board and its foam");
    }
    if (!(widthMm > 0 && widthMm <= 2000)) {
      throw new OutOfRange("widthMm must be above 0 to 2000 mm, got " + widthMm);
    }
  }

  public double lengthMm() {
    return from.distance(to);
  }

  /** Returns the unit vector along the board. */
  PointMm along() {
    return to.minus(from).times(1 / lengthMm());
  }
}
