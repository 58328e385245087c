/**
 * The steps that solve one group whole, and the tries in which they are taken.
 *
 * <p>Only the solver's own rooms see it.
 */
package org.longlow.constraints.solve.step;
