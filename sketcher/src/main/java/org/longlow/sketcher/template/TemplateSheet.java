package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
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
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.SheetLengths;

/** One template at 1:1 while it is drawn: the line to cut and everything a maker needs on it. */
final class TemplateSheet {

  private static final double NAME_MM = 5;
  private static final double TEXT_MM = 3;
  private static final double LINE_MM = 5.2;

  /** Longer lines are broken: half a sheet, so that the block finds room on one. */
  private static final double WIDEST_MM = 84;

  private static final double TICK_LETTER_MM = 2;
  private static final double AIR_MM = 8;

  /** Words beside the piece keep this near, so that they do not take a sheet of their own, mm. */
  private static final double NEAR_MM = 40;

  private static final double COMPASS_MM = 22;
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
  private final List<Mark> words = new ArrayList<>();
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
    List<String> wrapped = new ArrayList<>();
    lines.forEach(l -> wrapped.addAll(Lettering.wrapped(l, TEXT_MM, WIDEST_MM)));
    double[] columns = columns(rows);
    double tableWidth = 0;
    for (double c : columns) {
      tableWidth += c;
    }
    double width = Lettering.widthMm(title, NAME_MM);
    for (String line : wrapped) {
      width = Math.max(width, Lettering.widthMm(line, TEXT_MM));
    }
    width = COMPASS_MM + Math.max(width, tableWidth) + 2;
    double height =
        Math.max(COMPASS_MM, NAME_MM + 3 + LINE_MM * (wrapped.size() + rows.size()) + 2);
    PointMm corner = room(width, height);
    double x = corner.x() + COMPASS_MM;
    double y = corner.z() - NAME_MM;
    compass(corner.x() + 4, corner.z() - COMPASS_MM + 4);
    words.add(new Mark.Words(subject, title, x, y, NAME_MM, 0, Anchor.START, Tone.INK));
    y -= 3;
    for (String line : wrapped) {
      y -= LINE_MM;
      words.add(new Mark.Words(subject, line, x, y, TEXT_MM, 0, Anchor.START, Tone.INK));
    }
    for (List<String> row : rows) {
      y -= LINE_MM;
      double at = x;
      for (int i = 0; i < row.size(); i++) {
        words.add(new Mark.Words(subject, row.get(i), at, y, TEXT_MM, 0, Anchor.START, Tone.INK));
        at += columns[i];
      }
    }
    return new NamedDrawing(fileName, title, part, upWord, rightWord, drawing(), SheetLengths.MM);
  }

  private static double[] columns(List<List<String>> rows) {
    int n = rows.stream().mapToInt(List::size).max().orElse(0);
    double[] out = new double[n];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        out[i] = Math.max(out[i], Lettering.widthMm(row.get(i), TEXT_MM) + 4);
      }
    }
    return out;
  }

  /**
   * Returns the upper left corner of a free place of this size: on the piece, else beside it inside
   * its box so that no sheet is spent on words, else below; off the seams between sheets if that
   * can be had.
   */
  private PointMm room(double width, double height) {
    Envelope box = outline.getEnvelopeInternal();
    Envelope bounds = drawing().boundsMm();
    SheetSeams seams = new SheetSeams(bounds);
    PointMm best = null;
    int bestScore = -1;
    for (boolean onPiece : new boolean[] {true, false}) {
      for (double z = box.getMaxY() - 4; z - height > box.getMinY(); z -= 12) {
        for (double x = box.getMinX() + 4; x + width < box.getMaxX(); x += 12) {
          Envelope spot = new Envelope(x - 2, x + width + 2, z - height - 2, z + 2);
          int score = seams.score(spot);
          if (score > bestScore && free(spot, onPiece)) {
            best = new PointMm(x, z);
            bestScore = score;
          }
          if (bestScore == seams.best()) {
            return best;
          }
        }
      }
    }
    double z = bounds.getMinY() - AIR_MM;
    double last = Math.max(box.getMinX(), box.getMaxX() - width);
    for (double x = box.getMinX(); x <= last; x += 6) {
      Envelope spot = new Envelope(x, x + width, z - height, z);
      Envelope all = new Envelope(bounds);
      all.expandToInclude(spot);
      int score = new SheetSeams(all).score(spot);
      if (score > bestScore) {
        best = new PointMm(x, z);
        bestScore = score;
      }
    }
    return best;
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

  /** Two arrows: which way the sheet lies on the machine. */
  private void compass(double x, double y) {
    arrow(x, y, x, y + 13);
    arrow(x, y, x + 13, y);
    words.add(new Mark.Words(subject, upWord, x + 1.6, y + 9, 2, 0, Anchor.START, Tone.INK));
    words.add(new Mark.Words(subject, rightWord, x + 1.6, y + 1.6, 2, 0, Anchor.START, Tone.INK));
  }

  private void arrow(double x1, double y1, double x2, double y2) {
    PointMm tip = new PointMm(x2, y2);
    PointMm d = tip.minus(new PointMm(x1, y1));
    PointMm u = d.times(1 / d.length());
    PointMm back = tip.minus(u.times(3));
    words.add(new Mark.Shape(subject, Planar.line(x1, y1, x2, y2), Style.narrow(Tone.INK)));
    words.add(
        new Mark.Shape(
            subject,
            Curves.polygon(List.of(tip, back.plus(u.left()), back.minus(u.left()))),
            Style.area(Tone.INK, 1)));
  }

  private Drawing drawing() {
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
