package org.longlow.rider.effort;

import org.longlow.rider.body.Sex;

/**
 * Isometric strength of a muscle group at one joint of one side, N m: means of healthy adults, at
 * the joint angles named. Between people it varies by 20 to 30 % (standard deviation over mean,
 * checked in a text, PMC6157470); it falls with age, which a layout does not know.
 */
public enum Strength {
  /** Men 30 ± 6 (9 men, doi 10.1007/s10439-014-1046-0); women 0.68 of it (14 matched pairs). */
  NECK_FLEXION(
      30, 0.68 * 30, false, true, "neck strength of 9 men, and of 14 pairs of women and men"),
  /** Men 51 ± 11, women 0.80 of it; the same texts. */
  NECK_EXTENSION(51, 0.80 * 51, false, true, NECK_FLEXION.source),
  /** At 45°: men 68.6, women about half ("Dynamic shoulder flexion strength", 26 and 25 people). */
  SHOULDER_FLEXION(68.6, 0.5 * 68.6, false, true, "shoulder strength of 26 men and 25 women"),
  /** Taken as that of flexion; from memory. */
  SHOULDER_EXTENSION(68.6, 0.5 * 68.6, false, false, "shoulder extension, from memory"),
  /** At 90°: men 65 to 80, women 30 to 40; from memory, not certain. */
  ELBOW_FLEXION(72.5, 35, false, false, "elbow strength, from memory"),
  /** Some 0.6 of flexion; from memory, not certain. */
  ELBOW_EXTENSION(0.6 * 72.5, 0.6 * 35, false, false, ELBOW_FLEXION.source),
  /** Men 110 to 150, women 70 to 95; from memory, not certain. */
  HIP_FLEXION(130, 82.5, false, false, "hip strength, from memory"),
  /** Men 150 to 200, women 100 to 130; from memory, not certain. */
  HIP_EXTENSION(175, 115, false, false, HIP_FLEXION.source),
  /**
   * Mid-range, over body mass: men 2.92 to 3.45, women 2.08 to 2.74 (Šarabon 2021, Front Physiol
   * 767941, 95 % intervals of the mean, of which this is the middle).
   */
  KNEE_EXTENSION(3.185, 2.41, true, true, "knee strength by Sarabon 2021"),
  /** The same with the leg nearly straight: men 1.34 to 2.23, women 1.01 to 1.50. */
  KNEE_EXTENSION_STRAIGHT(1.785, 1.255, true, true, KNEE_EXTENSION.source),
  /** Over body mass: men 1.15 to 1.62 (the same text), women 0.68 of it, from memory. */
  KNEE_FLEXION(1.385, 0.68 * 1.385, true, false, "knee flexion, from memory"),
  /** Men 120 to 160, women 80 to 110; from memory, not certain. */
  ANKLE_PLANTAR(140, 95, false, false, "ankle strength, from memory"),
  /** Men 35 to 45, women 22 to 30; from memory, not certain. */
  ANKLE_DORSAL(40, 26, false, false, ANKLE_PLANTAR.source);

  /** A weak person that is designed for, over the mean; common practice, no source. */
  public static final double WEAK = 0.6;

  private final double men;
  private final double women;
  private final boolean perKg;
  private final boolean read;
  private final String source;

  Strength(double men, double women, boolean perKg, boolean read, String source) {
    this.men = men;
    this.women = women;
    this.perKg = perKg;
    this.read = read;
    this.source = source;
  }

  /**
   * Returns the mean, N m.
   *
   * @param massKg of the bare body
   */
  public double meanNm(Sex sex, double massKg) {
    return (sex == Sex.MALE ? men : women) * (perKg ? massKg : 1);
  }

  /** Returns what a weak person of that sex and mass has, N m. */
  public double weakNm(Sex sex, double massKg) {
    return WEAK * meanNm(sex, massKg);
  }

  /** Whether the figures were read in a text; else they are from memory. */
  public boolean read() {
    return read;
  }

  /** Returns whose figures they are, in words. */
  public String source() {
    return source;
  }
}
