package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
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
  private static final double HATCH_MM = 3;
  private static final double CAPTION_MM = 2.3;

  private final TemplatePlan plan;
  private final TemplatePlan.Sheet sheet;
  private final double w;
  private final double h;
  private final double o;
  private final FreeRoom room;
  private final RegisterCrosses crosses;
  private final List<Caption> captions;

  /**
   * @param room of the whole sheet, of which words take some
   * @param bars that stand on its strips
   */
  SheetEdges(TemplatePlan plan, TemplatePlan.Sheet sheet, FreeRoom room, SheetBlocks.Bars bars) {
    this.plan = plan;
    this.sheet = sheet;
    this.w = plan.width();
    this.h = plan.height();
    this.o = plan.settings().overlapMm();
    this.room = room;
    bars.all().forEach(room::take);
    this.crosses = new RegisterCrosses(plan, sheet, room);
    this.captions = captions();
    crosses.nameIn(room);
  }

  /** Returns where blocks may go: off the bands that are shared with neighbours. */
  Envelope free() {
    return new Envelope(air(0, -1), w - air(0, 1), air(1, 0), h - air(-1, 0));
  }

  /**
   * Returns the bars that would lie on lines to be cut on glue strips instead, where nothing is
   * lost: the sheet that is laid on top shows the same lines.
   */
  SheetBlocks.Bars onStrips(SheetBlocks found, FreeRoom room) {
    ScaleBar.Block bar = ScaleBar.Block.slim(false);
    double in = RegisterCrosses.ARM * o + o / 2 + 1;
    double off = (o - bar.shortMm()) / 2;
    boolean fits = off >= 0;
    Envelope below = new Envelope(in, in + bar.longMm(), off, off + bar.shortMm());
    Envelope right = new Envelope(w - o + off, w - off, in, in + bar.longMm());
    return new SheetBlocks.Bars(
        fits && neighbour(1, 0) && found.across().isOn(room)
            ? new SheetBlocks.Bar(bar, below)
            : null,
        fits && neighbour(0, 1) && found.along().isOn(room)
            ? new SheetBlocks.Bar(bar, right)
            : null);
  }

  private double air(int down, int right) {
    return neighbour(down, right) ? o + 1 : 1;
  }

  /**
   * Returns where captions stand.
   *
   * @param glued on glue strips, else along edges that are trimmed
   */
  List<Envelope> captioned(boolean glued) {
    return captions.stream()
        .filter(c -> glued == (c.arrowDeg == 0 || c.arrowDeg == -90))
        .map(Caption::box)
        .toList();
  }

  RegisterCrosses crosses() {
    return crosses;
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
    Style inner = Style.line(Tone.PENCIL, RegisterCrosses.THIN_MM).withLine(LineType.DASHED);
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
    Style trim = Style.line(Tone.PENCIL, RegisterCrosses.THIN_MM);
    if (neighbour(0, -1)) {
      out.add(new Mark.Shape("", Planar.line(0, 0, 0, h), trim));
    }
    if (neighbour(-1, 0)) {
      out.add(new Mark.Shape("", Planar.line(0, h, w, h), trim));
    }
    return out;
  }

  /** Words and an arrow in the band along an edge. */
  private record Caption(double x, double y, double arrowDeg, String text, double half) {
    boolean upright() {
      return Math.abs(arrowDeg) != 90;
    }

    Caption moved(double along) {
      return new Caption(
          upright() ? x : x + along, upright() ? y + along : y, arrowDeg, text, half);
    }

    /** Half the length of the words; fonts other than the intended one may be a fifth wider. */
    double reach() {
      return Lettering.widthMm(text, CAPTION_MM) * RegisterCrosses.FONT_RESERVE / 2 + 4;
    }

    /** What words and arrow take. */
    Envelope box() {
      double reach = reach();
      return upright()
          ? new Envelope(x - half, x + half, y - reach - 4, y + reach)
          : new Envelope(x - reach - 4, x + reach, y - half, y + half);
    }
  }

  private List<Caption> captions() {
    List<Caption> out = new ArrayList<>();
    if (neighbour(0, 1)) {
      out.add(caption(w - o / 2, h / 2, 0, strip(label(0, 1)), label(0, 1) + " lies on top"));
    }
    if (neighbour(1, 0)) {
      out.add(caption(w / 2, o / 2, -90, strip(label(1, 0)), label(1, 0) + " lies on top"));
    }
    if (neighbour(0, -1)) {
      out.add(caption(o / 2, h / 2, 180, trim(label(0, -1)), "trim, lay on " + label(0, -1)));
    }
    if (neighbour(-1, 0)) {
      out.add(caption(w / 2, h - o / 2, 90, trim(label(-1, 0)), "trim, lay on " + label(-1, 0)));
    }
    return out;
  }

  /** Takes the place next to the middle of an edge where arrow and words, or few, cover least. */
  private Caption caption(double x, double y, double arrowDeg, String text, String brief) {
    Caption best = null;
    double least = Double.POSITIVE_INFINITY;
    for (String words : List.of(text, brief)) {
      Caption middle = new Caption(x, y, arrowDeg, words, halfBand());
      best = best == null ? middle : best;
      double spare = (middle.upright() ? h : w) / 2 - o - middle.reach() - 4;
      for (double off = 0; off <= spare && least > 0; off += RegisterCrosses.SLIDE_MM) {
        for (double by : new double[] {off, -off}) {
          Caption tried = middle.moved(by);
          double covered = room.isTaken(tried.box()) ? Double.MAX_VALUE : room.covered(tried.box());
          if (covered < least) {
            least = covered;
            best = tried;
          }
        }
      }
    }
    room.take(best.box());
    return best;
  }

  private static String strip(String label) {
    return label + ": glue strip, " + label + " lies on top";
  }

  private static String trim(String label) {
    return label + ": trim this edge, lay on " + label;
  }

  /** Returns patches of paper for the captions; they lie under the drawing. */
  List<Mark> arrowBacking() {
    return captions.stream()
        .<Mark>map(c -> new Mark.Shape("", Planar.rectangle(c.box()), Style.area(Tone.PAPER, 1)))
        .toList();
  }

  /** Returns arrows and words towards the neighbours. */
  List<Mark> arrows() {
    List<Mark> out = new ArrayList<>();
    double tip = Math.min(2.2, halfBand());
    double back = tip * 0.9;
    for (Caption at : captions) {
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

  private boolean neighbour(int down, int right) {
    return plan.isUsed(sheet.row() + down, sheet.column() + right);
  }

  private String label(int down, int right) {
    return Tiling.label(sheet.row() + down, sheet.column() + right);
  }
}
