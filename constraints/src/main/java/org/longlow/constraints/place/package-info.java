/**
 * Solves a layout: from the document to places of pins and values of measures.
 *
 * <p>In: a {@link org.longlow.constraints.layout.Layout}. Out: a {@link
 * org.longlow.constraints.place.Placed}. Pins and free measures are the unknowns; the nearest
 * solution to where they are drawn is taken. Lengths mm, angles rad.
 */
package org.longlow.constraints.place;
