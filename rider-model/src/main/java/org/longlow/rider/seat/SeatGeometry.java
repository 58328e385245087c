package org.longlow.rider.seat;

import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;

/**
 * Everything a person sits on, stands on and holds.
 *
 * @param pan seat pan, rear to front
 * @param back back, lower to upper end
 * @param headRest head rest, lower to upper end; null when there is none
 * @param foot where the feet are
 * @param hand where the hands are
 */
public record SeatGeometry(
    Cushion pan, Cushion back, Cushion headRest, FootContact foot, HandContact hand) {
  public SeatGeometry {
    if (pan == null || back == null || foot == null || hand == null) {
      throw new IllegalArgumentException(
          "a seat needs a pan, a back, a place for the feet and a place for the hands");
    }
  }
}
