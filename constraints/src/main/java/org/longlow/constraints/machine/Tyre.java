package org.longlow.constraints.machine;

/**
 * The tyre as the rest of the machine sees it: a circle with a rounded section.
 *
 * @param freeRadiusMm unloaded outside radius, mm, &gt; 0
 * @param widthMm section width, mm, &gt; 0
 * @param sectionRadiusMm crown radius of the section, mm, in [0, freeRadiusMm]; 0 is a thin disc
 * @param nearEquivalent true if converted from a size whose tabulated dimensions were not at hand
 * @param measured true if a figure typed from a real tyre replaced the nominal one
 */
public record Tyre(
    double freeRadiusMm,
    double widthMm,
    double sectionRadiusMm,
    boolean nearEquivalent,
    boolean measured) {

  /** Radial allowance for making tolerance, mm; engineering default, not a standard. */
  public static final double RADIAL_ALLOWANCE_MM = 5;

  /** Radial growth to allow for at speed, mm; engineering default, not a standard. */
  public static final double GROWTH_ALLOWANCE_MM = 10;

  /** Allowance each side of the section, mm; engineering default, not a standard. */
  public static final double SIDE_ALLOWANCE_MM = 5;

  public Tyre {
    Values.positive("free radius mm", freeRadiusMm);
    Values.positive("tyre width mm", widthMm);
    Values.within("section radius mm", sectionRadiusMm, 0, freeRadiusMm);
  }

  /** Returns this tyre with the radius measured on the real one; the figure to prefer. */
  public Tyre withMeasuredRadiusMm(double radiusMm) {
    return new Tyre(radiusMm, widthMm, sectionRadiusMm, nearEquivalent, true);
  }

  /** Returns this tyre with the section width measured on its own rim. */
  public Tyre withMeasuredWidthMm(double measuredWidthMm) {
    return new Tyre(freeRadiusMm, measuredWidthMm, sectionRadiusMm, nearEquivalent, true);
  }

  /** Returns this tyre with the crown radius taken from a profile gauge. */
  public Tyre withMeasuredSectionRadiusMm(double radiusMm) {
    return new Tyre(freeRadiusMm, widthMm, radiusMm, nearEquivalent, true);
  }

  /**
   * Returns the radius standing on the ground under a load: R − N/k.
   *
   * @param loadN wheel load, N, &gt;= 0
   * @param stiffnessNPerMm radial stiffness, N/mm, &gt; 0; 100 to 350 is usual for motorcycle tyres
   *     (Cossalter, Motorcycle Dynamics, ch. 2, from memory)
   */
  public double staticRadiusMm(double loadN, double stiffnessNPerMm) {
    Values.notNegative("wheel load N", loadN);
    Values.positive("tyre stiffness N/mm", stiffnessNPerMm);
    return freeRadiusMm - loadN / stiffnessNPerMm;
  }

  /** Returns the effective rolling radius, about R − deflection/3 (rule of thumb, from memory). */
  public double rollingRadiusMm(double loadN, double stiffnessNPerMm) {
    return freeRadiusMm - (freeRadiusMm - staticRadiusMm(loadN, stiffnessNPerMm)) / 3;
  }

  /**
   * Returns the roll angle at which the tread edge reaches the ground: asin((tread/2)/ρ). The
   * rounded section, and every lean figure, holds only up to here.
   *
   * @param treadWidthMm width across the tread edges, mm, &gt; 0
   * @return rad in (0, π/2]; π/2 if the tread covers the whole half round or the section is thin
   */
  public double treadEdgeRollRad(double treadWidthMm) {
    Values.positive("tread width mm", treadWidthMm);
    double half = treadWidthMm / 2;
    return half >= sectionRadiusMm ? Math.PI / 2 : Math.asin(half / sectionRadiusMm);
  }
}
