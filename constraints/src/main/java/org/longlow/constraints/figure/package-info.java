/**
 * Single calculations asked for by name, each a class with an {@code Input} record, an {@code
 * Output} record and {@code answer}.
 *
 * <p>Record components carry the published names of the inputs and outputs, units in the name,
 * angles in degrees, so that a file format can bind them by component name. Boxed components may be
 * null: a null input means "not given", which is a fault unless its Javadoc states a default; a
 * null output means there is no such figure. All faults of an input come at once as {@link
 * org.longlow.constraints.figure.FigureFaults}.
 */
package org.longlow.constraints.figure;
