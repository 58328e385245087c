package org.longlow.rider.seat;

import org.longlow.rider.body.Body;

/** Seats of these tests for those of other rooms. */
public final class SampleSeats {

  private SampleSeats() {}

  /** Pan 15° up at the front, back 35° reclined, a rest for the head at 25°. */
  public static SeatGeometry withRest() {
    return SettleTest.seat();
  }

  /** The same without a rest. */
  public static SeatGeometry free() {
    SeatGeometry s = SettleTest.seat();
    return OnSeat.with(s, s.pan(), s.back(), null);
  }

  /** Somebody who sits on it. */
  public static SeatOutcome.Seated seated(Body body, SeatGeometry seat) {
    return OnSeat.seated(body, seat);
  }
}
