package org.longlow.rider.seat;

import org.longlow.rider.body.Body;

/** How stiff the pan is under somebody who sits on it. */
public final class PanRate {

  /** Share of the force by which it is varied; small against the curve of the foam. */
  private static final double STEP = 0.01;

  private PanRate() {}

  /** The buttocks and thighs where they are over the pan. */
  static Underside outline(Body body, SeatGeometry seat, SeatOutcome.Seated seated) {
    Cushion pan = seat.pan();
    double station = seated.hip().minus(pan.from()).dot(pan.along());
    return Underside.seatOf(body, pan.widthMm()).clipped(-station, pan.lengthMm() - station);
  }

  /**
   * Returns the static rate of the foam under their weight on it, N/mm, pressed slowly; infinite
   * where nothing springs.
   */
  public static double nPerMm(Body body, SeatGeometry seat, SeatOutcome.Seated seated) {
    Underside outline = outline(body, seat, seated);
    double force = seated.pan().normalN();
    double by = STEP * force;
    double less = sinkMm(seat.pan(), outline, seated, force - by);
    return 2 * by / (sinkMm(seat.pan(), outline, seated, force + by) - less);
  }

  /** How deep they sink where only so much of them is on the foam, mm. */
  static double sinkMm(Cushion pan, Underside outline, SeatOutcome.Seated seated) {
    return sinkMm(pan, outline, seated, seated.pan().normalN()) + pan.foam().rigidSinkMm();
  }

  private static double sinkMm(
      Cushion pan, Underside outline, SeatOutcome.Seated seated, double forceN) {
    double safe = seated.pan().safeSinkMm() - pan.foam().rigidSinkMm();
    double helped =
        FoamContact.edgeFactor(
            FoamContact.EDGE_SHARE, pan.foam().thicknessMm(), FoamContact.areaCm2(outline, safe));
    return FoamContact.depth(pan.foam(), outline, forceN / helped, seated.pan().sinkMm());
  }
}
