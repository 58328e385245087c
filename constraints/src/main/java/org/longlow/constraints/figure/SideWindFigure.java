package org.longlow.constraints.figure;

import org.longlow.constraints.machine.ride.Crosswind;
import org.longlow.rider.geom.PointMm;

/** The figure {@code side-wind}: what a sideways force on a steered point does. */
public final class SideWindFigure {

  /** Where the force acts, body axes. */
  public record Point(Double xMm, Double zMm) {}

  /**
   * Input.
   *
   * @param rakeDeg -85 to 85
   * @param wheelbaseMm &gt; 0
   * @param groundTrailMm trail along the ground
   * @param forceN sideways, positive to the left
   */
  public record Input(
      Double rakeDeg, Double wheelbaseMm, Double groundTrailMm, Point point, Double forceN) {}

  /**
   * Output.
   *
   * @param armMm positive ahead of or above the steering axis
   * @param momentNm positive steers left
   * @param steers {@code downwind}, {@code upwind} or {@code neutral}
   * @param leans {@code into wind}, {@code with wind} or {@code neutral}
   */
  public record Output(double armMm, double momentNm, String steers, String leans) {}

  private SideWindFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double rake = needs.rakeRad("rakeDeg", input.rakeDeg());
    double wheelbase = needs.positive("wheelbaseMm", input.wheelbaseMm());
    double trail = needs.finite("groundTrailMm", input.groundTrailMm());
    double x = Double.NaN;
    double z = Double.NaN;
    if (needs.there("point", input.point(), "an object with xMm, zMm")) {
      x = needs.finite("point.xMm", input.point().xMm());
      z = needs.finite("point.zMm", input.point().zMm());
    }
    double force = needs.finite("forceN", input.forceN());
    needs.settle();
    Crosswind wind = new Crosswind(rake, wheelbase, trail);
    PointMm point = new PointMm(x, z);
    return new Output(
        wind.armMm(point),
        wind.momentNm(point, force),
        wind.steers(point, force).word(),
        wind.leans(point, force).word());
  }
}
