package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.page.SheetLengths;

/**
 * One template while it is put together: the line to cut and everything a maker needs on it, in the
 * axes of the machine. It is drawn by {@link TemplateLaying} once it is known how it lies on paper.
 */
final class TemplateSheet {

  private final String part;
  private final String title;
  private final Geometry outline;
  private final String upWord;
  private final String rightWord;
  private final List<TemplateStep> steps = new ArrayList<>();
  private final List<PlainPiece.Pin> pins = new ArrayList<>();
  private final Set<TemplateLine> key = EnumSet.noneOf(TemplateLine.class);
  private List<PointMm> axis = List.of();

  /**
   * Starts a template.
   *
   * @param outline the line to cut, mm
   * @param upWord what lies up on the sheet
   * @param rightWord what lies to the right on the sheet
   */
  TemplateSheet(String part, String title, Geometry outline, String upWord, String rightWord) {
    this.part = part;
    this.title = title;
    this.outline = outline;
    this.upWord = upWord;
    this.rightWord = rightWord;
  }

  /** Adds a line that is not to be cut. */
  void mark(Geometry geometry, Style style) {
    if (!geometry.isEmpty()) {
      steps.add(l -> l.mark(geometry, style));
    }
  }

  /** Adds a line that is not to be cut, of a meaning that the key tells. */
  void mark(Geometry geometry, TemplateLine line) {
    if (!geometry.isEmpty()) {
      key.add(line);
      mark(geometry, line.style());
    }
  }

  void chain(List<PointMm> line) {
    axis = List.copyOf(line);
    mark(Curves.line(line), TemplateLine.CENTRE);
  }

  /** Writes a note beside a place, where it lies on no line if that can be had. */
  void note(String text, double x, double y) {
    note(text, List.of(new PointMm(x, y)));
  }

  /** Writes a note beside the first of some places where it lies on no line. */
  void note(String text, List<PointMm> places) {
    steps.add(l -> l.note(text, places));
  }

  /** Adds a drill cross with its name. */
  void drill(String pin, PointMm p) {
    pins.add(new PlainPiece.Pin(pin, p));
    steps.add(l -> l.drill(pin, p));
  }

  /**
   * Adds the centre crosses of a hole and its size beside it, where that is not cut away.
   *
   * @param hole its area, part of what is cut
   */
  void hole(Geometry hole, List<PointMm> centres, String size) {
    steps.add(l -> l.hole(hole, centres, size));
  }

  /**
   * Adds a datum line, level on the machine, with a tick at each station.
   *
   * @param y where it runs, mm
   * @param name what the line is, such as {@code z 400}
   * @param axis what the ticks count, such as {@code x}
   */
  void datum(double y, String name, String axis, TemplateFigures figures) {
    datum(new DatumLine(List.of(new DatumLine.Level(y, name)), axis, figures));
  }

  /** Adds a datum line at whichever of its heights is read best. */
  void datum(DatumLine line) {
    steps.add(l -> l.datum(line));
  }

  /**
   * Returns the template with name, lines of text and table, inside the outline where there is room
   * and below it otherwise.
   *
   * @param rows a table, headings first, or empty
   */
  NamedDrawing with(String fileName, String part, List<String> lines, List<List<String>> rows) {
    TemplateText text = new TemplateText(title, upWord, rightWord, lines, rows, List.copyOf(key));
    Optional<PlainPiece> plain =
        PlainPiece.of(outline, axis, pins, text).filter(p -> rows.isEmpty());
    return new NamedDrawing(
        fileName,
        title,
        part,
        upWord,
        rightWord,
        new TemplateLaid("part:" + this.part, outline, List.copyOf(steps), text, 0, false),
        SheetLengths.MM,
        plain);
  }
}
