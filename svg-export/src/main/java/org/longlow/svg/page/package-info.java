/**
 * Drawings on paper: sheet sizes, placement, tiling, full-size template sheets and framed drawing
 * sheets.
 *
 * <p>Going in: a {@link org.longlow.svg.drawing.Drawing} in millimetres, y up. Coming out: {@link
 * org.longlow.svg.page.Page}s, each a sheet of paper with pieces of drawings placed on it, in page
 * millimetres with the origin at the lower left corner, y up. The single turn to "y down" that SVG
 * needs is {@link org.longlow.svg.page.Page#down}; nothing else may turn y.
 *
 * <p>Pieces are cut to their clip rectangle in geometry, not by masks, so a cutter that reads the
 * file sees only what the sheet shows. A clipped outline never gains a false edge along the
 * rectangle.
 *
 * <p>Paper grows, shrinks and is scaled by printers: whoever cuts metal from a template must
 * measure both bars first.
 */
package org.longlow.svg.page;
