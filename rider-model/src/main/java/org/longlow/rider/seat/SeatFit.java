package org.longlow.rider.seat;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/**
 * A person and a seat that are to agree: what does not change while they do.
 *
 * @param leaning whether the head is to lean on its rest
 * @param panAlong unit vector from rear to front of the pan
 * @param backAlong unit vector up the back
 * @param seatOutline the buttocks that press the pan
 * @param headOutline the head that presses its rest; null where it does not lean on one
 * @param backWidthM breadth of the torso on the back, m
 */
record SeatFit(
    Body body,
    SeatGeometry seat,
    SettleOptions options,
    boolean leaning,
    PointMm panAlong,
    PointMm backAlong,
    Underside seatOutline,
    Underside headOutline,
    double backWidthM) {

  static SeatFit of(Body body, SeatGeometry seat, SettleOptions options, boolean leaning) {
    boolean onRest = leaning && hasRest(seat);
    return new SeatFit(
        body,
        seat,
        options,
        leaning,
        seat.pan().along(),
        seat.back().along(),
        Underside.seatOf(body, seat.pan().widthMm()),
        onRest ? Underside.headOf(body, seat.headRest().widthMm()) : null,
        Math.min(body.measures().get("chestbreadth"), seat.back().widthMm()) / 1000);
  }

  /** The same person on another seat. */
  SeatFit on(SeatGeometry other) {
    return of(body, other, options, leaning);
  }

  PointMm panNormal() {
    return panAlong().left();
  }

  PointMm backNormal() {
    return backAlong().left().times(-1);
  }

  double boardRecline() {
    return reclineOf(backAlong());
  }

  /** Recline of the head rest, rad; 0 where the head does not lean on one. */
  double restRecline() {
    return headOutline == null ? 0 : reclineOf(seat.headRest().along());
  }

  private static double reclineOf(PointMm along) {
    return Math.atan2(-along.x(), along.z());
  }

  /** Whether the torso sinks into the back alike at both its ends. */
  boolean parallel() {
    return Double.isNaN(options.backCentreShare());
  }

  boolean hasRest() {
    return hasRest(seat);
  }

  private static boolean hasRest(SeatGeometry seat) {
    return seat.headRest() != null && seat.headRest().lengthMm() > 20;
  }

  /** Whether the head, if it is to lean, has a rest behind it. */
  boolean canBe() {
    return !leaning || (headOutline != null && restRecline() > 0);
  }

  PointMm restNormal() {
    return seat.headRest().along().left().times(-1);
  }
}
