package org.longlow.rider.seat;

import org.longlow.rider.geom.PointMm;
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

  /** Returns the whole seat moved by a displacement. */
  public SeatGeometry moved(PointMm by) {
    FootContact movedFoot;
    if (foot instanceof FootContact.BallOnPeg peg) {
      movedFoot = new FootContact.BallOnPeg(peg.contact().plus(by));
    } else if (foot instanceof FootContact.HeelOnBoard heel) {
      movedFoot = new FootContact.HeelOnBoard(heel.heel().plus(by), heel.soleRad());
    } else {
      FootContact.Footboard board = (FootContact.Footboard) foot;
      movedFoot = new FootContact.Footboard(board.rear().plus(by), board.front().plus(by));
    }
    HandContact movedHand =
        hand instanceof HandContact.Grip grip ? new HandContact.Grip(grip.centre().plus(by)) : hand;
    return new SeatGeometry(
        pan.moved(by),
        back.moved(by),
        headRest == null ? null : headRest.moved(by),
        movedFoot,
        movedHand,
        width);
  }
}
