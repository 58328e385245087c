/** Findings on gaps: between parts, to people, of sections on their way, and in joints. */
package org.longlow.constraints.check.gap;
