package org.longlow.rider.pose;

import org.locationtech.jts.geom.Polygon;

/**
 * Outline of a body part in the side view with its place across.
 *
 * @param name such as {@code thigh}
 * @param outline convex, mm, x forward and y up
 * @param innerMm least |y| that the part takes up, mm, ≥ 0; 0 for parts on the middle plane
 * @param outerMm greatest |y|, mm, &gt; inner; the other side mirrors it
 */
public record Flesh(String name, Polygon outline, double innerMm, double outerMm) {}
