package org.longlow.constraints.machine.shop;

import java.util.function.DoubleFunction;

/**
 * A seat board between two brackets, or beyond the last of them, as a strip that bends one way
 * (beam theory). A board that is held along its sides too bends less. A body rests on a stretch of
 * it, never on a line across it, so the load is spread over {@link #PATCH_MM}.
 *
 * @param widthMm of the board, square to the way from bracket to bracket, mm, &gt; 0
 * @param thickMm of the board, mm, &gt; 0
 * @param of what it is of
 */
public record BoardStrip(double widthMm, double thickMm, BoardMaterial of) {

  /** How many times its load at rest a board is looked at under, 1; common practice. */
  public static final double SHOCK_G = 3;

  /** It may sag by so much of its span under that: 1/150 at rest; common practice. */
  public static final double SAG_SHARE = SHOCK_G / 150;

  /** Its stress may be so much of its strength then, 1; common practice. */
  public static final double STRESS_SHARE = 1.0 / 3;

  /** A body rests on so much of a board's length at least, mm; common practice. */
  public static final double PATCH_MM = 200;

  private static final int HALVINGS = 50;

  /**
   * How it bends.
   *
   * @param sagMm at its lowest, mm
   * @param stressNmm2 greatest stress, N/mm²
   * @param mostSagMm that sag is held against, mm
   * @param strengthNmm2 stress at which it breaks or stays bent, N/mm²
   */
  public record Bend(double sagMm, double stressNmm2, double mostSagMm, double strengthNmm2) {

    /** Returns how much of what is allowed is taken, the worse of sag and stress, 1. */
    public double share() {
      return Math.max(sagMm / mostSagMm, stressShare());
    }

    /** Returns how much of the stress allowed is taken, 1. */
    public double stressShare() {
      return stressNmm2 / (strengthNmm2 * STRESS_SHARE);
    }

    /** Whether it breaks, or stays bent. */
    public boolean breaks() {
      return stressNmm2 > strengthNmm2;
    }
  }

  /**
   * Returns how it bends between two brackets under a load on the middle of the span; where the
   * span is shorter than the patch, it carries its share.
   *
   * @param spanMm from bracket to bracket, mm, &gt; 0
   * @param forceN load on the patch, N
   * @param patchMm length that the load is spread over, mm, &gt;= 0
   */
  public Bend between(double spanMm, double forceN, double patchMm) {
    double a = Math.min(patchMm, spanMm);
    double f = patchMm > spanMm ? forceN * spanMm / patchMm : forceN;
    double cube = 8 * Math.pow(spanMm, 3) - 4 * spanMm * a * a + Math.pow(a, 3);
    return new Bend(
        f * cube / (384 * of.modulusNmm2() * inertia()),
        stress(f * (2 * spanMm - a) / 8),
        SAG_SHARE * spanMm,
        of.strengthNmm2());
  }

  /**
   * Returns how it bends beyond its last bracket under a load on its free end; where it is shorter
   * than the patch, it carries its share. It may sag as a span of twice its length may.
   */
  public Bend beyond(double overhangMm, double forceN, double patchMm) {
    double c = Math.min(patchMm, overhangMm);
    double f = patchMm > overhangMm ? forceN * overhangMm / patchMm : forceN;
    double from = overhangMm - c;
    // the load's slices, each bending the end by x² (3 e − x) / 6 E I
    double sum =
        overhangMm * (Math.pow(overhangMm, 3) - Math.pow(from, 3))
            - (Math.pow(overhangMm, 4) - Math.pow(from, 4)) / 4;
    double sag = c > 0 ? f / c * sum / (6 * of.modulusNmm2() * inertia()) : 0;
    return new Bend(
        sag, stress(f * (overhangMm - c / 2)), SAG_SHARE * 2 * overhangMm, of.strengthNmm2());
  }

  /** Returns the longest span that keeps to sag and stress under such a load, mm. */
  public double longestSpanMm(double forceN) {
    return longest(mm -> between(mm, forceN, PATCH_MM));
  }

  /** Returns how far it may stand out beyond its last bracket under such a load, mm. */
  public double longestBeyondMm(double forceN) {
    return longest(mm -> beyond(mm, forceN, PATCH_MM));
  }

  private static double longest(DoubleFunction<Bend> bend) {
    double low = 0;
    double high = 1e5;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (bend.apply(middle).share() <= 1) {
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
