package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * How a chain-driven (or hub-driven) rear end answers drive force, from the side view.
 *
 * <p>The upper chain run meets the line axle to pivot at the instant force centre I; the squat line
 * goes from the rear contact to I, the load transfer line rises at atan(h/p) (Cossalter, Motorcycle
 * Dynamics, ch. 6, and common practice; checked by statics). The lower run is taken as slack. Work
 * it out at sag: the swingarm's static position matters.
 *
 * @param squatRad slope of the squat line, rad
 * @param transferRad slope of the load transfer line, rad
 * @param chainRad slope of the upper chain run, rad; NaN without a chain
 * @param forceCentre instant force centre; null if at infinity
 */
public record AntiSquat(double squatRad, double transferRad, double chainRad, PointMm forceCentre) {

  /**
   * Returns the answer of a chain drive.
   *
   * @param contact rear contact point
   * @param axle rear axle
   * @param pivot swingarm pivot
   * @param frontSprocket front sprocket centre
   * @param frontPitchRadiusMm mm, &gt; 0
   * @param rearPitchRadiusMm mm, &gt; 0
   * @param cgHeightMm height of the centre of gravity, mm, &gt; 0
   * @param wheelbaseMm mm, &gt; 0
   */
  public static AntiSquat ofChain(
      PointMm contact,
      PointMm axle,
      PointMm pivot,
      PointMm frontSprocket,
      double frontPitchRadiusMm,
      double rearPitchRadiusMm,
      double cgHeightMm,
      double wheelbaseMm) {
    Values.positive("front pitch radius mm", frontPitchRadiusMm);
    Values.positive("rear pitch radius mm", rearPitchRadiusMm);
    PointMm d = frontSprocket.minus(axle);
    double grow = rearPitchRadiusMm - frontPitchRadiusMm;
    if (d.length() <= Math.abs(grow)) {
      throw Values.refused("sprocket distance mm", d.length(), "more than the radii's difference");
    }
    double chain = d.angleRad() - Math.asin(grow / d.length());
    PointMm run = PointMm.unit(chain);
    PointMm tangent = axle.plus(run.left().times(rearPitchRadiusMm));
    PointMm arm = pivot.minus(axle);
    double cross = arm.cross(run);
    if (Math.abs(cross) < 1e-12 * arm.length()) {
      return of(arm.x() < 0 ? arm.times(-1) : arm, cgHeightMm, wheelbaseMm, chain, null);
    }
    PointMm centre = axle.plus(arm.times(tangent.minus(axle).cross(run) / cross));
    return of(centre.minus(contact), cgHeightMm, wheelbaseMm, chain, centre);
  }

  /** Returns the answer with no chain: hub motor, or a shaft reacting through the swingarm. */
  public static AntiSquat withoutChain(
      PointMm contact, PointMm pivot, double cgHeightMm, double wheelbaseMm) {
    return of(pivot.minus(contact), cgHeightMm, wheelbaseMm, Double.NaN, pivot);
  }

  private static AntiSquat of(
      PointMm line, double cgHeightMm, double wheelbaseMm, double chain, PointMm centre) {
    Values.positive("centre of gravity height mm", cgHeightMm);
    Values.positive("wheelbase mm", wheelbaseMm);
    return new AntiSquat(
        Math.atan2(line.z(), line.x()), Math.atan2(cgHeightMm, wheelbaseMm), chain, centre);
  }

  /** Returns the anti-squat, percent: 100 is neutral. */
  public double antiSquatPercent() {
    return 100 * Math.tan(squatRad) / Math.tan(transferRad);
  }
}
