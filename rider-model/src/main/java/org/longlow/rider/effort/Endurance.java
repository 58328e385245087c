package org.longlow.rider.effort;

/**
 * How long a share of strength is held without a rest, by muscle group.
 *
 * <p>Two models, which differ by a factor of 0.6 to 1.5 for shares of 0.1 to 0.7: say "about". The
 * order of the groups was read (PMC2891087), so were rates of shoulder and ankle (PMC3397684); the
 * other coefficients are from memory.
 */
public enum Endurance {
  ANKLE(34.71, 2.06, .00589, .00058),
  /** Also for the neck and the hip, of which no set was found; common practice. */
  TRUNK(22.69, 2.27, .00755, .00075),
  GRIP(33.55, 1.61, .00980, .00064),
  ELBOW(17.98, 2.14, .00912, .00094),
  KNEE(19.38, 1.88, .01500, .00149),
  SHOULDER(14.86, 1.83, .01820, .00168);

  /**
   * Held all day with no trouble, over strength: 2 to 5 % (Sjøgaard and Jensen, Low-Level Static
   * Exertions); complaints of shoulders at 0.5 to 1 % are told of too.
   */
  public static final double FINE = 0.05;

  /** Not for riding beyond this, over strength; once called unlimited, common practice. */
  public static final double MOST = 0.15;

  private final double b0;
  private final double b1;
  private final double fatigue;
  private final double recovery;

  Endurance(double b0, double b1, double fatigue, double recovery) {
    this.b0 = b0;
    this.b1 = b1;
    this.fatigue = fatigue;
    this.recovery = recovery;
  }

  /**
   * Returns how long a share is held, s: b0 f^−b1 (Frey Law and Avin 2010).
   *
   * @param share f, over strength, in (0, 1]
   */
  public double powerS(double share) {
    return b0 * Math.pow(share, -b1);
  }

  /**
   * Returns how long a share is held, s, by three compartments (Frey-Law 2012): rested fibres tire
   * at a rate F of those at work and recover at a rate R of those tired: −ln(1 − (1 − f) R / (F f))
   * / R, without end where f ≤ R / (F + R).
   *
   * @param share f, over strength, in (0, 1]
   */
  public double compartmentsS(double share) {
    double left = 1 - (1 - share) * recovery / (fatigue * share);
    return left > 0 ? -Math.log(left) / recovery : Double.POSITIVE_INFINITY;
  }

  /** Returns the shorter of both, s. */
  public double leastS(double share) {
    return Math.min(powerS(share), compartmentsS(share));
  }
}
