package org.longlow.constraints.figure;

import org.longlow.constraints.machine.ride.SideClearance;
import org.longlow.rider.geom.PointMm;

/** The figure {@code breakover}: the crest that a belly point just clears. */
public final class BreakoverFigure {

  /** A wheel standing on the ground; radius &gt; 0. */
  public record Wheel(Double radiusMm) {}

  /** The belly point, between the axles and outside both tyres. */
  public record Point(Double xMm, Double zMm) {}

  /** Input; rear wheel at x = 0, front wheel at the wheelbase. */
  public record Input(Double wheelbaseMm, Wheel front, Wheel rear, Point point) {}

  /** Output: both wheels' shares and their sum. */
  public record Output(double rearDeg, double frontDeg, double breakoverDeg) {}

  private BreakoverFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double wheelbase = needs.positive("wheelbaseMm", input.wheelbaseMm());
    double front = radius(needs, "front", input.front());
    double rear = radius(needs, "rear", input.rear());
    double x = Double.NaN;
    double z = Double.NaN;
    if (needs.there("point", input.point(), "an object with xMm, zMm")) {
      x =
          Double.isNaN(wheelbase)
              ? needs.finite("point.xMm", input.point().xMm())
              : needs.within("point.xMm", input.point().xMm(), 0, wheelbase);
      z = needs.finite("point.zMm", input.point().zMm());
    }
    // Comparisons with NaN are false, so faults above raise none here.
    if (Math.hypot(x, rear - z) < rear) {
      needs.add(new FigureFault("point", "inside the rear tyre", "a point outside both tyres"));
    }
    if (Math.hypot(wheelbase - x, front - z) < front) {
      needs.add(new FigureFault("point", "inside the front tyre", "a point outside both tyres"));
    }
    needs.settle();
    SideClearance.Breakover b = SideClearance.breakover(wheelbase, rear, front, new PointMm(x, z));
    return new Output(
        Math.toDegrees(b.rearRad()), Math.toDegrees(b.frontRad()), Math.toDegrees(b.angleRad()));
  }

  private static double radius(Needs needs, String name, Wheel wheel) {
    return needs.there(name, wheel, "an object with radiusMm")
        ? needs.positive(name + ".radiusMm", wheel.radiusMm())
        : Double.NaN;
  }
}
