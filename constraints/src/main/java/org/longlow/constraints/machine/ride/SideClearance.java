package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * Clearance angles of the elevation: approach, departure and breakover, in rad. Plain geometry; the
 * breakover is the same idea as the ramp breakover angle of SAE J1100 (from memory).
 */
public final class SideClearance {

  /**
   * Breakover at one point of the belly.
   *
   * @param rearRad share of the rear wheel, rad
   * @param frontRad share of the front wheel, rad
   */
  public record Breakover(double rearRad, double frontRad) {
    /** Returns the angle of the crest that the point just clears, rad; negative if it fouls. */
    public double angleRad() {
      return rearRad + frontRad;
    }
  }

  private SideClearance() {}

  /**
   * Returns the steepest ramp the machine can meet before a point ahead of the front tyre touches.
   *
   * @param centre front axle
   * @param radiusMm front tyre radius, mm, &gt; 0
   * @param point ahead of the axle and outside the tyre
   */
  public static double approachRad(PointMm centre, double radiusMm, PointMm point) {
    Values.positive("wheel radius mm", radiusMm);
    PointMm d = point.minus(centre);
    double away = d.length();
    if (away < radiusMm) {
      throw Values.refused("distance of the point from the axle mm", away, "the tyre radius up");
    }
    return Math.atan2(d.z(), d.x()) + Math.asin(radiusMm / away);
  }

  /** Returns the departure angle of a point behind the rear tyre: the approach angle mirrored. */
  public static double departureRad(PointMm centre, double radiusMm, PointMm point) {
    return approachRad(mirrored(centre), radiusMm, mirrored(point));
  }

  private static PointMm mirrored(PointMm p) {
    return new PointMm(-p.x(), p.z());
  }

  /**
   * Returns the breakover at a belly point between the wheels; the machine's is the smallest over
   * all its points. Both wheels stand on the ground: axle heights are their radii.
   *
   * @param rearRadiusMm rear wheel at x = 0, mm, &gt; 0
   * @param frontRadiusMm front wheel at x = wheelbaseMm, mm, &gt; 0
   * @param point outside both tyres, x in [0, wheelbaseMm]
   */
  public static Breakover breakover(
      double wheelbaseMm, double rearRadiusMm, double frontRadiusMm, PointMm point) {
    Values.positive("wheelbase mm", wheelbaseMm);
    Values.within("belly point x mm", point.x(), 0, wheelbaseMm);
    return new Breakover(
        share(rearRadiusMm, point.x(), point.z()),
        share(frontRadiusMm, wheelbaseMm - point.x(), point.z()));
  }

  private static double share(double radius, double along, double z) {
    Values.positive("wheel radius mm", radius);
    double away = PointMm.norm(along, radius - z);
    if (away < radius) {
      throw Values.refused("distance of the belly point from an axle mm", away, "the radius up");
    }
    return Math.asin(radius / away) - Math.atan2(radius - z, along);
  }
}
