/**
 * The linear algebra of one step: rows of slopes, their sparse factors, ranks, and the smallest
 * change that holds them together with limits or wishes.
 *
 * <p>Only the solver's own rooms see it. Arrays are shared, not copied: a step is too short for
 * that.
 */
package org.longlow.constraints.solve.linear;
