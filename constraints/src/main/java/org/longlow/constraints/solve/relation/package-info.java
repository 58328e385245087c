/**
 * Geometric relations with analytic derivatives, ready to be used in ties, limits and wishes.
 *
 * <p>Every relation gives mm. Angles are measured in rad, anticlockwise from the x axis (forward)
 * as seen with z up; an angular error is turned into the arc at a radius of {@value
 * org.longlow.constraints.solve.relation.Relations#ARC_RADIUS_MM} mm and wrapped into half a turn
 * either way, so that 1e-6 mm is 1e-9 rad. Inputs are {@link
 * org.longlow.constraints.solve.problem.Quantity quantities}: a target may be a constant, a free
 * measure or a formula over free measures, and the derivatives run through it.
 *
 * <p>Derivatives are exact except where none exists: a line of zero length has no direction, and
 * its relations then give a zero gradient, which the solver recognises and steps away from.
 */
package org.longlow.constraints.solve.relation;
