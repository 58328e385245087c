/**
 * What the solver is asked: unknowns, relations between them, ties, limits, wishes, settings, and
 * the groups that they fall into.
 */
package org.longlow.constraints.solve.problem;
