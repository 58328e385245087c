package org.longlow.rider.pose;

import java.util.List;
import org.longlow.rider.geom.PointMm;

/**
 * What an obstacle ahead hides from the rider's eye.
 *
 * <p>Every point q of the obstacle ahead of the eye E is seen at the elevation atan2(q.z − E.z, q.x
 * − E.x). The sight line is the highest of these, β. If β &lt; 0 the nearest road seen over the
 * obstacle lies E.z / tan(−β) ahead of the eye (road at z = 0); otherwise no road is seen. For
 * straight edges the extreme is always at a corner, so corners suffice.
 *
 * @param sightRad elevation of the sight line, rad; −π/2 when nothing is ahead
 * @param roadMm distance from the eye to the nearest road seen, mm, along the road; +∞ if none
 * @param blockedRad angle that the obstacle takes up, rad, ≥ 0
 * @param over the point of the obstacle that the sight line grazes; null when nothing is ahead
 */
public record Sight(double sightRad, double roadMm, double blockedRad, PointMm over) {

  /** Returns the sight from an eye over an outline's corners. */
  public static Sight over(PointMm eye, List<PointMm> obstacle) {
    double highest = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    PointMm graze = null;
    for (PointMm corner : obstacle) {
      if (!(corner.x() > eye.x())) {
        continue;
      }
      double elevation = Math.atan2(corner.z() - eye.z(), corner.x() - eye.x());
      lowest = Math.min(lowest, elevation);
      if (elevation > highest) {
        highest = elevation;
        graze = corner;
      }
    }
    if (graze == null) {
      return new Sight(-Math.PI / 2, 0, 0, null);
    }
    double road =
        eye.z() <= 0
            ? Double.POSITIVE_INFINITY
            : highest < 0 ? eye.z() / Math.tan(-highest) : Double.POSITIVE_INFINITY;
    return new Sight(highest, road, highest - lowest, graze);
  }
}
