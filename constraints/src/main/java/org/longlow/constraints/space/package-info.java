/**
 * Convex bodies in space and how far apart they are. Lengths in arrays are x forward, y left, z up,
 * mm.
 */
package org.longlow.constraints.space;
