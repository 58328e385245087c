package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Canvas;
import org.longlow.sketcher.picture.Labels;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.LaidOut;
import org.longlow.svg.page.SheetLengths;
import org.longlow.svg.page.Tiling;

/** One template at 1:1 while it is drawn: the line to cut and everything a maker needs on it. */
final class TemplateSheet {

  /** From one place that is tried for the block to the next. */
  private static final double PACE_MM = 12;

  private static final double TICK_LETTER_MM = 2;
  private static final double AIR_MM = 8;

  /** Words beside the piece keep this near, so that they do not take a sheet of their own, mm. */
  private static final double NEAR_MM = 40;

  private static final double CROSS_MM = 7;
  private static final double NOTE_MM = 2.5;

  private final String subject;
  private final String title;
  private final Geometry outline;
  private final PreparedGeometry prepared;
  private final List<Mark> cut = new ArrayList<>();
  private final List<Mark> inside = new ArrayList<>();
  private final List<Mark> stations = new ArrayList<>();
  private final List<Mark> drills = new ArrayList<>();
  private final List<Envelope> taken = new ArrayList<>();
  private final List<Mark.Words> names = new ArrayList<>();
  private final List<Sized> sizes = new ArrayList<>();
  private final String upWord;
  private final String rightWord;

  /** The size of a hole, to be written that far from its middle. */
  private record Sized(String text, PointMm at, double clearMm) {}

  /**
   * Starts a template.
   *
   * @param outline the line to cut, mm
   * @param upWord what lies up on the sheet
   * @param rightWord what lies to the right on the sheet
   */
  TemplateSheet(String part, String title, Geometry outline, String upWord, String rightWord) {
    this.subject = "part:" + part;
    this.title = title;
    this.outline = outline;
    this.prepared = PreparedGeometryFactory.prepare(outline);
    this.upWord = upWord;
    this.rightWord = rightWord;
    cut.add(new Mark.Shape(subject, outline, Style.wide(Tone.INK)));
  }

  /** Adds a line that is not to be cut. */
  void mark(Geometry geometry, Style style) {
    if (!geometry.isEmpty()) {
      inside.add(new Mark.Shape(subject, geometry, style));
    }
  }

  void chain(List<PointMm> line) {
    mark(Curves.line(line), Style.narrow(Tone.INK).withLine(LineType.CHAIN));
  }

  /** Writes a note beside a place, where it lies on no line if that can be had. */
  void note(String text, double x, double y) {
    inside.add(beside(subject, text, x, y, 2, Tone.PENCIL));
  }

  private Mark.Words beside(String of, String text, double x, double y, double clearMm, Tone tone) {
    Mark.Words first = null;
    for (double far = clearMm; far < clearMm + 30; far += 4) {
      for (int k = 0; k < 8; k++) {
        double a = (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2) * Math.PI / 4;
        Anchor anchor =
            Math.abs(Math.cos(a)) < 0.1
                ? Anchor.CENTRE
                : Math.cos(a) > 0 ? Anchor.CENTRE_START : Anchor.CENTRE_END;
        double up = Math.abs(Math.sin(a)) > 0.1 ? Math.signum(Math.sin(a)) * NOTE_MM : 0;
        Mark.Words w =
            new Mark.Words(
                of,
                text,
                x + far * Math.cos(a),
                y + far * Math.sin(a) + up,
                NOTE_MM,
                0,
                anchor,
                tone);
        first = first == null ? w : first;
        if (onNothing(Labels.box(w, 1))) {
          taken.add(Labels.box(w, 1));
          return w;
        }
      }
    }
    taken.add(Labels.box(first, 1));
    return first;
  }

  private boolean onNothing(Envelope box) {
    Geometry area = outline.getFactory().toGeometry(box);
    return clear(box) && !outline.getBoundary().intersects(area);
  }

