package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
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
import org.longlow.svg.page.Tiling;

/**
 * A template laid on paper: lines first, turned, then words, which stand upright beside them where
 * they lie on no line, no other words and no seam.
 */
final class TemplateLaying {

  private static final double TICK_LETTER_MM = 2;
  private static final double AIR_MM = 8;
  private static final double CROSS_MM = 7;
  private static final double NOTE_MM = 2.5;

  private final String subject;
  private final TemplateText text;
  private final double turnRad;
  private final boolean brief;
  private final AffineTransformation turn;
  private final Envelope unturned;
  private final Geometry outline;
  private final List<Mark> cut = new ArrayList<>();
  private final List<Mark> inside = new ArrayList<>();
  private final List<Mark> stations = new ArrayList<>();
  private final List<Mark> drills = new ArrayList<>();
  private final List<Envelope> taken = new ArrayList<>();
  private final List<Wanted> wanted = new ArrayList<>();
  private final List<Wanted> named = new ArrayList<>();
  private final List<Tick> ticks = new ArrayList<>();

  /** Words that are to stand that far from the middle of something, in a layer. */
  private record Wanted(
      List<Mark> layer, String of, String text, PointMm at, double clearMm, Tone tone) {}

  /** A tick with its figure, or the name of the line. */
  private record Tick(List<Mark> line, String text, PointMm at, double farMm, boolean above) {}

  TemplateLaying(
      String subject, Geometry asDrawn, TemplateText text, double turnRad, boolean brief) {
    this.subject = subject;
    this.text = text;
    this.turnRad = turnRad;
    this.brief = brief;
    this.turn = AffineTransformation.rotationInstance(turnRad);
    this.unturned = asDrawn.getEnvelopeInternal();
    this.outline = turned(asDrawn);
    cut.add(new Mark.Shape(subject, outline, Style.wide(Tone.INK)));
  }

  private Geometry turned(Geometry g) {
    return turnRad == 0 ? g : turn.transform(g);
  }

  private PointMm turned(PointMm p) {
    return turnRad == 0 ? p : p.turned(turnRad);
  }

  void mark(Geometry geometry, Style style) {
    inside.add(new Mark.Shape(subject, turned(geometry), style));
  }

  void note(String words, double x, double y) {
    wanted.add(new Wanted(inside, subject, words, turned(new PointMm(x, y)), 2, Tone.PENCIL));
  }

  void drill(String pin, PointMm at) {
    PointMm p = turned(at);
    String of = "pin:" + pin;
    drills.add(new Mark.Shape(of, Planar.disc(p.x(), p.z(), CROSS_MM / 2), Style.narrow(Tone.INK)));
    cross(of, p);
    named.add(new Wanted(drills, of, pin, p, CROSS_MM + 1.5, Tone.INK));
  }

  /** A cross along the axes of the machine. */
  private void cross(String of, PointMm p) {
    for (PointMm arm : List.of(new PointMm(CROSS_MM, 0), new PointMm(0, CROSS_MM))) {
      PointMm a = turned(arm);
      drills.add(
          new Mark.Shape(
              of,
              Planar.line(p.x() - a.x(), p.z() - a.z(), p.x() + a.x(), p.z() + a.z()),
              Style.narrow(Tone.INK)));
    }
    taken.add(new Envelope(p.x() - CROSS_MM, p.x() + CROSS_MM, p.z() - CROSS_MM, p.z() + CROSS_MM));
  }

  void hole(Geometry asDrawn, List<PointMm> centres, String size) {
    Envelope box = turned(asDrawn).getEnvelopeInternal();
    taken.add(box);
    centres.forEach(p -> cross(subject, turned(p)));
    double reach = Math.min(box.getWidth(), box.getHeight()) / 2;
    wanted.add(
        new Wanted(
            drills,
            subject,
            size,
            new PointMm(box.centre().x, box.centre().y),
            Math.max(CROSS_MM, reach) + 1.5,
            Tone.INK));
  }

