package org.longlow.constraints.shape;

import org.locationtech.jts.geom.Geometry;

/**
 * A body of constant outline across the machine.
 *
 * @param outline polygon or polygons of the elevation, mm
 * @param across where it stands across the machine
 */
public record Prism(Geometry outline, Interval across) {}
