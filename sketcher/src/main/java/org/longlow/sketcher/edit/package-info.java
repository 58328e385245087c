/**
 * What a builder does to a layout: pure edits, what they may aim at, whether they can be done, and
 * where a pin may go.
 *
 * <p>In: a layout and a named edit or a dragged pin. Out: another layout, or why not. Nothing here
 * knows a file, a clock or a window.
 */
package org.longlow.sketcher.edit;
