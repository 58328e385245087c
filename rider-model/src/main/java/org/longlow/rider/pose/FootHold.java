package org.longlow.rider.pose;

import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;

/**
 * What friction holds a foot where it rests, in a leg that hangs loose in hip and knee. The force
 * at the foot follows from moments about knee and hip; how much of the thigh lies on the pan is not
 * known, so none and all of it are tried and the worse counts.
 *
 * @param friction needed along the sole, 1; infinite where the foot is pulled off
 * @param toHeel whether it would slide towards the heel, else towards the toes
 */
public record FootHold(double friction, boolean toHeel) {

  /**
   * Returns it for a posture.
   *
   * @param onBoard whether the sole lies on a board and bears under the ankle, else on a peg under
   *     the ball
   */
  public static FootHold of(Body body, Posture p, boolean onBoard) {
    PointMm along = p.ball().minus(p.heel());
    along = along.times(1 / Math.max(1e-9, along.length()));
    PointMm at =
        onBoard ? p.heel().plus(along.times(p.ankle().minus(p.heel()).dot(along))) : p.ball();
    FootHold hanging = held(force(body, p, at, 1), along);
    FootHold carried = held(force(body, p, at, 0), along);
    return hanging.friction >= carried.friction ? hanging : carried;
  }

  private static FootHold held(PointMm onFoot, PointMm along) {
    double normal = onFoot.dot(along.left());
    double up = onFoot.dot(along);
    // the rest pushes the foot towards the toes where it would slide to the heel
    return new FootHold(normal > 1e-9 ? Math.abs(up) / normal : Double.POSITIVE_INFINITY, up > 0);
  }

  /**
   * Force of the rest on the foot, over that of gravity on one kg: it balances shank and foot about
   * the knee, and the whole leg about the hip.
   */
  private static PointMm force(Body body, Posture p, PointMm at, double thighShare) {
    PointMm fromKnee = at.minus(p.knee());
    PointMm fromHip = at.minus(p.hip());
    double lower =
        weight(body, Segment.SHANK, p.knee(), p.ankle(), p.knee())
            + weight(body, Segment.FOOT, p.heel(), p.toe(), p.knee());
    double whole =
        weight(body, Segment.SHANK, p.knee(), p.ankle(), p.hip())
            + weight(body, Segment.FOOT, p.heel(), p.toe(), p.hip())
            + thighShare * weight(body, Segment.THIGH, p.hip(), p.knee(), p.hip());
    // r x F = x Fz - z Fx, for both
    double det = fromKnee.x() * -fromHip.z() + fromKnee.z() * fromHip.x();
    if (Math.abs(det) < 1) {
      return PointMm.ORIGIN;
    }
    double up = (lower * -fromHip.z() + fromKnee.z() * whole) / det;
    double ahead = (fromKnee.x() * whole - fromHip.x() * lower) / det;
    return new PointMm(ahead, up);
  }

  /** Moment of a segment's weight about a point, kg mm. */
  private static double weight(
      Body body, Segment segment, PointMm near, PointMm far, PointMm about) {
    PointMm centre = near.towards(far, segment.centreShare(body.sex()));
    return body.massInGearKg(segment) * (centre.x() - about.x());
  }
}
