package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;

/**
 * Two states of a machine over each other, both as drawn: what was is light, what is dark, and what
 * stayed the same is drawn once, fine.
 */
public final class OverlayPicture {

  /** What moved less is drawn where it was, mm. */
  private static final double SAME_MM = 0.5;

  /** How strongly what was is shaded. */
  private static final double SHADE = 0.35;

  /** Half the cross on a pin that moved, paper mm. */
  private static final double CROSS_MM = 1.2;

  /** So many pins that moved farthest are told by how far. */
  private static final int TOLD = 10;

  /** So many lines stand below each other without columns. */
  private static final int FEW = 5;

  /** Air between a pin and what is written beside it, paper mm. */
  private static final double BESIDE_MM = 1.8;

  /** What is written stands no farther from its pin, paper mm. */
  private static final double FARTHEST_MM = 20;

  private static final PictureOptions AS_DRAWN = PictureOptions.PLAIN.withAsDrawn();

  private OverlayPicture() {}

  /**
   * Returns both on a framed sheet.
   *
   * @param lines what is written above them; the first alone where there is no room for more
   * @param scale the largest preferred one (ISO 5455) that fits unless given
   * @throws org.longlow.rider.geom.OutOfRange if it does not fit
   */
  public static DimensionedElevation.Sheet sheet(
      Study before,
      Study after,
      List<String> lines,
      Optional<Scale> scale,
      Paper paper,
      String date) {
    Scene scene = Scenes.of(after, AS_DRAWN);
    Envelope box = MachineInk.bounds(scene);
    box.expandToInclude(MachineInk.bounds(Scenes.of(before, AS_DRAWN)));
    List<String> all =
        lines.stream().flatMap(l -> DimensionedElevation.wrapped(l).stream()).toList();
    List<String> which = new ArrayList<>(DimensionedElevation.wrapped(lines.get(0)));
    which.add("Larger paper tells what changed.");
    int columns = all.size() > FEW ? DimensionedElevation.columns(paper) : 1;
    SheetChoice choice =
        new SheetChoice(
            paper,
            DimensionedElevation.title(after, date).withDocumentType("comparison"),
            DimensionedElevation.machine(scene),
            false,
            box,
            List.of(Detail.FULL, Detail.MAIN),
            SheetChoice.MUCH_LARGER,
            (n, detail) -> {
              Drawing both = of(before, after, n);
              return both.plus(
                  detail == Detail.FULL
                      ? DimensionedElevation.notes(all, columns, both, n)
                      : DimensionedElevation.notes(which, both, n));
            });
    return scale.map(choice::at).orElseGet(choice::largest);
  }

  /** Returns both at real size, lettered for 1:{@code n}. */
  public static Drawing of(Study before, Study after, double n) {
    Scene was = Scenes.of(before, AS_DRAWN);
    Scene is = Scenes.of(after, AS_DRAWN);
    Canvas road = new Canvas(n);
    MachineInk.road(road, is);
    List<Mark> light = new ArrayList<>();
    List<Mark> same = new ArrayList<>();
    List<Mark> dark = new ArrayList<>();
    was.shapes().forEach((name, s) -> before(s, is.shapes().get(name), light));
    is.shapes().forEach((name, s) -> after(s, was.shapes().get(name), same, dark));
    Map<String, List<Geometry>> sat = people(was, n);
    Map<String, List<Geometry>> sit = people(is, n);
    sat.forEach(
        (who, lines) -> {
          if (!alike(lines, sit.get(who))) {
            person(who, lines, Style.line(Tone.PENCIL, Canvas.FINE_MM), light);
          }
        });
    sit.forEach(
        (who, lines) -> {
          boolean stays = alike(lines, sat.get(who));
          double width = stays ? Canvas.HAIR_MM : Canvas.EDGE_MM;
          person(who, lines, Style.line(Tone.INK, width), stays ? same : dark);
        });
    List<Layer> layers = new ArrayList<>(road.drawing("").layers());
    add(layers, "before", "As it was", light);
    add(layers, "same", "As before", same);
    add(layers, "after", "As it is", dark);
    add(layers, "moved", "Pins that moved", moved(before, after, layers, n));
    return ElevationPicture.onRoad(new Drawing(is.title(), layers), is);
  }

  private static void add(List<Layer> layers, String id, String title, List<Mark> marks) {
    if (!marks.isEmpty()) {
      layers.add(new Layer(id, title, marks));
    }
  }

  private static void before(PartShape was, PartShape is, List<Mark> light) {
    if (is == null || apart(was.outline(), is.outline())) {
      Style style = Style.line(Tone.PENCIL, Canvas.FINE_MM);
      boolean area = was.outline().getDimension() == 2;
      shape(was, area ? style.withFill(Tone.FAINT, SHADE) : style, light);
    }
  }

  private static void after(PartShape is, PartShape was, List<Mark> same, List<Mark> dark) {
    if (was == null || apart(was.outline(), is.outline())) {
      shape(is, Style.line(Tone.INK, Canvas.EDGE_MM), dark);
    } else {
      shape(is, Style.line(Tone.INK, Canvas.HAIR_MM), same);
    }
  }

  private static void shape(PartShape shape, Style style, List<Mark> marks) {
    if (!shape.outline().isEmpty()) {
      marks.add(new Mark.Shape("part:" + shape.part().name(), shape.outline(), style));
    }
  }

