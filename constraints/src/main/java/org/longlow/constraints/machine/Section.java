package org.longlow.constraints.machine;

/**
 * Cross-section figures of shop stock. For layout and mass estimates, not for sizing
 * safety-critical parts.
 *
 * @param areaMm2 area, mm²
 * @param inertiaMm4 second moment about the bending axis through the centroid, mm⁴
 * @param modulusMm3 smallest section modulus, mm³
 * @param centroidMm centroid from the heel of an angle or from the face of other stock, mm
 */
public record Section(double areaMm2, double inertiaMm4, double modulusMm3, double centroidMm) {

  public Section {
    Values.positive("section area mm2", areaMm2);
    Values.positive("second moment mm4", inertiaMm4);
    Values.positive("section modulus mm3", modulusMm3);
    Values.positive("centroid mm", centroidMm);
  }

  /**
   * Returns a round tube.
   *
   * @param outsideMm outside diameter, mm, &gt; 0
   * @param wallMm wall, mm, in (0, outsideMm/2]
   */
  public static Section tube(double outsideMm, double wallMm) {
    Values.positive("outside diameter mm", outsideMm);
    Values.within("wall mm", wallMm, Double.MIN_NORMAL, outsideMm / 2);
    double inside = outsideMm - 2 * wallMm;
    double area = Math.PI * (outsideMm * outsideMm - inside * inside) / 4;
    double inertia = Math.PI * (Math.pow(outsideMm, 4) - Math.pow(inside, 4)) / 64;
    return new Section(area, inertia, 2 * inertia / outsideMm, outsideMm / 2);
  }

  /**
   * Returns an equal angle; root radii ignored (true mass 0 to 2 % more).
   *
   * @param legMm leg, mm
   * @param thicknessMm thickness, mm, in (0, legMm)
   */
  public static Section equalAngle(double legMm, double thicknessMm) {
    Values.positive("leg mm", legMm);
    Values.positive("thickness mm", thicknessMm);
    if (thicknessMm >= legMm) {
      throw Values.refused("thickness mm", thicknessMm, "less than the leg");
    }
    double a = legMm;
    double t = thicknessMm;
    double area = t * (2 * a - t);
    double c = (a * a + a * t - t * t) / (2 * (2 * a - t));
    double inertia =
        t * a * a * a / 12
            + a * t * (a / 2 - c) * (a / 2 - c)
            + (a - t) * t * t * t / 12
            + (a - t) * t * (c - t / 2) * (c - t / 2);
    return new Section(area, inertia, inertia / (a - c), c);
  }

  /**
   * Returns a flat strip of board bent about its thickness.
   *
   * @param widthMm mm, &gt; 0
   * @param thicknessMm mm, &gt; 0
   */
  public static Section strip(double widthMm, double thicknessMm) {
    Values.positive("strip width mm", widthMm);
    Values.positive("strip thickness mm", thicknessMm);
    double inertia = widthMm * Math.pow(thicknessMm, 3) / 12;
    return new Section(widthMm * thicknessMm, inertia, 2 * inertia / thicknessMm, thicknessMm / 2);
  }

  /** Returns the mass of a length, kg. */
  public double massKg(double lengthMm, double densityKgM3) {
    return areaMm2 * lengthMm * densityKgM3 * 1e-9;
  }

  /** Returns the radius of gyration, mm. */
  public double gyrationMm() {
    return Math.sqrt(inertiaMm4 / areaMm2);
  }
}
