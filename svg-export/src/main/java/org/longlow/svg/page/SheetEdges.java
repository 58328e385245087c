package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * What stands along the edges of a template sheet: glue strips (right and bottom), edges to trim
 * (left and top), register crosses in the corners of the overlap, and arrows to the neighbours.
 *
 * <p>The sheet to the right lies on top of the left one's strip, the row below on top of the row
 * above.
 */
final class SheetEdges {

  private static final double HAIR_MM = 0.13;
  private static final double THIN_MM = 0.18;
  private static final double HATCH_MM = 3;
  private static final double CAPTION_MM = 2.3;
  private static final double PARTNERS_MM = 2;

  private final TemplatePlan plan;
  private final TemplatePlan.Sheet sheet;
  private final double w;
  private final double h;
  private final double o;

  SheetEdges(TemplatePlan plan, TemplatePlan.Sheet sheet) {
    this.plan = plan;
    this.sheet = sheet;
    this.w = plan.width();
    this.h = plan.height();
    this.o = plan.settings().overlapMm();
  }

  /** Returns what lies under the template: hatched strips. */
  List<Mark> strips() {
    boolean right = neighbour(0, 1);
    boolean below = neighbour(1, 0);
    List<Geometry> bands = new ArrayList<>();
    if (right) {
      bands.add(Planar.rectangle(w - o, 0, w, h));
    }
    if (below) {
      bands.add(Planar.rectangle(0, 0, w, o));
    }
    if (bands.isEmpty()) {
      return List.of();
    }
    Geometry strip = bands.get(0);
    for (Geometry more : bands.subList(1, bands.size())) {
      strip = strip.union(more);
    }
    List<Mark> out = new ArrayList<>();
    out.add(
        new Mark.Shape(
            "", Hatch.lines(strip, HATCH_MM, Math.PI / 4), Style.line(Tone.FAINT, HAIR_MM)));
    Style inner = Style.line(Tone.PENCIL, THIN_MM).withLine(LineType.DASHED);
    if (right) {
      out.add(new Mark.Shape("", Planar.line(w - o, 0, w - o, h), inner));
    }
    if (below) {
      out.add(new Mark.Shape("", Planar.line(0, o, w, o), inner));
    }
    return out;
  }

  /**
   * Returns the faint frame that shows whether the printer cut anything off, and the edges to trim.
   */
  List<Mark> frame() {
    List<Mark> out = new ArrayList<>();
    out.add(new Mark.Shape("", Planar.rectangle(0, 0, w, h), Style.line(Tone.FAINT, HAIR_MM)));
    Style trim = Style.line(Tone.PENCIL, THIN_MM);
    if (neighbour(0, -1)) {
      out.add(new Mark.Shape("", Planar.line(0, 0, 0, h), trim));
    }
    if (neighbour(-1, 0)) {
      out.add(new Mark.Shape("", Planar.line(0, h, w, h), trim));
    }
    return out;
  }

  /** Words and an arrow in the middle of an edge. */
  private record Caption(double x, double y, double arrowDeg, String text) {
    boolean upright() {
      return Math.abs(arrowDeg) != 90;
    }

    /** Half the length of the words; fonts other than the intended one may be a fifth wider. */
    double reach() {
      return Lettering.widthMm(text, CAPTION_MM) * 0.6 + 4;
    }
  }

  private List<Caption> captions() {
    List<Caption> out = new ArrayList<>();
    if (neighbour(0, 1)) {
      out.add(new Caption(w - o / 2, h / 2, 0, strip(label(0, 1))));
    }
    if (neighbour(1, 0)) {
      out.add(new Caption(w / 2, o / 2, -90, strip(label(1, 0))));
    }
    if (neighbour(0, -1)) {
      out.add(new Caption(o / 2, h / 2, 180, trim(label(0, -1))));
    }
    if (neighbour(-1, 0)) {
      out.add(new Caption(w / 2, h - o / 2, 90, trim(label(-1, 0))));
    }
    return out;
  }

  private static String strip(String label) {
    return label + ": glue strip, " + label + " lies on top";
  }

  private static String trim(String label) {
    return label + ": trim this edge, lay on " + label;
  }

  /** Returns patches of paper for the captions; they lie under the drawing. */
  List<Mark> arrowBacking() {
    List<Mark> out = new ArrayList<>();
    double half = halfBand();
    for (Caption c : captions()) {
      double reach = c.reach();
      out.add(
          new Mark.Shape(
              "",
              c.upright()
                  ? Planar.rectangle(c.x - half, c.y - reach - 4, c.x + half, c.y + reach)
                  : Planar.rectangle(c.x - reach - 4, c.y - half, c.x + reach, c.y + half),
              Style.area(Tone.PAPER, 1)));
    }
    return out;
  }

