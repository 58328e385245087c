/**
 * Wheels, steering, suspension, linkages, masses and stability of a single-track machine, and the
 * tube, section and material figures of the shop, as pure calculations on immutable values.
 *
 * <p>Knows nothing of the layout document. Axes after ISO 8855: origin on the ground under the rear
 * contact point, x forward, y left, z up; the elevation is x-z. Lengths mm, angles rad, mass kg,
 * force N. Side clearance takes y &gt;= 0 towards the side leaned to. The one exception is {@link
 * org.longlow.constraints.machine.WhippleModel}, which keeps the published axes (z down) and SI
 * units of its source so that its matrices can be compared entry by entry.
 *
 * <p>Refuses values that cannot describe a machine with {@link IllegalArgumentException} naming the
 * value and what is allowed. Leaves out: tyre slip, chassis flex, aerodynamics beyond side force,
 * and strength of safety-critical parts.
 */
package org.longlow.constraints.machine;
