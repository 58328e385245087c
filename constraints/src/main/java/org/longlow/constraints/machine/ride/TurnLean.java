package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;

/**
 * Roll in a steady turn on tyres with a round section.
 *
 * <p>Thin tyres lean at φi = atan(v²/(g Rc)). With section radius t the contact lies under the
 * section centre, so φ = φi + Δφ with sin Δφ = t sin φi/(h − t) (Cossalter, Motorcycle Dynamics,
 * ch. 4; the argument is φi, not the total). No tyre slip, no gyroscopic moment, no rider movement.
 *
 * @param idealRollRad φi, rad in [0, π/2)
 * @param correctionRad Δφ, rad
 */
public record TurnLean(double idealRollRad, double correctionRad) {

  /**
   * Returns the lean at a speed on a radius.
   *
   * @param speedMs m/s, &gt;= 0
   * @param radiusM radius of the path of the centre of gravity, m, &gt; 0
   * @param cgHeightMm height of the centre of gravity, mm
   * @param sectionRadiusMm mean of front and rear crown radius, mm, in [0, cgHeightMm/2]
   */
  public static TurnLean of(
      double speedMs, double radiusM, double cgHeightMm, double sectionRadiusMm) {
    Values.notNegative("speed m/s", speedMs);
    Values.positive("turn radius m", radiusM);
    requireSection(cgHeightMm, sectionRadiusMm);
    double ideal = Math.atan(speedMs * speedMs / (Values.STANDARD_GRAVITY_MS2 * radiusM));
    double sine = sectionRadiusMm * Math.sin(ideal) / (cgHeightMm - sectionRadiusMm);
    return new TurnLean(ideal, Math.asin(sine));
  }

  /** Returns the speed, m/s, of a turn on a radius, m, in which φi is {@code idealRad}. */
  public static double speedMs(double idealRad, double radiusM) {
    Values.positive("turn radius m", radiusM);
    return Math.sqrt(Values.STANDARD_GRAVITY_MS2 * radiusM * Math.tan(Math.max(0, idealRad)));
  }

  /** Past half the height the tyre would have to lean further than it can lie. */
  private static void requireSection(double cgHeightMm, double sectionRadiusMm) {
    Values.positive("centre of gravity height mm", cgHeightMm);
    Values.within("section radius mm", sectionRadiusMm, 0, cgHeightMm / 2);
  }

  /** Returns the total roll, rad. */
  public double rollRad() {
    return idealRollRad + correctionRad;
  }

  /** Returns the tyre load over its static value, 1/cos φi. */
  public double loadFactor() {
    return 1 / Math.cos(idealRollRad);
  }
}
