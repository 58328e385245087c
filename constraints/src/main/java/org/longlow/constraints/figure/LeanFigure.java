package org.longlow.constraints.figure;

import org.longlow.constraints.machine.ride.LeanClearance;

/** The figure {@code lean}: roll at which a point meets the road, on toroidal tyres. */
public final class LeanFigure {

  /**
   * A wheel.
   *
   * @param radiusMm free radius, &gt; 0
   * @param sectionRadiusMm crown radius, 0 to radiusMm
   * @param centreHeightMm axle height; the radius if not given
   */
  public record Wheel(Double radiusMm, Double sectionRadiusMm, Double centreHeightMm) {}

  /**
   * The point, body axes.
   *
   * @param xMm forward of the rear axle
   * @param yMm to the side leaned to, &gt;= 0
   * @param zMm height
   */
  public record Point(Double xMm, Double yMm, Double zMm) {}

  /**
   * Input.
   *
   * @param rollDeg roll for clearance and pitch, 0 to below 90; those two are null if not given
   */
  public record Input(Double wheelbaseMm, Wheel front, Wheel rear, Point point, Double rollDeg) {}

  /**
   * Output.
   *
   * @param touchRollDeg roll at touch-down; null if the point never touches
   * @param touchPitchDeg pitch there, nose up positive; null if the point never touches
   * @param clearanceMm height above the road at rollDeg; null if rollDeg was not given
   * @param pitchDeg pitch at rollDeg; null if rollDeg was not given
   */
  public record Output(
      Double touchRollDeg, Double touchPitchDeg, Double clearanceMm, Double pitchDeg) {}

  private LeanFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double wheelbase = needs.positive("wheelbaseMm", input.wheelbaseMm());
    LeanClearance.Wheel front = wheel(needs, "front", input.front());
    LeanClearance.Wheel rear = wheel(needs, "rear", input.rear());
    double x = Double.NaN;
    double y = Double.NaN;
    double z = Double.NaN;
    if (needs.there("point", input.point(), "an object with xMm, yMm, zMm")) {
      x = needs.finite("point.xMm", input.point().xMm());
      y = needs.notNegative("point.yMm", input.point().yMm());
      z = needs.finite("point.zMm", input.point().zMm());
    }
    if (input.rollDeg() != null && !(input.rollDeg() >= 0 && input.rollDeg() < 90)) {
      needs.fault("rollDeg", input.rollDeg(), "0 to below 90");
    }
    if (front != null
        && rear != null
        && Math.abs(front.radiusMm() - rear.radiusMm())
            >= Math.hypot(wheelbase, front.centreHeightMm() - rear.centreHeightMm())) {
      needs.fault(
          "wheelbaseMm", input.wheelbaseMm(), "more than the difference of the wheel radii");
    }
    needs.settle();
    LeanClearance lean = new LeanClearance(wheelbase, front, rear);
    LeanClearance.TouchDown touch = lean.touchDown(x, y, z);
    Double clearance = null;
    Double pitch = null;
    if (input.rollDeg() != null) {
      double roll = Math.toRadians(input.rollDeg());
      if (roll > lean.steepestRollRad()) {
        needs.fault(
            "rollDeg",
            input.rollDeg(),
            "0 to " + Math.toDegrees(lean.steepestRollRad()) + " for tyres this unequal");
        needs.settle();
      }
      clearance = lean.clearanceMm(x, y, z, roll);
      pitch = Math.toDegrees(lean.pitchRad(roll));
    }
    return new Output(
        touch.touches() ? Math.toDegrees(touch.rollRad()) : null,
        touch.touches() ? Math.toDegrees(touch.pitchRad()) : null,
        clearance,
        pitch);
  }

  private static LeanClearance.Wheel wheel(Needs needs, String name, Wheel wheel) {
    if (!needs.there(name, wheel, "an object with radiusMm, sectionRadiusMm")) {
      return null;
    }
    double radius = needs.positive(name + ".radiusMm", wheel.radiusMm());
    double section = Double.NaN;
    double height = radius;
    if (Double.isNaN(radius)) {
      needs.notNegative(name + ".sectionRadiusMm", wheel.sectionRadiusMm());
    } else {
      section = needs.within(name + ".sectionRadiusMm", wheel.sectionRadiusMm(), 0, radius);
    }
    if (wheel.centreHeightMm() != null) {
      height = needs.finite(name + ".centreHeightMm", wheel.centreHeightMm());
    }
    return Double.isNaN(radius + section + height)
        ? null
        : new LeanClearance.Wheel(radius, section, height);
  }
}
