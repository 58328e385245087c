/**
 * Lamps, reflectors, number plates and what else law asks, as one table of rows ({@link
 * org.longlow.constraints.law.Row}): each with section, edition, the rule in our own words and how
 * well its text is known ({@link org.longlow.constraints.law.Known}). Findings are made of them in
 * {@code check}; a rule from memory never passes a machine, and what a law asks and no row can
 * answer is {@link org.longlow.constraints.law.Asked#NOT_COVERED}.
 *
 * <p>A lamp is given by its centre and its lit area; which of the two a height counts to differs
 * (US: the centre; UN R53 and UK: the edges). Axes: x forward, y left, z up, mm, machine upright,
 * unladen, wheel straight ahead, road at z = 0.
 *
 * <p>Leaves out: photometry, visibility angles, approval marks, wiring.
 */
package org.longlow.constraints.law;
