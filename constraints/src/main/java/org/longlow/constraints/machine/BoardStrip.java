package org.longlow.constraints.machine;

/**
 * A strip of seat board between two brackets, simply supported: sag and bending stress.
 *
 * <p>Ordinary beam formulas. A real board is also held in the second direction, so the strip is the
 * safe side. Limits in use (common practice, no source): sag up to span/150 under the static pan
 * load; stress up to a third of the characteristic strength at 3 g.
 *
 * @param section the strip's section
 * @param spanMm bracket to bracket, mm, &gt; 0
 * @param modulusMPa bending modulus, N/mm², &gt; 0
 */
public record BoardStrip(Section section, double spanMm, double modulusMPa) {

  /** Share of the span the board may sag under the static pan load (common practice). */
  public static final double SAG_SHARE = 1.0 / 150;

  public BoardStrip {
    Values.positive("span mm", spanMm);
    Values.positive("bending modulus MPa", modulusMPa);
  }

  /** Returns the sag under a force at mid-span, mm. */
  public double centreSagMm(double forceN) {
    return forceN * Math.pow(spanMm, 3) / (48 * stiffness());
  }

  /** Returns the sag under a force spread over the whole span, mm. */
  public double uniformSagMm(double forceN) {
    return patchSagMm(forceN, spanMm);
  }

  /**
   * Returns the sag under a force spread over a patch in the middle, mm.
   *
   * @param patchMm length of the patch, mm, in [0, spanMm]
   */
  public double patchSagMm(double forceN, double patchMm) {
    Values.within("patch mm", patchMm, 0, spanMm);
    double shape = 8 * Math.pow(spanMm, 3) - 4 * spanMm * patchMm * patchMm + Math.pow(patchMm, 3);
    return forceN * shape / (384 * stiffness());
  }

  /** Returns the bending stress under a force spread over a patch in the middle, MPa. */
  public double patchStressMPa(double forceN, double patchMm) {
    Values.within("patch mm", patchMm, 0, spanMm);
    return forceN * (2 * spanMm - patchMm) / 8 / section.modulusMm3();
  }

  /** Returns the sag at the tip of an overhang with a force on the tip, mm. */
  public double overhangSagMm(double forceN, double overhangMm) {
    return forceN * Math.pow(Values.notNegative("overhang mm", overhangMm), 3) / (3 * stiffness());
  }

  private double stiffness() {
    return modulusMPa * section.inertiaMm4();
  }
}
