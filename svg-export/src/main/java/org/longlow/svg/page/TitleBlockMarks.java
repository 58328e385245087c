package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws a title block: a table of small captions with their entries under them. */
final class TitleBlockMarks {

  private static final double CAPTION_MM = 1.8;
  private static final double ENTRY_MM = 2.5;
  private static final double TITLE_MM = 4;
  private static final double PAD_MM = 1.2;

  /** Letters of what is too long for larger ones. */
  private static final double LEAST_MM = 2;

  /** Words may come out a fifth wider in a font other than the intended one. */
  private static final double FONT_RESERVE = 1.2;

  private final List<Mark> out = new ArrayList<>();
  private final double x0;
  private final double y0;

  private TitleBlockMarks(double x0, double y0) {
    this.x0 = x0;
    this.y0 = y0;
  }

  /** Returns the block with its lower right corner at (right, bottom). */
  static List<Mark> at(TitleBlock t, Scale scale, Paper paper, double right, double bottom) {
    TitleBlockMarks m = new TitleBlockMarks(right - SheetSpace.TITLE_WIDTH_MM, bottom);
    m.field(0, 30, 60, 10, "owner", t.owner(), ENTRY_MM);
    m.field(0, 20, 60, 10, "created by", t.creator(), ENTRY_MM);
    m.field(0, 10, 60, 10, "approved by", t.approval(), ENTRY_MM);
    m.field(0, 0, 60, 10, "caution", "Not for structural approval", ENTRY_MM);
    m.field(60, 30, 40, 10, "document type", t.documentType(), ENTRY_MM);
    m.field(100, 30, 30, 10, "scale", scale.toString(), ENTRY_MM + 0.5);
    m.field(130, 30, 25, 10, "units", t.units(), ENTRY_MM);
    m.field(155, 30, 25, 10, "paper", paper.name(), ENTRY_MM);
    m.field(60, 10, 120, 20, "title", t.title(), TITLE_MM);
    m.supplement(t.supplement(), 60, 10, 120);
    boolean revised = !t.revision().isEmpty();
    m.field(60, 0, revised ? 40 : 60, 10, "identification number", t.number(), ENTRY_MM);
    if (revised) {
      m.field(100, 0, 20, 10, "revision", t.revision(), ENTRY_MM);
    }
    m.field(120, 0, 35, 10, "date of issue", t.date(), ENTRY_MM);
    m.field(155, 0, 25, 10, "sheet", t.sheet(), ENTRY_MM);
    m.grid(revised);
    return m.out;
  }

  private void field(
      double x, double y, double w, double h, String caption, String entry, double size) {
    out.add(
        Mark.Words.level(
            caption,
            x0 + x + PAD_MM,
            y0 + y + h - PAD_MM,
            CAPTION_MM,
            Anchor.TOP_START,
            Tone.PENCIL));
    double room = (w - 2 * PAD_MM) / FONT_RESERVE;
    double smaller =
        Lettering.widthMm(Lettering.printable(entry), size) <= room ? size : size * 0.7;
    entry(entry, x, y + (h > 12 ? h - 11.5 : 2.2), room, Math.max(LEAST_MM, smaller));
  }

  private void supplement(String text, double x, double y, double w) {
    double room = (w - 2 * PAD_MM) / FONT_RESERVE;
    boolean fits = Lettering.widthMm(Lettering.printable(text), ENTRY_MM) <= room;
    entry(text, x, y + 2.8, room, fits ? ENTRY_MM : LEAST_MM);
  }

  /** Writes text on a line, or on two round it where it is too long for one. */
  private void entry(String text, double x, double y, double room, double size) {
    List<String> lines = Lettering.wrapped(Lettering.printable(text), size, room);
    if (lines.size() > 2) {
      String rest = String.join(" ", lines.subList(1, lines.size()));
      lines = List.of(lines.get(0), Lettering.fitted(rest, size, room));
    }
    double half = (lines.size() - 1) * 0.7 * size;
    for (int i = 0; i < lines.size(); i++) {
      double at = y0 + y + half - i * 2 * half;
      out.add(Mark.Words.level(lines.get(i), x0 + x + PAD_MM, at, size, Anchor.START, Tone.INK));
    }
  }

  private void grid(boolean revised) {
    double[][] narrow = {
      {0, 10, 180, 10},
      {0, 20, 60, 20},
      {0, 30, 180, 30},
      {60, 0, 60, 40},
      {100, 30, 100, 40},
      {130, 30, 130, 40},
      {155, 30, 155, 40},
      {120, 0, 120, 10},
      {155, 0, 155, 10}
    };
    List<LineString> lines = new ArrayList<>();
    for (double[] n : narrow) {
      lines.add(Planar.line(x0 + n[0], y0 + n[1], x0 + n[2], y0 + n[3]));
    }
    if (revised) {
      lines.add(Planar.line(x0 + 100, y0, x0 + 100, y0 + 10));
    }
    out.add(
        new Mark.Shape(
            "",
            Planar.FACTORY.createMultiLineString(lines.toArray(new LineString[0])),
            Style.narrow(Tone.INK)));
    out.add(
        new Mark.Shape(
            "",
            Planar.rectangle(
                x0, y0, x0 + SheetSpace.TITLE_WIDTH_MM, y0 + SheetSpace.TITLE_HEIGHT_MM),
            Style.line(Tone.INK, SheetSpace.FRAME_LINE_MM)));
  }
}
