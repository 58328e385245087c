package org.longlow.rider.seat;

import org.longlow.rider.pose.FootLoad;
import org.longlow.rider.pose.HandContact;

/**
 * How a body presses on its seat where it sits, and how deep foam gives way to that.
 *
 * @param panDepth with the edge of the pan taken into account, mm
 * @param panSafeDepth without, mm
 * @param panFactor by how much the edge stiffens the pan, 1
 */
record Pressing(
    SeatLoad.Shares load,
    double panDepth,
    double panSafeDepth,
    double panFactor,
    BackContact torso,
    double headDepth) {

  /** Before anything is known: searches for depths begin where they do by themselves. */
  static final Pressing UNKNOWN = new Pressing(null, Double.NaN, Double.NaN, 1, null, Double.NaN);

  private static final double STEEPEST = Math.toRadians(89);

  /**
   * Returns loads from posture and depths from loads.
   *
   * @param near depths to begin the search at
   */
  static Pressing of(Seating at, Pressing near) {
    SeatFit fit = at.fit();
    SeatGeometry seat = fit.seat();
    SeatLoad.Shares load = load(at);
    double panDepth = 0;
    double panSafeDepth = 0;
    double panFactor = 1;
    double normal = at.panOutline() == null ? 0 : Math.max(0, load.panNormalN());
    if (normal > 0) {
      FoamStack pan = seat.pan().foam();
      panSafeDepth = FoamContact.depth(pan, at.panOutline(), normal, near.panSafeDepth);
      double area = FoamContact.areaCm2(at.panOutline(), panSafeDepth);
      panFactor = FoamContact.edgeFactor(fit.options().edgeShare(), pan.thicknessMm(), area);
      panDepth = FoamContact.depth(pan, at.panOutline(), normal / panFactor, near.panDepth);
    }
    double headDepth =
        fit.leaning()
            ? FoamContact.depth(
                seat.headRest().foam(), fit.headOutline(), load.headRestN(), near.headDepth)
            : 0;
    BackContact torso = torso(seat.back().foam(), at, load, near.torso);
    return new Pressing(load, panDepth, panSafeDepth, panFactor, torso, headDepth);
  }

  private static SeatLoad.Shares load(Seating at) {
    SeatFit fit = at.fit();
    SeatGeometry seat = fit.seat();
    double theta = at.leansBack() ? Math.min(at.recline(), STEEPEST) : 0;
    WeightShares weights =
        WeightShares.of(
            fit.body(), FootLoad.share(fit.body(), at.hip(), seat.foot(), seat.width()));
    double hands =
        seat.hand() instanceof HandContact.OnThighs
            ? 0
            : Math.min(weights.arms(), fit.options().handsShare());
    double centre = Math.min(1, at.backCentreMm() / fit.body().hipToShoulderMm());
    return SeatLoad.of(
        new SeatLoad.Input(
            fit.body().massInGearKg(),
            weights,
            theta,
            fit.panAlong().angleRad(),
            Math.max(SeatLoad.LEAST_BACK_CENTRE, centre),
            fit.leaning(),
            fit.leaning() ? Math.min(fit.restRecline(), STEEPEST) : theta,
            hands,
            fit.options().brakingG(),
            fit.options().bracingN()));
  }

  /** The torso pressed into such foam by the same load. */
  BackContact torsoIn(FoamStack foam, Seating at) {
    return torso(foam, at, load, torso);
  }

  private static BackContact torso(
      FoamStack foam, Seating at, SeatLoad.Shares load, BackContact near) {
    double force = at.leansBack() ? load.backN() : 0;
    double width = at.fit().backWidthM();
    return at.fit().parallel() || force == 0
        ? BackContact.parallel(foam, at.torsoTo() - at.torsoFrom(), width, force)
        : BackContact.press(
            foam, at.torsoFrom(), at.torsoTo(), width, force, at.backCentreMm(), near);
  }

  /** By how much sinks would have to change to be what the foam gives, mm. */
  double[] change(SeatFit fit, double[] sinks) {
    SeatGeometry seat = fit.seat();
    double back = rigidMm(seat.back(), torso.peakPa());
    return new double[] {
      panDepth + rigidMm(seat.pan(), panDepth) - sinks[0],
      torso.lowMm() + back - sinks[1],
      torso.highMm() + back - sinks[2],
      headDepth + (fit.leaning() ? rigidMm(seat.headRest(), headDepth) : 0) - sinks[3]
    };
  }

  /** What gives way without foam under any load. */
  private static double rigidMm(Cushion cushion, double pressed) {
    return pressed > 0 ? cushion.foam().rigidSinkMm() : 0;
  }

  /** Whether the pan carries the person at all. */
  boolean carries(Seating at) {
    return at.panOutline() != null && load.panNormalN() > 0;
  }

  FoamContact panBest(Seating at) {
    return FoamContact.at(
        at.fit().seat().pan().foam(), at.panOutline(), panDepth, load.panNormalN(), panFactor);
  }

  FoamContact panSafe(Seating at) {
    return FoamContact.at(
        at.fit().seat().pan().foam(), at.panOutline(), panSafeDepth, load.panNormalN(), 1);
  }

  FoamContact panWorn(Seating at) {
    return FoamContact.press(
        at.fit().seat().pan().foam().worn(), at.panOutline(), load.panNormalN());
  }

  FoamContact head(Seating at) {
    return FoamContact.at(
        at.fit().seat().headRest().foam(), at.fit().headOutline(), headDepth, load.headRestN(), 1);
  }

  FoamContact headWorn(Seating at) {
    return FoamContact.press(
        at.fit().seat().headRest().foam().worn(), at.fit().headOutline(), load.headRestN());
  }
}
