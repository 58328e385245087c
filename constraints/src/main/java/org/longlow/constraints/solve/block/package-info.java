/**
 * A group taken apart into blocks that are solved one after the other.
 *
 * <p>Only the solver's own rooms see it.
 */
package org.longlow.constraints.solve.block;
