package org.longlow.rider.pose;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.Bracket;
import org.longlow.rider.geom.PointMm;

/**
 * Solves hip, knee and foot: from hip joint to foot rest in space. The leg swivels about that line
 * until the knee stands out as {@link RiderWidth} has it, as far as it can. On a board the sole
 * points straight ahead; on a peg the foot lies in the plane of the leg.
 */
final class LegSolver {

  /** Middle and half-width of the bands that knee and ankle share a stretch by. */
  private static final double KNEE_MID = 0.5 * (ComfortBands.KNEE_LOW + ComfortBands.KNEE_HIGH);

  private static final double KNEE_HALF = 0.5 * (ComfortBands.KNEE_HIGH - ComfortBands.KNEE_LOW);
  private static final double ANKLE_MID = 0.5 * (ComfortBands.ANKLE_LOW + ComfortBands.ANKLE_HIGH);
  private static final double ANKLE_HALF = 0.5 * (ComfortBands.ANKLE_HIGH - ComfortBands.ANKLE_LOW);

  /** Where a leg points when its target lies on the hip: forward. */
  private static final PointMm FORWARD = new PointMm(1, 0);

  private LegSolver() {}

  /**
   * A leg.
   *
   * @param kneeYMm middle plane to knee; the others alike
   * @param kneeRad interior, true
   * @param shankSoleRad as {@link JointAngles} has it
   */
  record Leg(
      PointMm knee,
      PointMm ankle,
      PointMm heel,
      PointMm ball,
      PointMm toe,
      double kneeYMm,
      double ankleYMm,
      double ballYMm,
      double kneeRad,
      double shankSoleRad,
      double missMm) {

    /** Returns the same with toes bent at the ball. */
    Leg withToes(Body body, double slopeRad) {
      double toes = body.foot().toeMm() - body.foot().ballMm();
      PointMm bent = ball.plus(PointMm.unit(slopeRad).times(toes));
      return new Leg(
          knee, ankle, heel, ball, bent, kneeYMm, ankleYMm, ballYMm, kneeRad, shankSoleRad, missMm);
    }
  }

  static Leg solve(Body body, PointMm hip, FootContact contact, RiderWidth width) {
    if (contact instanceof FootContact.BallOnPeg peg) {
      return onPeg(body, hip, peg.contact(), width);
    }
    if (contact instanceof FootContact.Tiptoe tiptoe) {
      PointMm along = PointMm.unit(tiptoe.soleRad());
      PointMm heel = tiptoe.ball().minus(along.times(body.foot().ballMm()));
      return flat(body, hip, heel, tiptoe.soleRad(), width).withToes(body, tiptoe.groundRad());
    }
    return onFootboard(body, hip, (FootContact.Footboard) contact, width);
  }

  private static LimbPlane plane(Body body, PointMm hip, PointMm target, RiderWidth width) {
    return LimbPlane.between(hip, body.hipHalfMm(), target, width.footHalfMm(), FORWARD);
  }

  /** A leg whose sole lies at a slope with its heel at a place. */
  static Leg flat(Body body, PointMm hip, PointMm heel, double sole, RiderWidth width) {
    PointMm ankleTarget = heel.plus(body.foot().ankle().turned(sole));
    LimbPlane line = plane(body, hip, ankleTarget, width);
    TwoLink chain = TwoLink.in(line, body.thighMm(), body.shankMm(), 1);
    LimbPlane plane = line.swivelled(chain.joint(), width.kneeHalfMm());
    PointMm knee = plane.point(chain.joint());
    PointMm ankle = plane.point(chain.end());
    PointMm drawnHeel = heel.plus(ankle.minus(ankleTarget));
    PointMm along = PointMm.unit(sole);
    double out = plane.yMm(chain.end());
    return new Leg(
        knee,
        ankle,
        drawnHeel,
        drawnHeel.plus(along.times(body.foot().ballMm())),
        drawnHeel.plus(along.times(body.foot().toeMm())),
        plane.yMm(chain.joint()),
        out,
        out,
        Turns.at(chain.joint(), PointMm.ORIGIN, chain.end()),
        Turns.ccw(along, knee.minus(ankle)),
        chain.missMm());
  }

