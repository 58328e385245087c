/**
 * Gaps between bodies made of prisms, through an index.
 *
 * <p>The distance of two prisms is exact: the root of the squares of their distance in the
 * elevation and their gap across the machine. Where they overlap, the gap is minus the depth by
 * which they would have to part.
 */
package org.longlow.constraints.gap;
