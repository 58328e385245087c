/**
 * A single-track machine as pure calculations on immutable values, in rooms of their own: chassis,
 * ride, linkage and shop. Here is only what they all check values with.
 *
 * <p>Knows nothing of the layout document. Axes after ISO 8855: origin on the ground under the rear
 * contact point, x forward, y left, z up; the elevation is x-z. Lengths mm, angles rad, mass kg,
 * force N.
 *
 * <p>Refuses values that cannot describe a machine with {@link IllegalArgumentException} naming the
 * value and what is allowed. Leaves out: tyre slip, chassis flex, aerodynamics beyond side force,
 * and strength of safety-critical parts.
 */
package org.longlow.constraints.machine;
