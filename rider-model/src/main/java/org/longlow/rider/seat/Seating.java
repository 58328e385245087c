package org.longlow.rider.seat;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.HeadSolver;
import org.longlow.rider.pose.Neck;

/**
 * Where a body sits with given sinks.
 *
 * @param panStation hip along the pan from its rear end, mm
 * @param backStation hip along the back from its lower end, mm
 * @param torsoFrom lower end of the torso's contact above the hip, mm
 * @param torsoTo its upper end, mm
 * @param backCentreMm the back's resultant above the hip, mm
 * @param headSink how deep the head is in its rest, mm
 * @param panOutline the buttocks on the pan; null where they miss it
 */
record Seating(
    SeatFit fit,
    PointMm hip,
    double recline,
    Neck neck,
    double panStation,
    double backStation,
    double torsoFrom,
    double torsoTo,
    double backCentreMm,
    double headSink,
    Underside panOutline) {

  /** As far from an end of the pan as no search strays, mm; seen in tests. */
  private static final double WELL_ON_MM = 30;

  /** Lower end of the torso's contact over hip-shoulder length: with 1.0 it centres at 0.60. */
  private static final double BACK_FROM = 0.20;

  /** The back's resultant is kept this share of the contact away from its ends. */
  static final double KERN = 0.30;

  /** Shortest contact that counts as leaning on the back, mm; judgement. */
  private static final double LEAST_TOUCH_MM = 20;

  /**
   * Returns where sinks have the body.
   *
   * @param sinks of the pan, the lower and upper end of the back and the head rest, mm
   * @param from lower end of the torso's contact as known so far, mm
   * @param to its upper end, mm
   */
  static Seating of(SeatFit fit, double[] sinks, double from, double to) {
    SeatGeometry seat = fit.seat();
    PointMm panAlong = fit.panAlong();
    PointMm backAlong = fit.backAlong();
    double span = to - from;
    double tilt = fit.parallel() || !(span > 0) ? 0 : (sinks[2] - sinks[1]) / span;
    double psi = Math.atan(tilt);
    double recline = fit.boardRecline() + psi;
    double atHip = sinks[1] - tilt * from;
    double offPan = seat.pan().foam().thicknessMm() - sinks[0] + fit.body().hipAboveSeatMm();
    double offBack =
        seat.back().foam().thicknessMm() - atHip + fit.body().hipToBackMm() / Math.cos(psi);
    PointMm onPan = seat.pan().from().plus(fit.panNormal().times(offPan));
    PointMm onBack = seat.back().from().plus(fit.backNormal().times(offBack));
    double panStation = onBack.minus(onPan).cross(backAlong) / panAlong.cross(backAlong);
    PointMm hip = onPan.plus(panAlong.times(panStation));
    double length = fit.body().hipToShoulderMm();
    double backStation = hip.minus(seat.back().from()).dot(backAlong);
    double torsoFrom = torsoFrom(fit.body(), backStation);
    double torsoTo = torsoTo(fit.body(), seat.back(), backStation);
    double touch = torsoTo - torsoFrom;
    double middle = 0.5 * (torsoFrom + torsoTo);
    double wanted = fit.parallel() ? middle : fit.options().backCentreShare() * length;
    double kept = Math.max(torsoFrom + KERN * touch, Math.min(torsoTo - KERN * touch, wanted));
    return new Seating(
        fit,
        hip,
        recline,
        Neck.of(fit.body(), hip, recline),
        panStation,
        backStation,
        torsoFrom,
        torsoTo,
        Math.max(SeatLoad.LEAST_BACK_CENTRE * length, kept),
        sinks[3],
        fit.seatOutline().clipped(-panStation, seat.pan().lengthMm() - panStation));
  }

  /** Lower end of the torso's contact above the hip, mm. */
  static double torsoFrom(Body body, double backStation) {
    return Math.max(BACK_FROM * body.hipToShoulderMm(), -backStation);
  }

  /** Upper end of it, mm. */
  static double torsoTo(Body body, Cushion back, double backStation) {
    return Math.min(body.hipToShoulderMm(), back.lengthMm() - backStation);
  }

  boolean leansBack() {
    return recline > 0 && torsoTo - torsoFrom > LEAST_TOUCH_MM;
  }

  double backCentreStation() {
    return backStation + backCentreMm;
  }

  /** Whether the hip is well away from the ends of the pan. */
  boolean isWellOn() {
    return panStation > WELL_ON_MM && panStation < fit.seat().pan().lengthMm() - WELL_ON_MM;
  }

  PointMm restSurface() {
    Cushion rest = fit.seat().headRest();
    return rest.from().plus(fit.restNormal().times(rest.foam().thicknessMm() - headSink));
  }

  /** Pitch of the head on the rest; NaN if it cannot touch. */
  double headPitch() {
    return neck.pitchTouching(restSurface(), fit.restNormal());
  }

  double headStation(double pitch) {
    PointMm centre = neck.head(fit.body().head().centre(), pitch);
    Cushion rest = fit.seat().headRest();
    return centre.minus(rest.from()).dot(rest.along());
  }

  /** Whether the head touches the rest between its ends. */
  boolean headIsOnRest() {
    double pitch = headPitch();
    if (Double.isNaN(pitch)) {
      return false;
    }
    double at = headStation(pitch);
    return at >= 0 && at <= fit.seat().headRest().lengthMm();
  }

  /** Gap from the helmet of the free head to the rest, mm; NaN when they do not face each other. */
  double headGapMm() {
    if (!fit.hasRest()) {
      return Double.NaN;
    }
    double radius = fit.body().head().radiusMm();
    double pitch = HeadSolver.gazePitch(recline);
    double at = headStation(pitch);
    if (at < -0.5 * radius || at > fit.seat().headRest().lengthMm() + 0.5 * radius) {
      return Double.NaN;
    }
    return neck.gapMm(pitch, restSurface(), fit.restNormal());
  }
}