  private static Leg onFootboard(
      Body body, PointMm hip, FootContact.Footboard board, RiderWidth width) {
    PointMm along = board.front().minus(board.rear());
    double length = along.length();
    PointMm u = length > 1e-9 ? along.times(1 / length) : FORWARD;
    double sole = u.angleRad();
    PointMm ankleAtRear = board.rear().plus(body.foot().ankle().turned(sole));
    double thigh = body.thighMm();
    double shank = body.shankMm();
    double wanted =
        Math.sqrt(thigh * thigh + shank * shank - 2 * thigh * shank * Math.cos(KNEE_MID));
    PointMm toHip = hip.minus(ankleAtRear);
    double middle = toHip.dot(u);
    double off = Math.hypot(toHip.cross(u), width.footHalfMm() - body.hipHalfMm());
    double reach = wanted * wanted - off * off;
    double slide = middle + Math.sqrt(Math.max(0, reach));
    double last = Math.max(0, length - body.foot().ballMm());
    double at = Math.max(0, Math.min(last, slide));
    return flat(body, hip, board.rear().plus(u.times(at)), sole, width);
  }

  /**
   * Ball on a peg. At any ankle angle s shank and foot are one rigid piece from knee to ball, so
   * the chain is closed form; s is the one angle at which knee and ankle stray from the middles of
   * their comfort bands by the same share (one root, since the knee straightens as s falls).
   */
  private static Leg onPeg(Body body, PointMm hip, PointMm peg, RiderWidth width) {
    LimbPlane line = plane(body, hip, peg, width);
    double d = line.spanMm();
    double low = JointLimits.ANKLE_LOW;
    double high = JointLimits.ANKLE_HIGH;
    double s = root(body, d, low, high);
    double reach = body.thighMm() + kneeFromBall(body, s).length();
    if (d > reach) {
      s = Math.max(s, Math.min(high, ankleReaching(body, d - body.thighMm())));
    }
    PointMm inFoot = kneeFromBall(body, s);
    TwoLink chain = TwoLink.in(line, body.thighMm(), inFoot.length(), 1);
    PointMm knee = chain.joint();
    PointMm ball = chain.end();
    double sole = knee.minus(ball).angleRad() - inFoot.angleRad();
    PointMm along = PointMm.unit(sole);
    PointMm heel = ball.minus(along.times(body.foot().ballMm()));
    PointMm ankle = heel.plus(body.foot().ankle().turned(sole));
    LimbPlane plane = line.swivelled(knee, width.kneeHalfMm());
    return new Leg(
        plane.point(knee),
        plane.point(ankle),
        plane.point(heel),
        plane.point(ball),
        plane.point(heel.plus(along.times(body.foot().toeMm()))),
        plane.yMm(knee),
        plane.yMm(ankle),
        plane.yMm(ball),
        Turns.at(knee, PointMm.ORIGIN, ankle),
        Turns.ccw(along, knee.minus(ankle)),
        chain.missMm());
  }

  /** The knee from the ball's contact, in the frame of the sole, at ankle angle s. */
  private static PointMm kneeFromBall(Body body, double s) {
    PointMm ankle = body.foot().ankle();
    return new PointMm(
        ankle.x() + body.shankMm() * Math.cos(s) - body.foot().ballMm(),
        ankle.z() + body.shankMm() * Math.sin(s));
  }

  /** The ankle angle at which knee and ball are {@code span} apart; π when that is too far. */
  private static double ankleReaching(Body body, double span) {
    PointMm ankle = body.foot().ankle();
    PointMm v = new PointMm(body.foot().ballMm() - ankle.x(), -ankle.z());
    double a = body.shankMm();
    double b = v.length();
    double cos = (a * a + b * b - span * span) / (2 * a * b);
    return Math.acos(Math.max(-1, Math.min(1, cos))) + v.angleRad();
  }

  private static double root(Body body, double d, double low, double high) {
    if (imbalance(body, d, low) >= 0) {
      return low;
    }
    if (imbalance(body, d, high) <= 0) {
      return high;
    }
    return Bracket.root(angle -> imbalance(body, d, angle), low, high, 1e-14);
  }

  /** Ankle's share of stray less the knee's; rises with s. */
  private static double imbalance(Body body, double d, double s) {
    PointMm toKnee = kneeFromBall(body, s);
    PointMm fromAnkle = PointMm.unit(s).times(body.shankMm());
    double gamma = Math.atan2(fromAnkle.cross(toKnee), fromAnkle.dot(toKnee));
    double a = body.thighMm();
    double b = toKnee.length();
    double cos = (a * a + b * b - d * d) / (2 * a * b);
    // Past full stretch or fold the angle runs on linearly, so that the root stays unique.
    double beta = cos <= -1 ? Math.PI + (-1 - cos) : cos >= 1 ? 1 - cos : Math.acos(cos);
    double knee = beta - gamma;
    return (s - ANKLE_MID) / ANKLE_HALF - (knee - KNEE_MID) / KNEE_HALF;
  }
}
