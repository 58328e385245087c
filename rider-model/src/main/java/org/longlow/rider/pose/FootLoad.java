package org.longlow.rider.pose;

import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;

/**
 * What the feet carry: shank and foot as one piece that hangs in a relaxed knee and lies on the
 * foot rest, each mass shared between the two by where it falls along the line from knee to
 * contact. A ball on a peg bears there, a sole on a board under the ankle.
 */
public final class FootLoad {

  private FootLoad() {}

  /**
   * Returns what both feet carry of the weight in gear, as a fraction, for a hip and a foot rest.
   */
  public static double share(Body body, PointMm hip, FootContact contact, RiderWidth width) {
    LegSolver.Leg leg = LegSolver.solve(body, hip, contact, width);
    PointMm at = contact instanceof FootContact.BallOnPeg ? leg.ball() : leg.ankle();
    PointMm line = at.minus(leg.knee());
    double square = line.dot(line);
    double sum = 0;
    sum += part(body, Segment.SHANK, leg.knee(), leg.ankle(), leg.knee(), line);
    sum += part(body, Segment.FOOT, leg.heel(), leg.toe(), leg.knee(), line);
    double most = 2 * (body.shareInGear(Segment.SHANK) + body.shareInGear(Segment.FOOT));
    return Math.max(0, Math.min(most, 2 * sum / square));
  }

  private static double part(
      Body body, Segment segment, PointMm near, PointMm far, PointMm knee, PointMm line) {
    PointMm centre = near.towards(far, segment.centreShare(body.sex()));
    return body.shareInGear(segment) * centre.minus(knee).dot(line);
  }
}
