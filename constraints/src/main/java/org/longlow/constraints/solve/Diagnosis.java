package org.longlow.constraints.solve;

import java.util.List;

/**
 * What the ties settle and what they leave open, at the positions of a solve.
 *
 * @param rank of the scaled Jacobian of the ties with the tolerance of the settings
 * @param degreesOfFreedom free variables less rank
 * @param freedoms one for each degree of freedom; a basis of the motions that keep all ties to
 *     first order
 * @param redundant ties that follow from the others
 * @param contradiction names of ties (and, when limits are to blame, of limits) that cannot all
 *     hold, and of which any one left out lets the rest hold; empty when everything holds
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
    List<String> contradiction,
    List<String> nearSingular,
    double largestGain) {
  public Diagnosis {
    freedoms = List.copyOf(freedoms);
    redundant = List.copyOf(redundant);
    contradiction = List.copyOf(contradiction);
    nearSingular = List.copyOf(nearSingular);
  }
}
