package org.longlow.constraints.machine.section;

/**
 * What a gas spring pushes with: more the farther it is pressed together, as if along a straight
 * line.
 *
 * @param forceN what one pushes with at its full length, N, at 20 °C
 * @param lengthMm between its eyes at its full length, mm, &gt; 0
 * @param strokeMm by how much it can be pressed together, mm, &gt; 0
 * @param progression how many times as much it pushes when it is pressed together
 * @param count how many there are alike
 */
public record GasLaw(
    double forceN, double lengthMm, double strokeMm, double progression, int count) {

  /** Usual progression; makers' lists have 1.2 to 1.6. From memory. */
  public static final double PROGRESSION = 1.3;

  private static final double WARM_K = 293.15;

  /** A cold morning, −10 °C: judgement. */
  private static final double COLD_K = 263.15;

  /** A hot day in the sun, 40 °C: judgement. */
  private static final double HOT_K = 313.15;

  /** What some years leave of the force; from memory, makers do not promise a figure. */
  private static final double WORN = 0.9;

  /** Its share of the force when it is cold and has lost some gas. */
  public static final double COLD_AND_WORN = WORN * COLD_K / WARM_K;

  /** Its share of the force when it is new and hot; pressure goes with absolute temperature. */
  public static final double HOT = HOT_K / WARM_K;

  /** Its share of the force when it is dead. */
  public static final double DEAD = 0;

  /** Returns the least distance between its eyes, mm. */
  public double shortestMm() {
    return lengthMm - strokeMm;
  }

  /** Returns what all of them push their ends apart with, N, at 20 °C. */
  public double pushN(double distanceMm) {
    return count * forceN * (1 + (progression - 1) * (lengthMm - distanceMm) / strokeMm);
  }
}
