package org.longlow.constraints.machine.ride;

import org.longlow.rider.geom.PointMm;

/**
 * Area and centroid of a silhouette.
 *
 * @param areaMm2 area, mm², &gt; 0
 * @param centroid area centroid, the first estimate of the pressure centre; across and up the page
 *     it is seen on
 */
public record Silhouette(double areaMm2, PointMm centroid) {}
