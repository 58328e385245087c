package org.longlow.constraints.check;

import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * The road under two wheels by trigonometry: the common tangent of two circles lies below the line
 * of their centres by the arc sine of how much the radii differ over their distance.
 */
public record OnRoad(PointMm rear, double rearRadiusMm, PointMm front, double frontRadiusMm) {

  /** Radii from the sizes on the tyres: half the rim and the height of the section. */
  public static OnRoad of(Study study, Standing s) {
    boolean tourer = study.layout().name().equals("tourer");
    return new OnRoad(
        s.places().pin("rearAxle"),
        tourer ? 17 * 25.4 / 2 + 0.60 * 150 : 14 * 25.4 / 2 + 0.80 * 110,
        s.places().pin("frontAxle"),
        tourer ? 16 * 25.4 / 2 + 0.80 * 110 : 14 * 25.4 / 2 + 0.90 * 90);
  }

  double slopeRad() {
    double dx = front.x() - rear.x();
    double dz = front.z() - rear.z();
    return Math.atan2(dz, dx) - Math.asin((frontRadiusMm - rearRadiusMm) / Math.hypot(dx, dz));
  }

  public double wheelbaseMm() {
    return x(front);
  }

  /** Along the road from the rear contact. */
  public double x(PointMm p) {
    double a = slopeRad();
    return (p.x() - rear.x()) * Math.cos(a) + (p.z() - rear.z()) * Math.sin(a);
  }

  /** Above the road. */
  public double z(PointMm p) {
    double a = slopeRad();
    return (p.z() - rear.z()) * Math.cos(a) - (p.x() - rear.x()) * Math.sin(a) + rearRadiusMm;
  }
}
