package org.longlow.sketcher.template;

import java.util.List;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.SheetLengths;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;

/**
 * A template with its names.
 *
 * @param fileName lower-case letters, digits and hyphens, unique in its list
 * @param name for people
 * @param part the part it is of
 * @param up what lies up on the drawing, such as {@code up} or {@code left side}
 * @param right what lies to the right on the drawing, such as {@code forward}
 * @param drawing at 1:1, mm
 * @param lengths how lengths are written on its sheets
 */
public record NamedDrawing(
    String fileName,
    String name,
    String part,
    String up,
    String right,
    Drawing drawing,
    SheetLengths lengths) {

  /** Returns the sheets to print, marked with which way this template lies. */
  public List<Page> sheets(TemplateSettings settings) {
    return TemplateSheets.of(name, drawing, settings.withSides(up, right).withLengths(lengths));
  }
}