  /** Returns whether a part lies elsewhere or is of another shape. */
  static boolean apart(PartShape was, PartShape is) {
    return apart(was.outline(), is.outline());
  }

  private static boolean apart(Geometry a, Geometry b) {
    return !a.equalsExact(b, SAME_MM)
        && (a.isEmpty() || b.isEmpty() || DiscreteHausdorffDistance.distance(a, b) >= SAME_MM);
  }

  /** The lines of everybody, by the name of their subject. */
  private static Map<String, List<Geometry>> people(Scene scene, double n) {
    Canvas canvas = new Canvas(n);
    scene.people().forEach(m -> PersonInk.ghost(canvas, m));
    Map<String, List<Geometry>> lines = new LinkedHashMap<>();
    for (Layer layer : canvas.drawing("").layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape s && s.style().stroke() != null) {
          lines.computeIfAbsent(s.subject(), w -> new ArrayList<>()).add(s.geometry());
        }
      }
    }
    return lines;
  }

  private static void person(String who, List<Geometry> lines, Style style, List<Mark> marks) {
    lines.forEach(line -> marks.add(new Mark.Shape(who, line, style)));
  }

  /** Returns whether somebody sits as before. */
  private static boolean alike(List<Geometry> a, List<Geometry> b) {
    return b != null
        && a.size() == b.size()
        && IntStream.range(0, a.size()).noneMatch(i -> apart(a.get(i), b.get(i)));
  }

  /** Returns how far pins moved that both have, farthest first. */
  public static Map<String, Double> movedPins(Study before, Study after) {
    Map<String, Double> moved = new LinkedHashMap<>();
    Map<String, PointMm> now = after.placed().places().pins();
    before.placed().places().pins().entrySet().stream()
        .filter(e -> now.containsKey(e.getKey()))
        .map(e -> Map.entry(e.getKey(), e.getValue().distance(now.get(e.getKey()))))
        .filter(e -> e.getValue() >= SAME_MM)
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .forEach(e -> moved.put(e.getKey(), e.getValue()));
    return moved;
  }

  /**
   * A line from where each was to where it is, a cross there, and of those that moved farthest the
   * name, where it is read best.
   *
   * @param drawn what is on the picture already
   */
  private static List<Mark> moved(Study before, Study after, List<Layer> drawn, double n) {
    Map<String, Double> moved = movedPins(before, after);
    Canvas canvas = new Canvas(n);
    Style line = Style.line(Tone.CHOSEN, Canvas.FINE_MM);
    for (String name : moved.keySet()) {
      PointMm to = after.placed().places().pin(name);
      String subject = "pin:" + name;
      canvas.line(PictureLayer.PINS, subject, line, before.placed().places().pin(name), to);
      double r = CROSS_MM * n;
      for (PointMm way : List.of(new PointMm(r, r), new PointMm(r, -r))) {
        canvas.line(PictureLayer.PINS, subject, line, to.minus(way), to.plus(way));
      }
    }
    List<Mark> marks = new ArrayList<>(canvas.marks(PictureLayer.PINS));
    List<Layer> all = new ArrayList<>(drawn);
    all.add(new Layer("moved", "", marks));
    WordSpots spots = new WordSpots(new Drawing("", all), n);
    List<Mark> onTop = new ArrayList<>();
    moved.entrySet().stream()
        .limit(TOLD)
        .forEach(
            e -> {
              String how = after.layout().units().says(e.getValue(), FigureSort.LENGTH_IN_TENTHS);
              PointMm at = after.placed().places().pin(e.getKey());
              Mark.Words words = told("pin:" + e.getKey(), e.getKey() + " " + how, at, spots, n);
              Envelope box = Labels.box(words, n);
              marks.add(leader(words.subject(), at, box));
              onTop.add(
                  new Mark.Shape(
                      words.subject(), Planar.rectangle(box), Style.area(Tone.PAPER, 1)));
              onTop.add(words);
            });
    marks.addAll(onTop);
    return marks;
  }

  /** From a pin to its words, which may stand farther off. */
  private static Mark leader(String subject, PointMm pin, Envelope box) {
    double x = Math.max(box.getMinX(), Math.min(box.getMaxX(), pin.x()));
    double z = Math.max(box.getMinY(), Math.min(box.getMaxY(), pin.z()));
    return new Mark.Shape(
        subject, Planar.line(pin.x(), pin.z(), x, z), Style.line(Tone.CHOSEN, Canvas.HAIR_MM));
  }

  /** Returns words beside a pin, where they are read best. */
  private static Mark.Words told(
      String subject, String text, PointMm pin, WordSpots spots, double n) {
    List<Mark.Words> ways = new ArrayList<>();
    for (double far = BESIDE_MM; far < FARTHEST_MM; far += 3) {
      for (double[] way : new double[][] {{1, 1}, {1, -1}, {-1, 1}, {-1, -1}, {0, 1}, {0, -1}}) {
        Anchor anchor = way[0] > 0 ? Anchor.START : way[0] < 0 ? Anchor.END : Anchor.MIDDLE;
        double down = way[1] < 0 ? Canvas.SMALL_MM : 0;
        double x = pin.x() + way[0] * far * n;
        double y = pin.z() + (way[1] * far - down) * n;
        ways.add(new Mark.Words(subject, text, x, y, Canvas.SMALL_MM, 0, anchor, Tone.CHOSEN));
      }
    }
    return spots.best(ways, w -> w);
  }
}
