package org.longlow.constraints.suit;

/**
 * Bounds of a search for a crowd.
 *
 * @param sample how many of the crowd decide on the way, from 1
 * @param starts places the search may start from, the present one first, from 1
 * @param spreadMm how far they lie around the present place, mm
 * @param stepMm the first step along each direction, mm
 * @param leastStepMm the last one, mm
 * @param tried about the most places looked at; a count, so that the answer is the same on any
 *     machine
 * @param alternatives most places told of, from 1
 */
public record CrowdSettings(
    int sample,
    int starts,
    double spreadMm,
    double stepMm,
    double leastStepMm,
    int tried,
    int alternatives) {

  /** A hundred people; eight starts within 100 mm; steps of 60 to 7.5 mm; 240 places. */
  public static final CrowdSettings DEFAULT = new CrowdSettings(100, 8, 100, 60, 7, 240, 3);

  public CrowdSettings {
    if (sample < 1 || starts < 1 || tried < starts || alternatives < 1) {
      throw new IllegalArgumentException(
          "a search needs people, starts, places and alternatives, at least one of each");
    }
    if (!(spreadMm > 0 && leastStepMm > 0 && stepMm >= leastStepMm)) {
      throw new IllegalArgumentException("a search needs a spread and steps above 0 mm");
    }
  }
}
