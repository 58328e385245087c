package org.longlow.constraints.stand;

/**
 * How far both wheels are along their paths.
 *
 * @param frontMm front wheel travel from the drawn position, bump positive, mm
 * @param rearMm rear wheel travel, likewise
 */
public record Travel(double frontMm, double rearMm) {

  /** Returns the travel of a stance. */
  public static Travel of(Standing standing) {
    return new Travel(standing.frontTravelMm(), standing.rearTravelMm());
  }

  /** Returns this travel gone by {@code share} towards another. */
  Travel towards(Travel other, double share) {
    return new Travel(
        frontMm + share * (other.frontMm - frontMm), rearMm + share * (other.rearMm - rearMm));
  }
}
