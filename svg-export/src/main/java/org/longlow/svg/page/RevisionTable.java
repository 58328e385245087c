package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * What was changed on a drawing and when, the newest last: left of the title block where the sheet
 * has the room, else over it.
 */
public final class RevisionTable {

  /** As many fit beside the title block; older ones are in the layout. */
  private static final int MOST = 5;

  private static final double ROW_MM = 5;
  private static final double INDEX_MM = 14;
  private static final double DATE_MM = 25;
  private static final double LEAST_MM = INDEX_MM + DATE_MM + 20;
  private static final double MOST_MM = 180;
  private static final double CAPTION_MM = 1.8;
  private static final double ENTRY_MM = 2;
  private static final double PAD_MM = 1.2;

  /** Words may come out a fifth wider in a font other than the intended one. */
  private static final double FONT_RESERVE = 1.2;

  private RevisionTable() {}

  /**
   * Returns the space for a picture over the title block and, where the table stands over that,
   * over the table too, page mm.
   */
  public static Envelope pictureSpace(Paper paper, TitleBlock title) {
    Envelope s = SheetSpace.pictureSpace(paper);
    boolean over = !title.revisions().isEmpty() && besideMm(paper) < LEAST_MM;
    double bottom = s.getMinY() + (over ? highMm(title) : 0);
    return new Envelope(s.getMinX(), s.getMaxX(), Math.min(bottom, s.getMaxY()), s.getMaxY());
  }

  /** Returns its marks; none where nothing was changed. */
  static List<Mark> at(Paper paper, TitleBlock title) {
    List<TitleBlock.Revision> all = title.revisions();
    if (all.isEmpty()) {
      return List.of();
    }
    Envelope f = SheetSpace.drawingSpace(paper);
    double titleLeft = f.getMaxX() - SheetSpace.TITLE_WIDTH_MM;
    boolean beside = besideMm(paper) >= LEAST_MM;
    double wide = Math.min(MOST_MM, beside ? besideMm(paper) : SheetSpace.TITLE_WIDTH_MM);
    double left = beside ? titleLeft - wide : f.getMaxX() - wide;
    double bottom = f.getMinY() + (beside ? 0 : SheetSpace.TITLE_HEIGHT_MM);
    double top = bottom + highMm(title);
    List<TitleBlock.Revision> shown = all.subList(Math.max(0, all.size() - MOST), all.size());
    List<Mark> marks = new ArrayList<>();
    double[] columns = {left, left + INDEX_MM, left + INDEX_MM + DATE_MM, left + wide};
    row(marks, columns, top, CAPTION_MM, Tone.PENCIL, "revision", "date", "what was changed");
    double y = top;
    List<LineString> lines = new ArrayList<>();
    for (TitleBlock.Revision r : shown) {
      y -= ROW_MM;
      lines.add(Planar.line(left, y, left + wide, y));
      row(marks, columns, y, ENTRY_MM, Tone.INK, r.index(), r.date(), r.what());
    }
    for (double x : new double[] {columns[1], columns[2]}) {
      lines.add(Planar.line(x, bottom, x, top));
    }
    marks.add(
        new Mark.Shape(
            "",
            Planar.FACTORY.createMultiLineString(lines.toArray(new LineString[0])),
            Style.narrow(Tone.INK)));
    marks.add(
        new Mark.Shape(
            "",
            Planar.rectangle(left, bottom, left + wide, top),
            Style.line(Tone.INK, SheetSpace.FRAME_LINE_MM)));
    return marks;
  }

  private static void row(
      List<Mark> marks, double[] columns, double top, double high, Tone tone, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      double room = (columns[i + 1] - columns[i] - 2 * PAD_MM) / FONT_RESERVE;
      String text = Lettering.fitted(Lettering.printable(cells[i]), high, room);
      double y = top - ROW_MM + (ROW_MM - high) / 2;
      marks.add(Mark.Words.level(text, columns[i] + PAD_MM, y, high, Anchor.START, tone));
    }
  }

  private static double highMm(TitleBlock title) {
    return ROW_MM * (1 + Math.min(MOST, title.revisions().size()));
  }

  /** Returns how much room there is left of the title block and right of the scale bar, mm. */
  private static double besideMm(Paper paper) {
    double room = SheetSpace.drawingSpace(paper).getWidth() - SheetSpace.TITLE_WIDTH_MM;
    return SheetSpace.hasCheckBar(paper) ? room - ScaleBar.BLOCK_LONG_MM - 6 : room - 2;
  }
}
