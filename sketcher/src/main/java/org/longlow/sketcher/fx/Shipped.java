package org.longlow.sketcher.fx;

import java.nio.file.Path;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;

/**
 * A machine that comes with Longlow.
 *
 * @param layout its layout
 * @param drawings a folder with the traced outlines it names, if it names any
 */
record Shipped(Layout layout, Optional<Path> drawings) {}
