package org.longlow.constraints.machine.shop;

import org.longlow.constraints.machine.Values;

/**
 * The cope of a branch tube where it meets a round main tube, as a wrap template.
 *
 * <p>Angle φ runs round the branch, 0 on the acute-angle side, the offset positive towards φ = 90
 * deg. Distances are along the branch axis from the main tube's axis:
 *
 * <pre>y(φ, r) = [√(R² − (r sin φ + e)²) + r cos φ cos θ]/sin θ</pre>
 *
 * A square cut must clear the main tube over the whole wall, so {@link #cutMm} is the largest y
 * from inside to outside radius; y is concave in r. Own derivation, checked by intersecting
 * generator lines with the main cylinder.
 *
 * @param branchRadiusMm r, outside, mm, &gt; 0
 * @param branchInnerRadiusMm inside, mm, in [0, branchRadiusMm]; 0 is a bar
 * @param mainRadiusMm R, outside of the main tube, mm, at least branchRadiusMm + |offsetMm|
 * @param angleRad θ between the axes, rad, in (0, π/2]
 * @param offsetMm e, between the axes on their common perpendicular, mm
 */
public record TubeCope(
    double branchRadiusMm,
    double branchInnerRadiusMm,
    double mainRadiusMm,
    double angleRad,
    double offsetMm)
    implements TubeEndCut {

  public TubeCope {
    Values.positive("branch radius mm", branchRadiusMm);
    Values.within("branch inner radius mm", branchInnerRadiusMm, 0, branchRadiusMm);
    Values.positive("main radius mm", mainRadiusMm);
    Values.finite("offset mm", offsetMm);
    if (!(angleRad > 0 && angleRad <= Math.PI / 2 + 1e-12)) {
      throw Values.refused(
          "angle between tubes", Math.toDegrees(angleRad), "above 0 to 90 deg, the acute angle");
    }
    if (branchRadiusMm + Math.abs(offsetMm) > mainRadiusMm * (1 + 1e-12)) {
      throw Values.refused(
          "main radius mm", mainRadiusMm, "branch radius plus offset, or the branch runs past it");
    }
  }

  /**
   * Returns y(φ, r), mm: where a generator line of the branch at radius r meets the main tube.
   *
   * @param phiRad round the branch, rad
   * @param rMm mm, in [0, branchRadiusMm]
   */
  public double generatorMm(double phiRad, double rMm) {
    double across = rMm * Math.sin(phiRad) + offsetMm;
    double half = Math.sqrt(Math.max(0, mainRadiusMm * mainRadiusMm - across * across));
    return (half + rMm * Math.cos(phiRad) * Math.cos(angleRad)) / Math.sin(angleRad);
  }

  /**
   * Returns the cut at φ, mm: the largest y over the wall, so that nothing holds the joint open.
   */
  @Override
  public double cutMm(double phiRad) {
    double best =
        Math.max(generatorMm(phiRad, branchRadiusMm), generatorMm(phiRad, branchInnerRadiusMm));
    double sin = Math.sin(phiRad);
    if (Math.abs(sin) > 1e-12) {
      double k = Math.cos(phiRad) * Math.cos(angleRad) / sin;
      double crest = (mainRadiusMm * k / Math.sqrt(1 + k * k) - offsetMm) / sin;
      if (crest > branchInnerRadiusMm && crest < branchRadiusMm) {
        best = Math.max(best, generatorMm(phiRad, crest));
      }
    }
    return best;
  }

  /** Returns the wrap coordinate of φ round the outside of the branch, mm. */
  public double wrapMm(double phiRad) {
    return branchRadiusMm * phiRad;
  }
}
