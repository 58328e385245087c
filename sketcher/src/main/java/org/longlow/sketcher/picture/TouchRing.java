package org.longlow.sketcher.picture;

import org.longlow.rider.geom.PointMm;

/**
 * A place that is ringed on a view.
 *
 * @param where the place, in the axes of the frame
 * @param yMm where it is across the machine, left positive, mm
 * @param left whether it is about leaning or steering to the left, or the place is on the left
 * @param words what is written beside it
 */
record TouchRing(PointMm where, double yMm, boolean left, String words) {}
