package org.longlow.rider.body;

/**
 * Body segments of the side view with the mass constants of de Leva (1996), J Biomech
 * 29(9):1223-1230, Table 4: living young adults, 100 men (1741 mm, 73.0 kg) and 15 women (1735 mm,
 * 61.9 kg); masses, centres and radii checked against texts that quote the table. Only the
 * fractions are used, never the paper's lengths (its women's thigh and foot are far below the
 * survey's).
 *
 * <p>Masses are fractions of body mass for one limb. Centres are measured from the proximal end
 * named here. Radii of gyration are about the left-right axis, over segment length, for motion in
 * the side view. Neither this set nor any other at hand covers heavy riders, whose trunk share
 * rises.
 */
public enum Segment {
  /** Vertex to cervicale; the "proximal" end is the vertex. */
  HEAD("head", false, 0.0694, 0.0668, 0.5002, 0.4841, 0.315, 0.295),
  /** Cervicale to hip; the "proximal" end is the cervicale. */
  TRUNK("trunk", false, 0.4346, 0.4257, 0.5138, 0.4964, 0.306, 0.292),
  /** Shoulder joint to elbow joint. */
  UPPER_ARM("upperArm", true, 0.0271, 0.0255, 0.5772, 0.5754, 0.269, 0.260),
  /** Elbow to wrist. */
  FOREARM("forearm", true, 0.0162, 0.0138, 0.4574, 0.4559, 0.265, 0.257),
  /** Wrist to third knuckle. */
  HAND("hand", true, 0.0061, 0.0056, 0.7900, 0.7474, 0.513, 0.454),
  /** Hip to knee. */
  THIGH("thigh", true, 0.1416, 0.1478, 0.4095, 0.3612, 0.329, 0.364),
  /** Knee to ankle. */
  SHANK("shank", true, 0.0433, 0.0481, 0.4395, 0.4352, 0.246, 0.263),
  /** Heel to toe tip; the "proximal" end is the heel. */
  FOOT("foot", true, 0.0137, 0.0129, 0.4415, 0.4014, 0.245, 0.279);

  private final String key;
  private final boolean paired;
  private final double maleMass;
  private final double femaleMass;
  private final double maleCentre;
  private final double femaleCentre;
  private final double maleRadius;
  private final double femaleRadius;

  Segment(
      String key,
      boolean paired,
      double maleMass,
      double femaleMass,
      double maleCentre,
      double femaleCentre,
      double maleRadius,
      double femaleRadius) {
    this.key = key;
    this.paired = paired;
    this.maleMass = maleMass;
    this.femaleMass = femaleMass;
    this.maleCentre = maleCentre;
    this.femaleCentre = femaleCentre;
    this.maleRadius = maleRadius;
    this.femaleRadius = femaleRadius;
  }

  /** Returns the name used in files, such as {@code upperArm}. */
  public String key() {
    return key;
  }

  /** Returns whether the body has two of these. */
  public boolean paired() {
    return paired;
  }

  /**
   * Returns the mass of one such segment over body mass. The paper's women add up to 99.99 %, so
   * the fractions are scaled to add up to 1.
   */
  public double massShare(Sex sex) {
    return rawMass(sex) / total(sex);
  }

  /** Returns the centre of mass from the proximal end over segment length. */
  public double centreShare(Sex sex) {
    return sex == Sex.MALE ? maleCentre : femaleCentre;
  }

  /** Returns the radius of gyration about the left-right axis through the centre, over length. */
  public double radiusShare(Sex sex) {
    return sex == Sex.MALE ? maleRadius : femaleRadius;
  }

  private double rawMass(Sex sex) {
    return sex == Sex.MALE ? maleMass : femaleMass;
  }

  private static double total(Sex sex) {
    double sum = 0;
    for (Segment segment : values()) {
      sum += segment.rawMass(sex) * (segment.paired ? 2 : 1);
    }
    return sum;
  }
}
