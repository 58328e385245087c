/**
 * Gaps between bodies made of prisms, through a tree of boxes over each outline's edges.
 *
 * <p>The distance of two prisms is exact: the root of the squares of their distance in the
 * elevation and their gap across the machine. Where they overlap, the gap is minus the depth by
 * which they would have to part.
 */
package org.longlow.constraints.gap;