  void datum(double y, String name, String axis, TemplateFigures figures) {
    double from = unturned.getMinX() - AIR_MM;
    double to = unturned.getMaxX() + AIR_MM;
    Style line = Style.line(Tone.PENCIL, Canvas.FINE_MM);
    stations.add(
        new Mark.Shape(
            subject, turned(Planar.line(from, y, to, y)), line.withLine(LineType.CHAIN)));
    double step = figures.stationMm();
    double first = Math.ceil(unturned.getMinX() / step - 1e-9) * step;
    for (double x = first; x <= unturned.getMaxX() + 1e-9; x += step) {
      Mark tick = new Mark.Shape(subject, turned(Planar.line(x, y - 2.5, x, y + 2.5)), line);
      ticks.add(new Tick(List.of(tick), figures.station(x), turned(new PointMm(x, y)), 0.9, true));
    }
    String words = "datum " + name + ", ticks every " + figures.mm(step) + " of " + axis;
    double wide =
        new Mark.Words("", words, 0, 0, TICK_LETTER_MM, 0, Anchor.CENTRE, Tone.INK).widthMm();
    for (double x = unturned.getMinX() + 3 + wide / 2; ; x += 10) {
      ticks.add(new Tick(List.of(), words, turned(new PointMm(x, y)), 3.2, false));
      if (x + wide / 2 + 10 > unturned.getMaxX()) {
        break;
      }
    }
  }

  /** Returns what needs paper. */
  Geometry ink() {
    List<Geometry> all = new ArrayList<>();
    for (List<Mark> layer : List.of(cut, inside, drills)) {
      for (Mark m : layer) {
        if (m instanceof Mark.Shape s) {
          all.add(s.geometry());
        }
      }
    }
    return Planar.FACTORY.createGeometryCollection(all.toArray(new Geometry[0]));
  }

  /** Returns the drawing on sheets; to be asked once. */
  Drawing on(Function<Envelope, Tiling> sheets) {
    WordPlaces places = new WordPlaces(outline, inside, drills, taken, ink(), sheets);
    stations(places);
    for (Wanted w : wanted) {
      w.layer().add(places.beside(w.of(), w.text(), w.at(), w.clearMm(), NOTE_MM, w.tone()));
    }
    for (Wanted w : named) {
      w.layer().add(places.beside(w.of(), w.text(), w.at(), w.clearMm(), NOTE_MM, w.tone()));
    }
    List<Mark> block =
        new TemplateBlock(subject, text.upWord(), text.rightWord(), turnRad, brief)
            .of(text.title(), text.lines(), text.rows());
    PointMm at = places.room(block, drawing(List.of()).boundsMm());
    List<Mark> words =
        Drawing.of("", new Layer("words", "Words", block))
            .moved(at.x(), at.z())
            .layers()
            .get(0)
            .marks();
    return drawing(words);
  }

  /** Ticks with their figures on sheets that are used, and the name of the line once. */
  private void stations(WordPlaces places) {
    PointMm up = turned(new PointMm(0, 1));
    PointMm ahead = turned(new PointMm(1, 0));
    Mark.Words name = null;
    boolean put = false;
    for (Tick t : ticks) {
      Mark.Words centred =
          new Mark.Words(
              subject,
              t.text(),
              t.at().x(),
              t.at().z(),
              TICK_LETTER_MM,
              0,
              Anchor.CENTRE,
              Tone.PENCIL);
      double half = centred.widthMm() / 2;
      // out of the line, whichever way it runs, and for a figure past its tick
      PointMm off =
          up.times(
              (t.above() ? 1 : -1)
                  * (t.farMm() + Math.abs(up.x()) * half + Math.abs(up.z()) * TICK_LETTER_MM / 2));
      if (t.above()) {
        off =
            off.plus(
                ahead.times(
                    0.8 + Math.abs(ahead.x()) * half + Math.abs(ahead.z()) * TICK_LETTER_MM / 2));
      }
      Mark.Words w =
          (Mark.Words)
              centred.transformed(AffineTransformation.translationInstance(off.x(), off.z()));
      if (t.above()) {
        if (places.isOnPaper(w)) {
          stations.addAll(t.line());
          stations.add(w);
          taken.add(Labels.box(w, 1));
          taken.add(
              t.line().get(0) instanceof Mark.Shape s
                  ? s.geometry().getEnvelopeInternal()
                  : new Envelope());
        }
      } else if (!put) {
        put = places.isFree(Labels.box(w, 1));
        name = put || name == null && places.isOnPaper(w) ? w : name;
      }
    }
    if (name != null) {
      stations.add(name);
      taken.add(Labels.box(name, 1));
    }
  }

  private Drawing drawing(List<Mark> words) {
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer("outline", "Line to cut", cut));
    add(layers, "inside", "Inside lines", inside);
    add(layers, "stations", "Datum and stations", stations);
    add(layers, "drills", "Drill crosses", drills);
    add(layers, "words", "Words", words);
    return new Drawing(text.title(), layers);
  }

  private static void add(List<Layer> layers, String id, String name, List<Mark> marks) {
    if (!marks.isEmpty()) {
      layers.add(new Layer(id, name, marks));
    }
  }
}
