/**
 * Lamp and reflector positions against published figures, and notices on stand, mirrors, footrests
 * and handlebar height.
 *
 * <p>Each table row is data with its source and how well it is backed. A lamp is given by its
 * centre and its lit area; which of the two a height counts to differs between rule sets (US: the
 * centre; UN R53 and UK: the edges of the lit area) and every finding says so. Axes: x forward, y
 * left, z up, mm, machine upright, unladen, wheel straight ahead, road at z = 0.
 *
 * <p>Leaves out: photometry, visibility angles, approval marks, wiring. Notices never pass or fail.
 * A pass means only "inside the figures listed here": see {@link
 * org.longlow.constraints.law.LampRules#CAUTION}.
 */
package org.longlow.constraints.law;
