package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
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
  private final List<DatumLine> datums = new ArrayList<>();

  /** Words that are to stand that far from the middle of something, in a layer. */
  private record Wanted(
      List<Mark> layer, String of, String text, List<PointMm> at, double clearMm, Tone tone) {}

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

  void note(String words, List<PointMm> at) {
    List<PointMm> places = at.stream().map(this::turned).toList();
    wanted.add(new Wanted(inside, subject, words, places, 2, Tone.PENCIL));
  }

  void drill(String pin, PointMm at) {
    PointMm p = turned(at);
    String of = "pin:" + pin;
    drills.add(new Mark.Shape(of, Planar.disc(p.x(), p.z(), CROSS_MM / 2), Style.narrow(Tone.INK)));
    cross(of, p);
    named.add(new Wanted(drills, of, pin, List.of(p), CROSS_MM + 1.5, Tone.INK));
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
            List.of(new PointMm(box.centre().x, box.centre().y)),
            Math.max(CROSS_MM, reach) + 1.5,
            Tone.INK));
  }

  void datum(DatumLine line) {
    datums.add(line);
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
    for (DatumLine line : datums) {
      stations.addAll(line.on(places, subject, unturned, this::turned, this::turned));
    }
    for (Wanted w : wanted) {
      w.layer().add(places.beside(w.of(), w.text(), w.at(), w.clearMm(), NOTE_MM, w.tone()));
    }
    for (Wanted w : named) {
      w.layer().add(places.beside(w.of(), w.text(), w.at(), w.clearMm(), NOTE_MM, w.tone()));
    }
    TemplateBlock block =
        new TemplateBlock(subject, text.upWord(), text.rightWord(), turnRad, brief);
    for (TemplateBlock.Setting setting : block.settings()) {
      List<Mark> words = block.of(text, setting);
      Optional<PointMm> at = places.room(words);
      if (at.isPresent()) {
        return drawing(moved(words, at.get()));
      }
    }
    List<Mark> words = block.of(text, block.settings().get(0));
    return drawing(moved(words, places.below(words, drawing(List.of()).boundsMm())));
  }

  private static List<Mark> moved(List<Mark> words, PointMm to) {
    return Drawing.of("", new Layer("words", "Words", words))
        .moved(to.x(), to.z())
        .layers()
        .get(0)
        .marks();
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
