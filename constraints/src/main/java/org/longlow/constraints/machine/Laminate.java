package org.longlow.constraints.machine;

/**
 * A glass laminate by the weight of its reinforcement: mass = G/Wf, thickness = mass/ρL with 1/ρL =
 * Wf/2560 + (1 − Wf)/ρresin.
 *
 * @param massKgM2 mass per area, kg/m²
 * @param thicknessMm thickness, mm
 */
public record Laminate(double massKgM2, double thicknessMm) {

  /** Glass share by mass of chopped-strand mat in polyester, hand laid (25 to 33 %, memory). */
  public static final double MAT_GLASS_SHARE = 0.30;

  /** Glass share by mass of woven cloth in epoxy, hand laid. */
  public static final double CLOTH_GLASS_SHARE = 0.50;

  /**
   * Returns the laminate of a stack of reinforcement.
   *
   * @param glassGM2 weight of all plies, g/m², &gt; 0
   * @param glassShare Wf, by mass, in (0, 1)
   * @param resin its density counts
   */
  public static Laminate of(double glassGM2, double glassShare, Material resin) {
    Values.positive("glass weight g/m2", glassGM2);
    if (!(glassShare > 0 && glassShare < 1)) {
      throw Values.refused("glass share", glassShare, "between 0 and 1");
    }
    double mass = glassGM2 / 1000 / glassShare;
    double volume =
        glassShare / Material.GLASS_FIBRE.densityKgM3() + (1 - glassShare) / resin.densityKgM3();
    return new Laminate(mass, mass * volume * 1000);
  }
}
