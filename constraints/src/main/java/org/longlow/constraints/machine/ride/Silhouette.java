package org.longlow.constraints.machine.ride;

import java.util.List;
import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * Area and centroid of a silhouette.
 *
 * @param areaMm2 area, mm², &gt; 0
 * @param centroid area centroid, the first estimate of the pressure centre; across and up the page
 *     it is seen on
 */
public record Silhouette(double areaMm2, PointMm centroid) {

  /**
   * Returns area and centroid of a simple polygon.
   *
   * @param ring corners in either winding, closed or open, at least three
   * @throws IllegalArgumentException if the ring encloses nothing
   */
  public static Silhouette of(List<PointMm> ring) {
    if (ring.size() < 3) {
      throw Values.refused("silhouette corners", ring.size(), "3 or more");
    }
    // Taken from the first corner so that a far-off outline loses no digits.
    PointMm origin = ring.get(0);
    double twice = 0;
    double mx = 0;
    double mz = 0;
    double bound = 0;
    for (int i = 0; i < ring.size(); i++) {
      PointMm a = ring.get(i).minus(origin);
      PointMm b = ring.get((i + 1) % ring.size()).minus(origin);
      double cross = a.cross(b);
      twice += cross;
      mx += (a.x() + b.x()) * cross;
      mz += (a.z() + b.z()) * cross;
      bound += Math.abs(cross);
    }
    if (Math.abs(twice) <= 1e-12 * bound || twice == 0) {
      throw Values.refused("silhouette area mm2", twice / 2, "above 0; the outline is a line");
    }
    return new Silhouette(
        Math.abs(twice) / 2, origin.plus(new PointMm(mx / (3 * twice), mz / (3 * twice))));
  }
}
