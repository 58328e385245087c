/**
 * A studied layout as pictures.
 *
 * <p>In: a {@link org.longlow.constraints.study.Study} and options. Out: drawings in millimetres at
 * real size, x forward, y up, the machine standing on y = 0: {@link
 * org.longlow.sketcher.picture.ElevationPicture} for the screen and reports, {@link
 * org.longlow.sketcher.picture.DimensionedElevation} for the wall.
 *
 * <p>Every mark names what it shows: {@code part:NAME}, {@code pin:NAME}, {@code person:NAME},
 * {@code finding:ID}. Strokes and letters are paper millimetres; a picture is told the scale it
 * will be shown at so that arrows, hatching and signs come out at paper size too.
 *
 * <p>Signs used: quartered disc for a centre of mass, quartered ring for an H-point, long-dashed
 * dotted lines for axes and centre lines, dashed lines for people who are not seated now, long
 * dashed double-dotted lines for moved positions (ISO 128-2).
 */
package org.longlow.sketcher.picture;