  /** Adds a drill cross with its name. */
  void drill(String pin, PointMm p) {
    String of = "pin:" + pin;
    drills.add(new Mark.Shape(of, Planar.disc(p.x(), p.z(), CROSS_MM / 2), Style.narrow(Tone.INK)));
    drills.add(
        new Mark.Shape(
            of,
            Planar.line(p.x() - CROSS_MM, p.z(), p.x() + CROSS_MM, p.z()),
            Style.narrow(Tone.INK)));
    drills.add(
        new Mark.Shape(
            of,
            Planar.line(p.x(), p.z() - CROSS_MM, p.x(), p.z() + CROSS_MM),
            Style.narrow(Tone.INK)));
    taken.add(new Envelope(p.x() - CROSS_MM, p.x() + CROSS_MM, p.z() - CROSS_MM, p.z() + CROSS_MM));
    names.add(new Mark.Words(of, pin, p.x(), p.z(), NOTE_MM, 0, Anchor.START, Tone.INK));
  }

  /**
   * Adds the centre crosses of a hole and its size beside it, where that is not cut away.
   *
   * @param hole its area, part of what is cut
   */
  void hole(Geometry hole, List<PointMm> centres, String size) {
    Envelope box = hole.getEnvelopeInternal();
    taken.add(box);
    for (PointMm p : centres) {
      drills.add(
          new Mark.Shape(
              subject,
              Planar.line(p.x() - CROSS_MM, p.z(), p.x() + CROSS_MM, p.z()),
              Style.narrow(Tone.INK)));
      drills.add(
          new Mark.Shape(
              subject,
              Planar.line(p.x(), p.z() - CROSS_MM, p.x(), p.z() + CROSS_MM),
              Style.narrow(Tone.INK)));
      taken.add(
          new Envelope(p.x() - CROSS_MM, p.x() + CROSS_MM, p.z() - CROSS_MM, p.z() + CROSS_MM));
    }
    double reach = Math.min(box.getWidth(), box.getHeight()) / 2;
    sizes.add(
        new Sized(
            size, new PointMm(box.centre().x, box.centre().y), Math.max(CROSS_MM, reach) + 1.5));
  }

  /**
   * Adds a level datum line with a tick at each station.
   *
   * @param y where it runs, mm
   * @param name what the line is, such as {@code z 400}
   * @param axis what the ticks count, such as {@code x}
   */
  void datum(double y, String name, String axis, TemplateFigures figures) {
    Envelope box = outline.getEnvelopeInternal();
    double from = box.getMinX() - AIR_MM;
    double to = box.getMaxX() + AIR_MM;
    Style line = Style.line(Tone.PENCIL, Canvas.FINE_MM);
    stations.add(
        new Mark.Shape(subject, Planar.line(from, y, to, y), line.withLine(LineType.CHAIN)));
    double step = figures.stationMm();
    double first = Math.ceil(box.getMinX() / step - 1e-9) * step;
    for (double x = first; x <= box.getMaxX() + 1e-9; x += step) {
      stations.add(new Mark.Shape(subject, Planar.line(x, y - 2.5, x, y + 2.5), line));
      stations.add(
          new Mark.Words(
              subject,
              figures.station(x),
              x + 0.8,
              y + 0.9,
              TICK_LETTER_MM,
              0,
              Anchor.START,
              Tone.PENCIL));
      taken.add(new Envelope(x - 1, x + 10, y - 3, y + 4));
    }
    String words = "datum " + name + ", ticks every " + figures.mm(step) + " of " + axis;
    Mark.Words put = null;
    for (double x = box.getMinX() + 3; x < box.getMaxX(); x += 10) {
      Mark.Words w = new Mark.Words(subject, words, x, y - 5.2, 2, 0, Anchor.START, Tone.PENCIL);
      put = put == null ? w : put;
      Envelope at = Labels.box(w, 1);
      if (at.getMaxX() < box.getMaxX() && onNothing(at)) {
        put = w;
        break;
      }
    }
    if (put != null) {
      stations.add(put);
      taken.add(Labels.box(put, 1));
    }
  }

