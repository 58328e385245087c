/**
 * Parts as bodies: outlines in the elevation, how far they reach to each side, mass.
 *
 * <p>In: a part of the layout and the places of pins. Out: a {@link
 * org.longlow.constraints.shape.PartShape} made of prisms, each a polygon of the elevation times an
 * interval across the machine. Lengths in mm, masses in kg.
 */
package org.longlow.constraints.shape;
