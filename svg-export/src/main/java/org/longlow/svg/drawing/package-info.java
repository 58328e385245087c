/**
 * The one picture that screen, SVG and PDF share.
 *
 * <p>A {@link org.longlow.svg.drawing.Drawing} is an immutable list of layers; a layer is a list of
 * marks; a mark is a JTS geometry with a style, or a line of words. Going in: geometry in
 * millimetres, x to the right, y <b>up</b>. Coming out: the same millimetres; nothing here knows
 * about paper, pixels or file formats.
 *
 * <p>Two kinds of length live side by side. Geometry is in drawing millimetres and scales with the
 * drawing. Stroke widths, dash lengths and letter heights are <b>paper</b> millimetres and never
 * scale, so a machine reduced to 1:10 keeps 0.5 mm outlines and 3.5 mm lettering. {@link
 * org.longlow.svg.drawing.Dimensions} is told the scale because arrowheads and offsets are geometry
 * that must come out at a paper size.
 *
 * <p>Colour is left open: a mark names a {@link org.longlow.svg.drawing.Tone}, a {@link
 * org.longlow.svg.drawing.Palette} says what that looks like. Geometry handed in must not be
 * modified afterwards; it is not copied.
 */
package org.longlow.svg.drawing;