  /**
   * Returns the template with name, lines of text and table, inside the outline where there is room
   * and below it otherwise.
   *
   * @param rows a table, headings first, or empty
   */
  NamedDrawing with(String fileName, String part, List<String> lines, List<List<String>> rows) {
    for (Sized s : sizes) {
      drills.add(beside(subject, s.text(), s.at().x(), s.at().z(), s.clearMm(), Tone.INK));
    }
    for (Mark.Words w : names) {
      drills.add(beside(w.subject(), w.text(), w.x(), w.y(), CROSS_MM + 1.5, Tone.INK));
    }
    List<Mark> block = new TemplateBlock(subject, upWord, rightWord).of(title, lines, rows);
    LaidOut laid = sheets -> drawing(moved(block, room(alone(block), sheets)));
    return new NamedDrawing(fileName, title, part, upWord, rightWord, laid, SheetLengths.MM);
  }

  private static Drawing alone(List<Mark> marks) {
    return Drawing.of("", new Layer("words", "Words", marks));
  }

  private static List<Mark> moved(List<Mark> marks, PointMm by) {
    return alone(marks).moved(by.x(), by.z()).layers().get(0).marks();
  }

  /**
   * Returns where the block goes, off the seams between sheets: on the piece, else beside it inside
   * its box so that no sheet is spent on words, else below.
   */
  private PointMm room(Drawing marks, Function<Envelope, Tiling> sheets) {
    Envelope block = marks.paperBoundsMm();
    Envelope box = outline.getEnvelopeInternal();
    Envelope bounds = drawing(List.of()).boundsMm();
    Tiling tiling = sheets.apply(bounds);
    for (boolean onPiece : new boolean[] {true, false}) {
      for (double z = box.getMaxY() - 4; z + block.getMinY() > box.getMinY(); z -= PACE_MM) {
        for (double x = box.getMinX() + 4; x + block.getMaxX() < box.getMaxX(); x += PACE_MM) {
          Envelope spot = at(block, x, z);
          spot.expandBy(2);
          if (tiling.isClear(spot) && free(spot, onPiece)) {
            return new PointMm(x, z);
          }
        }
      }
    }
    double top = bounds.getMinY() - AIR_MM;
    double last = Math.max(box.getMinX(), box.getMaxX() - block.getMaxX());
    for (double down = 0; down < tiling.usableHeightMm(); down += PACE_MM / 2) {
      for (double x = box.getMinX(); x <= last; x += PACE_MM / 2) {
        Envelope spot = at(block, x, top - down);
        Envelope all = new Envelope(bounds);
        all.expandToInclude(at(marks.boundsMm(), x, top - down));
        if (sheets.apply(all).isClear(spot)) {
          return new PointMm(x, top - down);
        }
      }
    }
    return new PointMm(box.getMinX(), top);
  }

  private static Envelope at(Envelope block, double x, double z) {
    return new Envelope(
        x + block.getMinX(), x + block.getMaxX(), z + block.getMinY(), z + block.getMaxY());
  }

  private boolean free(Envelope spot, boolean onPiece) {
    Geometry area = outline.getFactory().toGeometry(spot);
    if (!clear(spot)) {
      return false;
    }
    return onPiece
        ? prepared.contains(area)
        : !prepared.intersects(area) && outline.isWithinDistance(area, NEAR_MM);
  }

  private boolean clear(Envelope spot) {
    if (!Labels.free(spot, taken)) {
      return false;
    }
    Geometry area = outline.getFactory().toGeometry(spot);
    return inside.stream()
        .noneMatch(m -> m instanceof Mark.Shape s && s.geometry().intersects(area));
  }

  private Drawing drawing(List<Mark> words) {
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer("outline", "Line to cut", cut));
    add(layers, "inside", "Inside lines", inside);
    add(layers, "stations", "Datum and stations", stations);
    add(layers, "drills", "Drill crosses", drills);
    add(layers, "words", "Words", words);
    return new Drawing(title, layers);
  }

  private static void add(List<Layer> layers, String id, String name, List<Mark> marks) {
    if (!marks.isEmpty()) {
      layers.add(new Layer(id, name, marks));
    }
  }
}