  /** Returns arrows and words towards the neighbours. */
  List<Mark> arrows() {
    List<Mark> out = new ArrayList<>();
    double tip = Math.min(2.2, halfBand());
    double back = tip * 0.9;
    for (Caption at : captions()) {
      double ax = at.upright() ? at.x : at.x - at.reach();
      double ay = at.upright() ? at.y - at.reach() : at.y;
      double c = Math.cos(Math.toRadians(at.arrowDeg));
      double s = Math.sin(Math.toRadians(at.arrowDeg));
      out.add(
          new Mark.Shape(
              "",
              Planar.polygon(
                  ax + tip * c,
                  ay + tip * s,
                  ax - back * c - back * s,
                  ay - back * s + back * c,
                  ax - back * c + back * s,
                  ay - back * s - back * c),
              Style.area(Tone.INK, 1)));
      out.add(
          new Mark.Words(
              "", at.text, at.x, at.y, CAPTION_MM, at.upright() ? 90 : 0, Anchor.CENTRE, Tone.INK));
    }
    return out;
  }

  private double halfBand() {
    return Math.min(o / 2 - 0.6, 2.6);
  }

  /** A corner of the sheet that at least one other sheet shows too. */
  private record Node(String subject, double x, double y, boolean left, String words) {}

  private List<Node> nodes() {
    List<Node> out = new ArrayList<>();
    for (int down = 0; down <= 1; down++) {
      for (int along = 0; along <= 1; along++) {
        int column = sheet.column() + along;
        int row = sheet.row() + down;
        List<String> partners = partners(row, column);
        if (!partners.isEmpty()) {
          out.add(
              new Node(
                  "register:" + column + ":" + row,
                  along == 0 ? o / 2 : w - o / 2,
                  down == 0 ? h - o / 2 : o / 2,
                  along == 0,
                  "meets " + String.join(", ", partners)));
        }
      }
    }
    return out;
  }

  /** Returns patches of paper for crosses and their words; they lie under the drawing. */
  List<Mark> crossBacking() {
    List<Mark> out = new ArrayList<>();
    Style paper = Style.area(Tone.PAPER, 1);
    for (Node n : nodes()) {
      out.add(new Mark.Shape("", Planar.disc(n.x, n.y, 0.3 * o), paper));
      double width = Lettering.widthMm(n.words, PARTNERS_MM) * 1.2;
      double from = n.left ? o + 0.5 : w - o - 0.5 - width;
      out.add(
          new Mark.Shape("", Planar.rectangle(from, n.y - 1.7, from + width, n.y + 1.7), paper));
    }
    return out;
  }

  /**
   * Returns the register crosses. A cross belongs to a node of the grid and carries it in its
   * subject ({@code register:COLUMN:ROW}, counted from the left and from the top); the words beside
   * it name the other sheets that show it.
   */
  List<Mark> crosses() {
    List<Mark> out = new ArrayList<>();
    Style thin = Style.line(Tone.INK, THIN_MM);
    double arm = 0.42 * o;
    for (Node n : nodes()) {
      out.add(
          new Mark.Shape(
              n.subject,
              Planar.FACTORY.createMultiLineString(
                  new LineString[] {
                    Planar.line(n.x - arm, n.y, n.x + arm, n.y),
                    Planar.line(n.x, n.y - arm, n.x, n.y + arm)
                  }),
              thin));
      out.add(new Mark.Shape("", Planar.arc(n.x, n.y, 0.2 * o, 0, 2 * Math.PI), thin));
      out.add(
          Mark.Words.level(
              n.words,
              n.left ? o + 1 : w - o - 1,
              n.y,
              PARTNERS_MM,
              n.left ? Anchor.CENTRE_START : Anchor.CENTRE_END,
              Tone.INK));
    }
    return out;
  }

  /** Returns the names of the other used sheets round a node. */
  private List<String> partners(int row, int column) {
    List<String> out = new ArrayList<>();
    for (int r = row - 1; r <= row; r++) {
      for (int c = column - 1; c <= column; c++) {
        if (plan.isUsed(r, c) && !(r == sheet.row() && c == sheet.column())) {
          out.add(Tiling.label(r, c));
        }
      }
    }
    return out;
  }

  private boolean neighbour(int down, int right) {
    return plan.isUsed(sheet.row() + down, sheet.column() + right);
  }

  private String label(int down, int right) {
    return Tiling.label(sheet.row() + down, sheet.column() + right);
  }
}
