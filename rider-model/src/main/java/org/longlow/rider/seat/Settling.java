package org.longlow.rider.seat;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootLoad;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.HeadSolver;
import org.longlow.rider.pose.PoseSolver;

/**
 * The work of {@link Settle}: one person, one seat, head leaning or free. Used once, by one thread.
 */
final class Settling {

  private static final int MOST_ROUNDS = 60;
  private static final int CATCH_UP = 3;
  private static final int MOST_STEPS = 25;

  /** As far from an end of the pan as no search strays, mm; seen in tests. */
  private static final double WELL_ON_MM = 30;

  /** Lower end of the torso's contact over hip-shoulder length: with 1.0 it centres at 0.60. */
  private static final double BACK_FROM = 0.20;

  /** The back's resultant is kept this share of the contact away from its ends. */
  private static final double KERN = 0.30;

  /** Shortest contact that counts as leaning on the back, mm; judgement. */
  private static final double LEAST_TOUCH_MM = 20;

  private static final double STEEPEST = Math.toRadians(89);

  final Body body;
  final SeatGeometry seat;
  final SettleOptions options;
  final boolean leaning;
  final PointMm panAlong;
  final PointMm backAlong;
  final double backWidthM;
  private final PointMm panNormal;
  private final PointMm backNormal;
  private final double panRad;
  private final double boardRecline;
  private final Outline seatOutline;
  private final Outline headOutline;
  private final double restRecline;

  private final Agree sinks = new Agree(4);
  private final double[] change = new double[4];
  private double panDepth = Double.NaN;
  private double panSafeDepth = Double.NaN;
  private double headDepth = Double.NaN;
  private double panFactor = 1;
  private BackContact torso;
  private Outline panOutline;
  private PointMm hip;
  private double panStation;
  private double backStation;
  private double recline;
  private PointMm neckBase;
  private double torsoFrom;
  private double torsoTo;
  private double backCentreMm;
  private double headSink;
  private SeatLoad.Shares load;
  private int rounds;
  private boolean settled;

  Settling(Body body, SeatGeometry seat, SettleOptions options, boolean leaning) {
    this.body = body;
    this.seat = seat;
    this.options = options;
    this.leaning = leaning;
    panAlong = seat.pan().along();
    backAlong = seat.back().along();
    panNormal = panAlong.left();
    backNormal = backAlong.left().times(-1);
    panRad = panAlong.angleRad();
    boardRecline = Math.atan2(-backAlong.x(), backAlong.z());
    seatOutline = Outline.seatOf(body, seat.pan().widthMm());
    backWidthM = Math.min(body.measures().get("chestbreadth"), seat.back().widthMm()) / 1000;
    boolean rest = leaning && hasRest();
    headOutline = rest ? Outline.headOf(body, seat.headRest().widthMm()) : null;
    restRecline = rest ? Math.atan2(-restAlong().x(), restAlong().z()) : 0;
  }

  /** A seat near one that is settled already: starts where that one ended. */
  Settling(Settling near, SeatGeometry seat) {
    this(near.body, seat, near.options, near.leaning);
    sinks.begin(near.state());
    panDepth = near.panDepth;
    panSafeDepth = near.panSafeDepth;
    headDepth = near.headDepth;
    torso = near.torso;
    torsoFrom = near.torsoFrom;
    torsoTo = near.torsoTo;
  }

  /** Returns the sinks: pan, lower and upper end of the back, head rest, mm. */
  double[] state() {
    return new double[] {sinks.state(0), sinks.state(1), sinks.state(2), sinks.state(3)};
  }

  /**
   * Returns by how much a round of work changes these sinks, mm; the posture is left as they have
   * it.
   */
  double[] changeAt(double[] state) {
    hold(state);
    round();
    return change.clone();
  }

  /** Puts the body where these sinks have it. */
  void hold(double[] state) {
    sinks.begin(state);
    // the ends of the torso's contact are one round behind
    for (int i = 0; i < CATCH_UP; i++) {
      place();
    }
  }

  /**
   * Works until posture and sinks agree.
   *
   * @return false if the head was to lean on a rest and cannot
   */
  boolean run() {
    if (!canBe()) {
      return false;
    }
    while (rounds < MOST_ROUNDS && !settled) {
      rounds++;
      round();
      settled = sinks.move(change) < Settle.TOLERANCE_MM;
    }
    return !leaning || headAt();
  }

