/**
 * Quantities with units and formulas over named measures.
 *
 * <p>In: text such as {@code 1640 mm}, {@code 24 deg} or {@code boardTop + 60 mm}. Out: a {@link
 * org.longlow.constraints.formula.Formula}, an expression tree in internal units (mm, rad, kg, N)
 * that can be checked for its dimension, evaluated and differentiated. EvalEx parses; the tree is
 * walked in double.
 */
package org.longlow.constraints.formula;
