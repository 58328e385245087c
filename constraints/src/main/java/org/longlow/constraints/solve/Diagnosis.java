package org.longlow.constraints.solve;

import java.util.List;
import java.util.Optional;

/**
 * What the ties settle and what they leave open, at the positions of a solve.
 *
 * @param rank of the scaled Jacobian of the ties with the tolerance of the settings
 * @param degreesOfFreedom free variables less rank
 * @param freedoms one for each degree of freedom; a basis of the motions that keep all ties to
 *     first order
 * @param redundant ties that follow from the others
 * @param conflict ties (and, when limits are to blame, limits) that cannot all hold, and of which
 *     any one left out lets the rest hold; empty when everything holds, or was not decided
 * @param decided whether all of this was worked out within the work allowed
 * @param nearSingular names of the ties that are about to lose their grip, as a toggle does near
 *     its dead point: those that have lost it first, then by gain
 * @param largestGain most that 1 mm in any tie moves any variable, (scaled) mm, ties that have lost
 *     their grip left out; 0 when there are no ties
 */
public record Diagnosis(
    int rank,
    int degreesOfFreedom,
    List<Freedom> freedoms,
    List<Redundancy> redundant,
    Optional<Conflict> conflict,
    boolean decided,
    List<String> nearSingular,
    double largestGain) {
  public Diagnosis {
    freedoms = List.copyOf(freedoms);
    redundant = List.copyOf(redundant);
    nearSingular = List.copyOf(nearSingular);
  }

  /** Names of the conflict; empty when there is none. */
  public List<String> contradiction() {
    return conflict.map(Conflict::names).orElse(List.of());
  }
}