  private void round() {
    place();
    press();
    double back = sign(torso.peakPa()) * seat.back().foam().rigidSinkMm();
    change[0] = panDepth + sign(panDepth) * seat.pan().foam().rigidSinkMm() - sinks.state(0);
    change[1] = torso.lowMm() + back - sinks.state(1);
    change[2] = torso.highMm() + back - sinks.state(2);
    change[3] = headDepth + headRigid() - headSink;
  }

  /** Posture from sinks. */
  private void place() {
    double low = sinks.state(1);
    double span = torsoTo - torsoFrom;
    double tilt = parallel() || !(span > 0) ? 0 : (sinks.state(2) - low) / span;
    double psi = Math.atan(tilt);
    recline = boardRecline + psi;
    double atHip = low - tilt * torsoFrom;
    double offPan = seat.pan().foam().thicknessMm() - sinks.state(0) + body.hipAboveSeatMm();
    double offBack = seat.back().foam().thicknessMm() - atHip + body.hipToBackMm() / Math.cos(psi);
    PointMm onPan = seat.pan().from().plus(panNormal.times(offPan));
    PointMm onBack = seat.back().from().plus(backNormal.times(offBack));
    panStation = onBack.minus(onPan).cross(backAlong) / panAlong.cross(backAlong);
    hip = onPan.plus(panAlong.times(panStation));
    double length = body.hipToShoulderMm();
    backStation = hip.minus(seat.back().from()).dot(backAlong);
    torsoFrom = Math.max(BACK_FROM * length, -backStation);
    torsoTo = Math.min(length, seat.back().lengthMm() - backStation);
    panOutline = seatOutline.clipped(-panStation, seat.pan().lengthMm() - panStation);
    double touch = torsoTo - torsoFrom;
    double middle = 0.5 * (torsoFrom + torsoTo);
    double wanted = parallel() ? middle : options.backCentreShare() * length;
    double kept = Math.max(torsoFrom + KERN * touch, Math.min(torsoTo - KERN * touch, wanted));
    backCentreMm = Math.max(SeatLoad.LEAST_BACK_CENTRE * length, kept);
    neckBase = PoseSolver.Trunk.of(body, hip, recline).neckBase();
    headSink = sinks.state(3);
  }

  private boolean parallel() {
    return Double.isNaN(options.backCentreShare());
  }

  /** Loads from posture, sinks from loads. */
  private void press() {
    boolean onBack = leansBack();
    double theta = onBack ? Math.min(recline, STEEPEST) : 0;
    WeightShares weights =
        WeightShares.of(body, FootLoad.share(body, hip, seat.foot(), seat.width()));
    double hands =
        seat.hand() instanceof HandContact.OnThighs
            ? 0
            : Math.min(weights.arms(), options.handsShare());
    double centre = Math.min(1, backCentreMm / body.hipToShoulderMm());
    load =
        SeatLoad.of(
            new SeatLoad.Input(
                body.massInGearKg(),
                weights,
                theta,
                panRad,
                Math.max(SeatLoad.LEAST_BACK_CENTRE, centre),
                leaning,
                leaning ? Math.min(restRecline, STEEPEST) : theta,
                hands,
                options.brakingG(),
                options.bracingN()));
    FoamStack pan = seat.pan().foam();
    double normal = panOutline == null ? 0 : Math.max(0, load.panNormalN());
    if (normal > 0) {
      panSafeDepth = Contact.depth(pan, panOutline, normal, panSafeDepth);
      double area = Contact.areaCm2(panOutline, panSafeDepth);
      panFactor = Contact.edgeFactor(options.edgeShare(), pan.thicknessMm(), area);
      panDepth = Contact.depth(pan, panOutline, normal / panFactor, panDepth);
    } else {
      panSafeDepth = 0;
      panDepth = 0;
    }
    torso = torsoIn(seat.back().foam());
    headDepth =
        leaning
            ? Contact.depth(seat.headRest().foam(), headOutline, load.headRestN(), headDepth)
            : 0;
  }

  /** The torso pressed into such foam by the present load. */
  BackContact torsoIn(FoamStack foam) {
    double force = leansBack() ? load.backN() : 0;
    return parallel() || force == 0
        ? BackContact.parallel(foam, torsoTo - torsoFrom, backWidthM, force)
        : BackContact.press(foam, torsoFrom, torsoTo, backWidthM, force, backCentreMm, torso);
  }

