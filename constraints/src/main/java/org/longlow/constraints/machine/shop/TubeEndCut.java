package org.longlow.constraints.machine.shop;

import org.longlow.constraints.machine.Values;

/**
 * How the end of a round tube is cut, as a line that is wrapped round it.
 *
 * <p>Angle φ runs round the tube, 0 on the acute-angle side, which leans towards what the end
 * meets. Distances are up the tube, along its axis.
 */
public sealed interface TubeEndCut permits TubeCope, TubeMitre {

  /** Samples round the tube when the extremes of the line are looked for. */
  int ROUND_STEPS = 720;

  /** Returns the outside radius of the tube that is cut, mm. */
  double branchRadiusMm();

  /** Returns the angle between the tube and what it meets, rad, in (0, π/2]. */
  double angleRad();

  /** Returns where the line runs at φ, mm up the tube from what its axis is measured to. */
  double cutMm(double phiRad);

  /** Returns where the longest point of the tube lies, mm up from there, less than 0 beyond it. */
  default double lowestMm() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ROUND_STEPS; i++) {
      least = Math.min(least, cutMm(2 * Math.PI * i / ROUND_STEPS));
    }
    return least;
  }

  /**
   * Returns the length of the template once round, mm.
   *
   * @param paperMm paper thickness, mm, &gt;= 0; the paper's middle runs round a larger circle
   */
  default double templateLengthMm(double paperMm) {
    return 2 * Math.PI * branchRadiusMm() + Math.PI * Values.notNegative("paper mm", paperMm);
  }
}
