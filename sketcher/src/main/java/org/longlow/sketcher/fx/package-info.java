/**
 * The window: a drawing board of card on a workshop bench.
 *
 * <p>The only package that knows the toolkit. Views show what a {@link
 * org.longlow.sketcher.desk.Desk} says and ask it for changes; nothing is solved, seated or drawn
 * on the interface thread. Geometry is in mm, x forward, z up; {@link
 * org.longlow.sketcher.fx.ViewFrame} alone knows pixels. Colours come from {@link
 * org.longlow.sketcher.fx.Look}, which follows the palette of the drawing.
 */
package org.longlow.sketcher.fx;
