package org.longlow.constraints.figure;

import org.longlow.constraints.machine.ride.TurnLean;

/** The figure {@code turn}: roll in a steady turn. */
public final class TurnFigure {

  /**
   * Input.
   *
   * @param speedKmh &gt;= 0
   * @param radiusM path radius of the centre of gravity, &gt; 0
   * @param cgHeightMm &gt; 0
   * @param sectionRadiusMm mean crown radius of both tyres, 0 to half of cgHeightMm
   */
  public record Input(Double speedKmh, Double radiusM, Double cgHeightMm, Double sectionRadiusMm) {}

  /**
   * Output.
   *
   * @param loadFactor tyre load over its static value, 1/cos of the ideal roll
   */
  public record Output(
      double idealRollDeg, double correctionDeg, double rollDeg, double loadFactor) {}

  private TurnFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double speed = needs.notNegative("speedKmh", input.speedKmh());
    double radius = needs.positive("radiusM", input.radiusM());
    double height = needs.positive("cgHeightMm", input.cgHeightMm());
    double section =
        Double.isNaN(height)
            ? needs.notNegative("sectionRadiusMm", input.sectionRadiusMm())
            : needs.within("sectionRadiusMm", input.sectionRadiusMm(), 0, height / 2);
    needs.settle();
    TurnLean lean = TurnLean.of(speed / 3.6, radius, height, section);
    return new Output(
        Math.toDegrees(lean.idealRollRad()),
        Math.toDegrees(lean.correctionRad()),
        Math.toDegrees(lean.rollRad()),
        lean.loadFactor());
  }
}
