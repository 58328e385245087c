package org.longlow.constraints.machine.chassis;

import org.longlow.constraints.machine.Values;

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
}
