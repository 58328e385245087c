package org.longlow.constraints.machine.shop;

import java.util.List;
import java.util.Locale;
import org.longlow.constraints.machine.Values;

/**
 * One bend of a round tube on its centre line. Plain geometry: on a die or mandrel the neutral line
 * stays near the centre line; springback and stretch by trial.
 *
 * @param radiusMm centre-line radius, mm, &gt; 0
 * @param angleRad change of direction, rad, in [0, π)
 */
public record TubeBend(double radiusMm, double angleRad) {

  /** The most difficulty of a simple bend, no unit; published bending practice, steel, read. */
  private static final double SIMPLE = 7;

  public TubeBend {
    Values.positive("bend radius mm", radiusMm);
    if (!(angleRad >= 0 && angleRad < Math.PI)) {
      throw Values.refused("bend angle", Math.toDegrees(angleRad), "0 to below 180 deg");
    }
  }

  /** Returns the arc length of the bend on the centre line, mm. */
  public double allowanceMm() {
    return radiusMm * angleRad;
  }

  /** Returns the distance from the apex of the legs to the start of the bend, mm. */
  public double tangentMm() {
    return radiusMm * Math.tan(angleRad / 2);
  }

  /** Returns how much shorter the bend is than the way round its apex, mm. */
  public double gainMm() {
    return 2 * tangentMm() - allowanceMm();
  }

  /**
   * Returns the length to cut for a bent tube, mm: apex-to-apex legs less the gains.
   *
   * @param legsMm apex to apex, one more than the bends, mm
   * @throws IllegalArgumentException if a leg is too short for the bends at its ends
   */
  public static double cutLengthMm(List<Double> legsMm, List<TubeBend> bends) {
    if (legsMm.size() != bends.size() + 1) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "%d bends need %d legs, got %d",
              bends.size(),
              bends.size() + 1,
              legsMm.size()));
    }
    double length = 0;
    for (int i = 0; i < legsMm.size(); i++) {
      double leg = Values.positive("leg mm", legsMm.get(i));
      double used =
          (i > 0 ? bends.get(i - 1).tangentMm() : 0)
              + (i < bends.size() ? bends.get(i).tangentMm() : 0);
      if (used > leg * (1 + 1e-12)) {
        throw Values.refused(
            "leg " + (i + 1) + " mm", leg, used + " up, the tangents of its bends; bend tighter");
      }
      length += leg;
    }
    for (TubeBend bend : bends) {
      length -= bend.gainMm();
    }
    return length;
  }

  /**
   * Returns the thinning of the outer wall, share of 1: (Ro − R)/Ro with Ro = R + D/2 (published
   * bending practice).
   */
  public double outerThinning(double outsideDiameterMm) {
    double outer = radiusMm + Values.positive("outside diameter mm", outsideDiameterMm) / 2;
    return (outer - radiusMm) / outer;
  }

  /**
   * Returns the difficulty of the bend on a rotary-draw bender; up to {@link #SIMPLE} is simple
   * (published bending practice, steel, read): [2·2 + 0.2 D/t + deg/180]/(R/D).
   */
  public double difficulty(double outsideDiameterMm, double wallMm) {
    Values.positive("outside diameter mm", outsideDiameterMm);
    Values.positive("wall mm", wallMm);
    double wallFactor = outsideDiameterMm / wallMm;
    return (4 + 0.2 * wallFactor + Math.toDegrees(angleRad) / 180) / (radiusMm / outsideDiameterMm);
  }

  /** Returns the least radius with which such a tube is bent so far with ease, mm. */
  public double simpleRadiusMm(double outsideDiameterMm, double wallMm) {
    return radiusMm * difficulty(outsideDiameterMm, wallMm) / SIMPLE;
  }

  /**
   * Returns the flat length of a sheet bend, mm: angle × (r + K T).
   *
   * @param insideRadiusMm r, mm
   * @param thicknessMm T, mm
   * @param neutralFactor K, 0 to 0.5 of the thickness
   */
  public static double sheetAllowanceMm(
      double insideRadiusMm, double thicknessMm, double neutralFactor, double angleRad) {
    Values.notNegative("inside radius mm", insideRadiusMm);
    Values.positive("sheet thickness mm", thicknessMm);
    Values.within("neutral factor", neutralFactor, 0, 0.5);
    return angleRad * (insideRadiusMm + neutralFactor * thicknessMm);
  }

  /** Returns what to take off the outside leg lengths of a sheet bend, mm. */
  public static double sheetDeductionMm(
      double insideRadiusMm, double thicknessMm, double neutralFactor, double angleRad) {
    return 2 * (insideRadiusMm + thicknessMm) * Math.tan(angleRad / 2)
        - sheetAllowanceMm(insideRadiusMm, thicknessMm, neutralFactor, angleRad);
  }
}
