package org.longlow.rider.seat;

import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.RiderWidth;

/**
 * Everything a person sits on, stands on and holds.
 *
 * @param pan seat pan, rear to front
 * @param back back, lower to upper end
 * @param headRest head rest, lower to upper end; null when there is none
 * @param foot where the feet are
 * @param hand where the hands are
 * @param width where knees, feet and hands are sideways
 */
public record SeatGeometry(
    Cushion pan,
    Cushion back,
    Cushion headRest,
    FootContact foot,
    HandContact hand,
    RiderWidth width) {
  public SeatGeometry {
    if (pan == null || back == null || foot == null || hand == null || width == null) {
      throw new IllegalArgumentException(
          "a seat needs a pan, a back, a place for the feet and a place for the hands");
    }
  }
}
