package org.longlow.sketcher.fx;

import org.longlow.constraints.layout.Layout;

/**
 * A machine that comes with Longlow.
 *
 * @param layout its layout
 */
record Shipped(Layout layout) {}
