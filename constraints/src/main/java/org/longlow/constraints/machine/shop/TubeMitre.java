package org.longlow.constraints.machine.shop;

import org.longlow.constraints.machine.Values;

/**
 * The end of a tube sawn off flat, where it meets a plate or an equal tube at a corner:
 *
 * <pre>y(φ) = r cos φ / tan θ</pre>
 *
 * <p>measured from where its axis goes through the plane of the cut; the curve is the cut at the
 * outside of the tube, and a saw that follows it is true to the inside too.
 *
 * @param branchRadiusMm r, outside, mm, &gt; 0
 * @param angleRad θ between the axis and the plane of the cut, rad, in (0, π/2]; π/2 is square
 */
public record TubeMitre(double branchRadiusMm, double angleRad) implements TubeEndCut {

  public TubeMitre {
    Values.positive("tube radius mm", branchRadiusMm);
    if (!(angleRad > 0 && angleRad <= Math.PI / 2 + 1e-12)) {
      throw Values.refused(
          "angle to the cut", Math.toDegrees(angleRad), "above 0 to 90 deg, the acute angle");
    }
  }

  @Override
  public double cutMm(double phiRad) {
    return branchRadiusMm * Math.cos(phiRad) / Math.tan(angleRad);
  }
}
