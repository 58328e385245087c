package org.longlow.sketcher.picture;

import org.longlow.svg.drawing.Drawing;

/**
 * A template with its names.
 *
 * @param fileName lower-case letters, digits and hyphens, unique in its list
 * @param name for people
 * @param part the part it is of
 * @param drawing at 1:1, mm
 */
public record NamedDrawing(String fileName, String name, String part, Drawing drawing) {}
