package org.longlow.constraints.machine.shop;

/**
 * A seat board between two brackets, or beyond the last of them, as a strip of plywood that bends
 * one way (beam theory). A board that is held along its sides too bends less.
 *
 * @param widthMm of the board, square to the way from bracket to bracket, mm, &gt; 0
 * @param thickMm of the board, mm, &gt; 0
 */
public record BoardStrip(double widthMm, double thickMm) {

  /** Modulus of common plywood in bending, N/mm²: least of those measured in MODULUS_SOURCE. */
  public static final double MODULUS_NMM2 = 6860;

  /** Bending strength of common plywood, N/mm²: least of those measured there. */
  public static final double STRENGTH_NMM2 = 37.6;

  public static final String MODULUS_SOURCE =
      "commercial plywoods as measured, the least stiff and the least strong of them (Journal of the"
          + " Korean Wood Science and Technology 53(4) 429, table 3)";

  /** How many times its load at rest a board is looked at under, 1; common practice. */
  public static final double SHOCK_G = 3;

  /** It may sag by so much of its span under that: 1/150 at rest; common practice. */
  public static final double SAG_SHARE = SHOCK_G / 150;

  /** Its stress may be a third of its strength then, N/mm²; common practice. */
  public static final double MOST_STRESS_NMM2 = STRENGTH_NMM2 / 3;

  /** A body rests on so much of a board's length at least, mm; common practice. */
  public static final double PATCH_MM = 200;

  private static final int HALVINGS = 50;

  /**
   * How it bends.
   *
   * @param sagMm at its lowest, mm
   * @param stressNmm2 greatest stress, N/mm²
   * @param mostSagMm that sag is held against, mm
   */
  public record Bend(double sagMm, double stressNmm2, double mostSagMm) {

    /** Returns how much of what is allowed is taken, the worse of sag and stress, 1. */
    public double share() {
      return Math.max(sagMm / mostSagMm, stressNmm2 / MOST_STRESS_NMM2);
    }

    /** Whether it breaks. */
    public boolean breaks() {
      return stressNmm2 > STRENGTH_NMM2;
    }
  }

  /**
   * Returns how it bends between two brackets under a load on the middle of the span; where the
   * span is shorter than the patch, it carries its share.
   *
   * @param spanMm from bracket to bracket, mm, &gt; 0
   * @param forceN load on the patch, N
   * @param patchMm length that the load is spread over, mm, &gt;= 0
   * @param modulus N/mm²
   */
  public Bend between(double spanMm, double forceN, double patchMm, double modulus) {
    double a = Math.min(patchMm, spanMm);
    double f = patchMm > spanMm ? forceN * spanMm / patchMm : forceN;
    double cube = 8 * Math.pow(spanMm, 3) - 4 * spanMm * a * a + Math.pow(a, 3);
    return new Bend(
        f * cube / (384 * modulus * inertia()),
        stress(f * (2 * spanMm - a) / 8),
        SAG_SHARE * spanMm);
  }

  /**
   * Returns how it bends beyond its last bracket under a load on its free end; where it is shorter
   * than the patch, it carries its share. It may sag as a span of twice its length may.
   */
  public Bend beyond(double overhangMm, double forceN, double patchMm, double modulus) {
    double c = Math.min(patchMm, overhangMm);
    double f = patchMm > overhangMm ? forceN * overhangMm / patchMm : forceN;
    double from = overhangMm - c;
    // the load's slices, each bending the end by x² (3 e − x) / 6 E I
    double sum =
        overhangMm * (Math.pow(overhangMm, 3) - Math.pow(from, 3))
            - (Math.pow(overhangMm, 4) - Math.pow(from, 4)) / 4;
    double sag = c > 0 ? f / c * sum / (6 * modulus * inertia()) : 0;
    return new Bend(sag, stress(f * (overhangMm - c / 2)), SAG_SHARE * 2 * overhangMm);
  }

  /** Returns the longest span that keeps to sag and stress under such a load, mm. */
  public double longestSpanMm(double forceN) {
    double low = 0;
    double high = 1e5;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (between(middle, forceN, PATCH_MM, MODULUS_NMM2).share() <= 1) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double inertia() {
    return widthMm * Math.pow(thickMm, 3) / 12;
  }

  private double stress(double momentNmm) {
    return 6 * momentNmm / (widthMm * thickMm * thickMm);
  }
}
