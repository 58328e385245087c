/**
 * Who depends on whom, as graphs: matchings of rows with unknowns and strongly connected parts.
 *
 * <p>Only the solver's own rooms see it.
 */
package org.longlow.constraints.solve.graph;
