package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/**
 * A planar chain of two rigid links from a fixed root to a target.
 *
 * <p>Law of cosines (Euclid, Elements II.12-13). The middle joint lies on the left of the line root
 * to target for {@code side} = +1 and on its right for −1.
 *
 * @param joint the middle joint
 * @param end the free end: the target if it is in reach, else the nearest point of the reachable
 *     ring on the line to it
 * @param missMm how far the target is out of reach, mm: positive too far, negative too near, else 0
 */
record TwoLink(PointMm joint, PointMm end, double missMm) {

  private static final PointMm ALONG = new PointMm(1, 0);

  /** Solves a limb in its own plane, where the root is the origin and the target lies on x. */
  static TwoLink in(LimbPlane plane, double first, double second, int side) {
    PointMm target = new PointMm(plane.spanMm(), 0);
    return solve(PointMm.ORIGIN, first, second, target, side, ALONG);
  }

  static TwoLink solve(
      PointMm root, double first, double second, PointMm target, int side, PointMm fallback) {
    PointMm span = target.minus(root);
    double d = span.length();
    PointMm u = d > 1e-9 ? span.times(1 / d) : fallback;
    double far = first + second;
    double near = Math.abs(first - second);
    if (d >= far) {
      return new TwoLink(root.plus(u.times(first)), root.plus(u.times(far)), d - far);
    }
    if (d <= near || d <= 1e-9) {
      double sign = first >= second ? 1 : -1;
      return new TwoLink(
          root.plus(u.times(sign * first)), root.plus(u.times(near)), Math.min(0, d - near));
    }
    double cos = (first * first + d * d - second * second) / (2 * first * d);
    double sin = Math.sqrt(Math.max(0, (1 - cos) * (1 + cos)));
    PointMm joint = root.plus(u.times(first * cos)).plus(u.left().times(side * first * sin));
    return new TwoLink(joint, target, 0);
  }
}
