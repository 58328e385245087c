/**
 * Full-size templates for cutting: one part each at 1:1, tube copes and bends, cushions and their
 * seams, and the sheets they are cut into.
 *
 * <p>In: a {@link org.longlow.constraints.study.Study}. Out: named drawings in millimetres.
 */
package org.longlow.sketcher.template;
