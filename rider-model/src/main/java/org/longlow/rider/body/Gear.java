package org.longlow.rider.body;

/**
 * What the rider wears, as lengths and masses added to the bare body.
 *
 * @param heelMm boot under the heel, mm, in [0, 100]; 30 is a judgement of this tool
 * @param ballMm boot under the ball of the foot, mm, in [0, 100]; 20 is a judgement of this tool
 * @param bootLengthMm boot over bare foot length, mm, in [0, 100]; 30 is a judgement (25 to 35)
 * @param helmetMm helmet all round the head, mm, in [0, 100]; 47 is a judgement (45 to 50: shell 4,
 *     foam 35, comfort pad 5 to 10)
 * @param seatClothingMm clothing under the buttocks under load, mm, in [0, 50]; 0 here, 10 is
 *     Pheasant's allowance for heavy outdoor clothing
 * @param backClothingMm clothing or armour behind the back, mm, in [0, 50]
 * @param armourMm armour at knee and elbow in front of the skin, mm, in [0, 50]; 12 is a judgement
 * @param jacketMm jacket over front and sides of the trunk, shoulders and arms, not pressed, mm, in
 *     [0, 50]; {@value #JACKET_MM} is common practice without a source
 * @param gloveMm glove all round the hand, mm, in [0, 20]; {@value #GLOVE_MM} is common practice (2
 *     to 3); how far an arm reaches is not known so well, so it is left as it is
 * @param rucksackMm rucksack between back and back rest, pressed, mm, in [0, 300]; none is 0
 * @param mass what it weighs
 */
public record Gear(
    double heelMm,
    double ballMm,
    double bootLengthMm,
    double helmetMm,
    double seatClothingMm,
    double backClothingMm,
    double armourMm,
    double jacketMm,
    double gloveMm,
    double rucksackMm,
    GearMass mass) {

  /** A riding jacket with its lining, mm; common practice, no source was found. */
  public static final double JACKET_MM = 6;

  /** A riding glove, mm; common practice (2 to 3 on the palm), no source was found. */
  public static final double GLOVE_MM = 3;

  /** Thickest jacket and glove taken, mm; judgement. */
  public static final double MOST_JACKET_MM = 50;

  public static final double MOST_GLOVE_MM = 20;

  /** Thickest rucksack between back and back rest, mm; judgement. */
  public static final double MOST_RUCKSACK_MM = 300;

  /** Bare: as the survey measured. */
  public static final Gear NONE = new Gear(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, GearMass.NONE);

  /** Boots, helmet and light armour; clothing under load counted as nothing. */
  public static final Gear RIDING =
      new Gear(30, 20, 30, 47, 0, 0, 12, JACKET_MM, GLOVE_MM, 0, GearMass.of(true, true, true));

  /**
   * The same with heavy outdoor clothing (Pheasant, <i>Bodyspace</i>: +10 mm seated, +40 mm on
   * breadths).
   */
  public static final Gear WINTER =
      new Gear(30, 20, 30, 47, 10, 10, 15, 20, GLOVE_MM, 0, GearMass.of(true, true, true));

  /**
   * Returns what is worn for riding, as in {@link #RIDING}.
   *
   * @param clothes jacket, trousers and gloves with their armour
   */
  public static Gear riding(boolean helmet, boolean boots, boolean clothes) {
    Gear all = RIDING;
    return new Gear(
        boots ? all.heelMm : 0,
        boots ? all.ballMm : 0,
        boots ? all.bootLengthMm : 0,
        helmet ? all.helmetMm : 0,
        clothes ? all.seatClothingMm : 0,
        clothes ? all.backClothingMm : 0,
        clothes ? all.armourMm : 0,
        clothes ? all.jacketMm : 0,
        clothes ? all.gloveMm : 0,
        0,
        GearMass.of(helmet, boots, clothes));
  }

  /**
   * Returns the same with a rucksack on the back.
   *
   * @param kg what it weighs, in [0, 20]
   * @param thickMm how thick it is when leant on, mm
   */
  public Gear withRucksack(double kg, double thickMm) {
    return new Gear(
        heelMm,
        ballMm,
        bootLengthMm,
        helmetMm,
        seatClothingMm,
        backClothingMm,
        armourMm,
        jacketMm,
        gloveMm,
        thickMm,
        mass.withRucksack(kg));
  }

  /** Returns the same with a jacket and gloves of other thickness, mm. */
  public Gear withClothes(double jacket, double glove) {
    return new Gear(
        heelMm,
        ballMm,
        bootLengthMm,
        helmetMm,
        seatClothingMm,
        backClothingMm,
        armourMm,
        jacket,
        glove,
        rucksackMm,
        mass);
  }

  public Gear {
    check("heelMm", heelMm, 100);
    check("ballMm", ballMm, 100);
    check("bootLengthMm", bootLengthMm, 100);
    check("helmetMm", helmetMm, 100);
    check("seatClothingMm", seatClothingMm, 50);
    check("backClothingMm", backClothingMm, 50);
    check("armourMm", armourMm, 50);
    check("jacketMm", jacketMm, MOST_JACKET_MM);
    check("gloveMm", gloveMm, MOST_GLOVE_MM);
    check("rucksackMm", rucksackMm, MOST_RUCKSACK_MM);
    if (mass == null) {
      throw new IllegalArgumentException("gear needs a mass; GearMass.NONE is one");
    }
  }

  private static void check(String name, double value, double high) {
    if (!(value >= 0 && value <= high)) {
      throw new IllegalArgumentException(
          "gear " + name + " must be 0 to " + high + " mm, got " + value);
    }
  }
}
