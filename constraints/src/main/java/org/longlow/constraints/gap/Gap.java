package org.longlow.constraints.gap;

import org.longlow.rider.geom.PointMm;

/**
 * The gap between two bodies.
 *
 * @param first name of one body
 * @param second name of the other
 * @param gapMm smallest distance, mm; negative where they overlap, by about how deep
 * @param where middle of the place where they are closest, or of the overlap
 */
public record Gap(String first, String second, double gapMm, PointMm where) {}
