package org.longlow.constraints.machine.chassis;

import org.longlow.constraints.machine.Values;

/**
 * The tyre as the rest of the machine sees it: a circle with a rounded section.
 *
 * @param freeRadiusMm unloaded outside radius, mm, &gt; 0
 * @param widthMm section width, mm, &gt; 0
 * @param sectionRadiusMm crown radius of the section, mm, in [0, freeRadiusMm]; 0 is a thin disc
 * @param nearEquivalent true if converted from a size whose tabulated dimensions were not at hand
 */
public record Tyre(
    double freeRadiusMm, double widthMm, double sectionRadiusMm, boolean nearEquivalent) {

  public Tyre {
    Values.positive("free radius mm", freeRadiusMm);
    Values.positive("tyre width mm", widthMm);
    Values.within("section radius mm", sectionRadiusMm, 0, freeRadiusMm);
  }
}
