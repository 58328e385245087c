package org.longlow.sketcher.template;

import java.util.List;
import java.util.Optional;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.LaidOut;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.SheetLengths;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;
import org.longlow.svg.page.Tiling;

/**
 * A template with its names.
 *
 * @param fileName lower-case letters, digits and hyphens, unique in its list
 * @param name for people
 * @param part the part it is of; empty where it is of the whole machine
 * @param up what lies up on the drawing, such as {@code up} or {@code left side}
 * @param right what lies to the right on the drawing, such as {@code forward}
 * @param laid the drawing, which depends on where the seams between sheets run
 * @param lengths how lengths are written on its sheets
 * @param plain the piece in figures, where these are all that a saw needs
 */
public record NamedDrawing(
    String fileName,
    String name,
    String part,
    String up,
    String right,
    LaidOut laid,
    SheetLengths lengths,
    Optional<PlainPiece> plain) {

  NamedDrawing called(String otherFileName) {
    return new NamedDrawing(otherFileName, name, part, up, right, laid, lengths, plain);
  }

  NamedDrawing withLengths(SheetLengths other) {
    return new NamedDrawing(fileName, name, part, up, right, laid, other, plain);
  }

  /** Returns the drawing at 1:1 as it is laid out for A4 upright, mm. */
  public Drawing drawing() {
    return laid.on(box -> Tiling.of(box, Paper.A4, Tiling.MARGIN_MM, Tiling.OVERLAP_MM));
  }

  /** Returns the sheets to print, marked with which way this template lies. */
  public List<Page> sheets(TemplateSettings settings) {
    TemplateSettings own = settings.withSides(up, right).withLengths(lengths);
    return TemplateSheets.of(name, laid, part.isEmpty() ? own.toLookAt() : own);
  }
}
