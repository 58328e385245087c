package org.longlow.constraints.figure;

import org.longlow.constraints.machine.chassis.Steering;

/** The figure {@code trail}: both trails and the wheel flop factor. */
public final class TrailFigure {

  /**
   * Input.
   *
   * @param radiusMm front tyre radius, &gt; 0
   * @param rakeDeg steering axis from vertical, -85 to 85, positive when the top leans back
   * @param offsetMm axle ahead of the axis, square to it, -radiusMm to radiusMm
   */
  public record Input(Double radiusMm, Double rakeDeg, Double offsetMm) {}

  /** Output, mm. */
  public record Output(double groundTrailMm, double normalTrailMm, double flopMm) {}

  private TrailFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double radius = needs.positive("radiusMm", input.radiusMm());
    double rake = needs.rakeRad("rakeDeg", input.rakeDeg());
    double offset = needs.offset("offsetMm", input.offsetMm(), radius);
    needs.settle();
    Steering s = new Steering(radius, rake, offset);
    return new Output(s.groundTrailMm(), s.normalTrailMm(), s.flopMm());
  }
}
