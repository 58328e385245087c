/**
 * The layout: one immutable document that says what the machine is, as the user wrote it.
 *
 * <p>Holds named measures, pins, parts, ties, limits, wishes, sections, stances and crew, every
 * quantity still a {@link org.longlow.constraints.formula.Formula}. Nothing here is solved or
 * drawn; {@code constraints.place} solves it, {@code constraints.json} reads and writes it.
 */
package org.longlow.constraints.layout;
