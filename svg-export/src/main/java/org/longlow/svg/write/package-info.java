/**
 * Pages to files: SVG and PDF.
 *
 * <p>Both writers take {@link org.longlow.svg.page.Page}s and a {@link
 * org.longlow.svg.drawing.Palette} and write true size. SVG: one user unit is 1 mm, width and
 * height carry the unit mm, coordinates are rounded to 0.001 mm. PDF: one user unit is 1/72 in
 * (UserUnit stays 1, because some readers ignore it), the media box has the exact size of the
 * paper, print scaling is asked to be off. The same input gives the same bytes, whatever the
 * default locale, time zone or clock.
 */
package org.longlow.svg.write;