  /** Whether the head, if it is to lean, has a rest behind it. */
  private boolean canBe() {
    return !leaning || (hasRest() && restRecline > 0);
  }

  /**
   * Works on from the sinks of a seat near by.
   *
   * @param inverse inverse of the slope of a round's change by the sinks there
   * @return false if that leads nowhere or the head cannot lean
   */
  boolean runFrom(double[] start, double[][] inverse) {
    if (!canBe()) {
      return false;
    }
    sinks.begin(start, inverse);
    while (rounds < MOST_STEPS && !settled) {
      rounds++;
      round();
      double size = sinks.move(change);
      if (!(size < 1e3)) {
        return false;
      }
      settled = size < Settle.TOLERANCE_MM;
    }
    return settled && (!leaning || headAt());
  }

  /** Returns whether the pan carries the person at all. */
  boolean carried() {
    return panOutline != null && load.panNormalN() > 0;
  }

  /** Whether the pan carries the person well away from its ends. */
  boolean isOverPan() {
    return carried() && isWellOn();
  }

  /** Whether that is so, but for the load, with nothing pressed in. */
  boolean wouldBeOverPan() {
    hold(new double[4]);
    return isWellOn();
  }

  private boolean isWellOn() {
    return panStation > WELL_ON_MM && panStation < seat.pan().lengthMm() - WELL_ON_MM;
  }

  /** Whether the head touches the rest between its ends. */
  private boolean headAt() {
    double pitch = headPitch();
    if (Double.isNaN(pitch)) {
      return false;
    }
    double at = headStation(pitch);
    return at >= 0 && at <= seat.headRest().lengthMm();
  }

  private double headRigid() {
    return leaning ? sign(headDepth) * seat.headRest().foam().rigidSinkMm() : 0;
  }

  private static double sign(double depth) {
    return depth > 0 ? 1 : 0;
  }

  private PointMm restAlong() {
    return seat.headRest().along();
  }

  boolean hasRest() {
    return seat.headRest() != null && seat.headRest().lengthMm() > 20;
  }

  PointMm restNormal() {
    return restAlong().left().times(-1);
  }

  PointMm restSurface() {
    Cushion rest = seat.headRest();
    return rest.from().plus(restNormal().times(rest.foam().thicknessMm() - headSink));
  }

  /** Pitch of the head on the rest; NaN if it cannot touch. */
  double headPitch() {
    return HeadSolver.pitchTouching(body, neckBase, restSurface(), restNormal());
  }

  double headStation(double pitch) {
    PointMm centre = neckBase.plus(body.head().centre().turned(pitch));
    return centre.minus(seat.headRest().from()).dot(restAlong());
  }

  /** Gap from the helmet of the free head to the rest, mm; NaN when they do not face each other. */
  double headGapMm() {
    if (!hasRest()) {
      return Double.NaN;
    }
    double pitch = HeadSolver.gazePitch(recline);
    double at = headStation(pitch);
    if (at < -0.5 * body.head().radiusMm()
        || at > seat.headRest().lengthMm() + 0.5 * body.head().radiusMm()) {
      return Double.NaN;
    }
    return HeadSolver.gapMm(body, neckBase, pitch, restSurface(), restNormal());
  }

  boolean leansBack() {
    return recline > 0 && torsoTo - torsoFrom > LEAST_TOUCH_MM;
  }

  PointMm hip() {
    return hip;
  }

  double recline() {
    return recline;
  }

  SeatLoad.Shares load() {
    return load;
  }

  int rounds() {
    return rounds;
  }

  boolean settled() {
    return settled;
  }

  double panStation() {
    return panStation;
  }

  double backCentreStation() {
    return backStation + backCentreMm;
  }

  Outline panOutline() {
    return panOutline;
  }

  Contact panSafe() {
    return Contact.at(seat.pan().foam(), panOutline, panSafeDepth, load.panNormalN(), 1);
  }

  Contact panWorn() {
    return Contact.press(seat.pan().foam().worn(), panOutline, load.panNormalN());
  }

  Contact headWorn() {
    return Contact.press(seat.headRest().foam().worn(), headOutline, load.headRestN());
  }

  Contact panBest() {
    return Contact.at(seat.pan().foam(), panOutline, panDepth, load.panNormalN(), panFactor);
  }

  BackContact torso() {
    return torso;
  }

  Contact head() {
    return Contact.at(seat.headRest().foam(), headOutline, headDepth, load.headRestN(), 1);
  }
}
