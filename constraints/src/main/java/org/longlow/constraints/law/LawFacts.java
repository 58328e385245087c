package org.longlow.constraints.law;

/**
 * What the lamp rules must know of the machine beside its lamps.
 *
 * @param motorDrivenCycle true for a US motor driven cycle whose top speed in one mile is 30 mph or
 *     less: it needs no turn signals
 * @param rearmostXMm x of the rearmost point of the machine, mm; null if not known
 */
public record LawFacts(boolean motorDrivenCycle, Double rearmostXMm) {

  /** An ordinary motorcycle of unknown length. */
  public static final LawFacts ORDINARY = new LawFacts(false, null);

  public LawFacts {
    if (rearmostXMm != null && !Double.isFinite(rearmostXMm)) {
      throw new IllegalArgumentException(
          "rearmost x mm is " + rearmostXMm + "; allowed is a finite number, or none");
    }
  }
}
