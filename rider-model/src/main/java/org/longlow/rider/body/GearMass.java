package org.longlow.rider.body;

/**
 * What riding gear weighs, kg.
 *
 * <p>No survey of it was found. A full-face helmet of 1.3 to 1.8 kg is from memory; the rest is
 * common practice, without a source: weigh your own if the loads are close to a limit.
 *
 * @param helmetKg the helmet
 * @param bootKg one boot
 * @param jacketKg jacket with armour
 * @param trousersKg trousers with armour
 * @param gloveKg one glove
 * @param rucksackKg a rucksack on the back
 */
public record GearMass(
    double helmetKg,
    double bootKg,
    double jacketKg,
    double trousersKg,
    double gloveKg,
    double rucksackKg) {

  /** Nothing worn. */
  public static final GearMass NONE = new GearMass(0, 0, 0, 0, 0, 0);

  /** Heaviest piece taken, kg. */
  public static final double MOST_KG = 20;

  /** Full-face helmet, kg; from memory (1.3 to 1.8). */
  public static final double HELMET_KG = 1.5;

  /** One boot, kg; common practice. */
  public static final double BOOT_KG = 1.0;

  /** Jacket with armour, kg; common practice. */
  public static final double JACKET_KG = 2.5;

  /** Trousers with armour, kg; common practice. */
  public static final double TROUSERS_KG = 1.5;

  /** One glove, kg; common practice. */
  public static final double GLOVE_KG = 0.15;

  /** What of a jacket hangs on one upper arm and one forearm, 1; judgement. */
  private static final double SLEEVE_UPPER = 0.12;

  private static final double SLEEVE_LOWER = 0.08;

  /** What of trousers hangs on one thigh, 1; the rest is on the shanks; judgement. */
  private static final double TROUSERS_THIGH = 0.3;

  public GearMass {
    check("helmetKg", helmetKg);
    check("bootKg", bootKg);
    check("jacketKg", jacketKg);
    check("trousersKg", trousersKg);
    check("gloveKg", gloveKg);
    check("rucksackKg", rucksackKg);
  }

  /** Returns what is worn, by the masses above. */
  public static GearMass of(boolean helmet, boolean boots, boolean clothes) {
    return new GearMass(
        helmet ? HELMET_KG : 0,
        boots ? BOOT_KG : 0,
        clothes ? JACKET_KG : 0,
        clothes ? TROUSERS_KG : 0,
        clothes ? GLOVE_KG : 0,
        0);
  }

  /** Returns the same with a rucksack of so many kg. */
  GearMass withRucksack(double kg) {
    return new GearMass(helmetKg, bootKg, jacketKg, trousersKg, gloveKg, kg);
  }

  /** Returns all of it, kg. */
  public double totalKg() {
    return helmetKg + 2 * bootKg + jacketKg + trousersKg + 2 * gloveKg + rucksackKg;
  }

  /** Returns what one such segment wears, kg; together they wear all of it. */
  public double onKg(Segment segment) {
    return switch (segment) {
      case HEAD -> helmetKg;
      case TRUNK -> jacketKg * (1 - 2 * SLEEVE_UPPER - 2 * SLEEVE_LOWER) + rucksackKg;
      case UPPER_ARM -> jacketKg * SLEEVE_UPPER;
      case FOREARM -> jacketKg * SLEEVE_LOWER;
      case HAND -> gloveKg;
      case THIGH -> trousersKg * TROUSERS_THIGH;
      case SHANK -> trousersKg * (0.5 - TROUSERS_THIGH);
      case FOOT -> bootKg;
    };
  }

  private static void check(String name, double kg) {
    if (!(kg >= 0 && kg <= MOST_KG)) {
      throw new IllegalArgumentException(
          "gear " + name + " must be 0 to " + MOST_KG + " kg, got " + kg);
    }
  }
}
