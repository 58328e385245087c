package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Names the parts that have an outline of their own: inside it where no line runs, else beside the
 * machine with a leader that ends in a dot on the part (ISO 128-2), else inside it where fewest
 * lines run. No name lies on other words; one that finds no place is left out.
 */
final class NameInk {

  /** Card round a name, paper mm. */
  private static final double AIR_MM = 0.5;

  /** Places tried across an outline and up it. */
  private static final int TRIES = 7;

  /** Rings of places tried round a part, their distance on paper, and places on each. */
  private static final int RINGS = 8;

  private static final double RING_MM = 4;
  private static final int SPOTS = 12;

  /** Shortest leader worth drawing, paper mm. */
  private static final double LEADER_MM = 2;

  private static final double DOT_MM = 0.5;

  /** What a line under a leader, and words in what is not theirs, weigh, paper mm. */
  private static final double LINE_COST = 1.5;

  private static final double OTHER_COST = 20;

  /** What of a person names keep off, if they can. */
  private static final List<Figure.Part> PERSON =
      List.of(Figure.Part.HEAD, Figure.Part.CHEST, Figure.Part.THIGH, Figure.Part.SHANK);

  private final Canvas canvas;
  private final double n;
  private final InkMap ink;
  private final Envelope card;
  private final List<Envelope> taken = new ArrayList<>();
  private final List<Coordinate[]> others = new ArrayList<>();
  private final List<LineSegment> leaders = new ArrayList<>();

  private NameInk(Drawing picture, double denominator) {
    canvas = new Canvas(denominator);
    n = denominator;
    ink = new InkMap(picture, n);
    card = picture.boundsMm();
    for (Layer layer : picture.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Words w) {
          taken.add(Labels.box(w, n));
        }
      }
    }
  }

  /**
   * Returns the names as a layer for the finished picture.
   *
   * @param picture what is on the card already
   * @param toRoad from the axes of the scene to those of the picture
   * @param widestMm longer names are shortened to this, paper mm
   */
  static Layer layer(
      Scene scene, Drawing picture, AffineTransformation toRoad, double n, double widestMm) {
    NameInk names = new NameInk(picture, n);
    Map<PartShape, Geometry> parts = new LinkedHashMap<>();
    scene.shapes().values().stream()
        .filter(s -> s.part().edge().isPresent() && !s.outline().isEmpty())
        .sorted(Comparator.comparingDouble(s -> -s.outline().getArea()))
        .forEach(s -> parts.put(s, toRoad.transform(s.outline())));
    parts.values().forEach(outline -> names.others.add(outline.getCoordinates()));
    scene.people().stream()
        .flatMap(m -> PERSON.stream().map(m::flesh))
        .forEach(flesh -> names.others.add(toRoad.transform(flesh).getCoordinates()));
    parts.forEach((shape, outline) -> names.name(shape, outline, widestMm));
    return new Layer(
        PictureLayer.NAMES.id(),
        PictureLayer.NAMES.title(),
        names.canvas.marks(PictureLayer.NAMES));
  }

  /**
   * A place for a name.
   *
   * @param middle of its box
   * @param lines how many squares with lines it covers
   * @param cost what else speaks against it
   */
  private record Place(PointMm middle, int lines, double cost) {
    boolean better(Place other) {
      return other == null
          || lines < other.lines
          || lines == other.lines && cost < other.cost - 1e-9;
    }
  }

  private void name(PartShape shape, Geometry outline, double widestMm) {
    String text = Lettering.fitted(shape.part().name(), Canvas.SMALL_MM, widestMm);
    Mark.Words words =
        new Mark.Words(
            "part:" + shape.part().name(), text, 0, 0, Canvas.SMALL_MM, 0, Anchor.CENTRE, Tone.INK);
    Envelope size = Labels.box(words, n);
    size.expandBy(AIR_MM * n);
    PointMm on = Grain.roomiest(outline).centre();
    Place inside = inside(outline, on, size);
    if (inside != null && inside.lines() == 0) {
      put(words, size, inside.middle());
      return;
    }
    if (Grain.roomMm(outline, on) <= 0) {
      Coordinate c = outline.getInteriorPoint().getCoordinate();
      on = new PointMm(c.x, c.y);
    }
    Place beside = beside(on, size);
    if (beside != null) {
      leader(words.subject(), on, beside.middle(), size);
      put(words, size, beside.middle());
    } else if (inside != null) {
      put(words, size, inside.middle());
    }
  }

  private Place inside(Geometry outline, PointMm on, Envelope size) {
    Envelope all = outline.getEnvelopeInternal();
    Coordinate[] ring = outline.getCoordinates();
    if (all.getWidth() < size.getWidth() || all.getHeight() < size.getHeight()) {
      return null;
    }
    Place best = null;
    for (int i = 0; i < TRIES; i++) {
      for (int k = 0; k < TRIES; k++) {
        PointMm at =
            new PointMm(
                all.getMinX()
                    + 0.5 * size.getWidth()
                    + (all.getWidth() - size.getWidth()) * i / (TRIES - 1.0),
                all.getMinY()
                    + 0.5 * size.getHeight()
                    + (all.getHeight() - size.getHeight()) * k / (TRIES - 1.0));
        Envelope box = boxAt(size, at);
        Place place = new Place(at, ink.under(box), at.distance(on));
        if (place.better(best) && Labels.free(box, taken) && !onLeader(box) && holds(ring, box)) {
          best = place;
        }
      }
    }
    return best;
  }

  /** Returns whether a box lies inside a ring, as far as its corners and edges tell. */
  private static boolean holds(Coordinate[] ring, Envelope box) {
    for (double x : new double[] {box.getMinX(), box.centre().x, box.getMaxX()}) {
      for (double z : new double[] {box.getMinY(), box.getMaxY()}) {
        if (!Grain.holds(ring, x, z)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Returns the nearest place round a part, over the road, where neither words nor lines are, if
   * there is one.
   */
  private Place beside(PointMm on, Envelope size) {
    Place best = null;
    for (int ring = 2; ring <= RINGS; ring++) {
      if (best != null && best.cost() < (ring - 1) * RING_MM) {
        break;
      }
      for (int k = 0; k < SPOTS; k++) {
        PointMm way = PointMm.unit(Math.PI / 2 + 2 * Math.PI * k / SPOTS);
        PointMm at =
            on.plus(
                new PointMm(
                    way.x() * (ring * RING_MM * n + 0.5 * size.getWidth()),
                    way.z() * (ring * RING_MM * n + 0.5 * size.getHeight())));
        Envelope box = boxAt(size, at);
        if (card.contains(box)
            && box.getMinY() > 0
            && ink.under(box) == 0
            && Labels.free(box, taken)) {
          Place place = led(on, at, box, best);
          best = place == null ? best : place;
        }
      }
    }
    return best;
  }

  /** Returns a place with a leader to it, if that is better than {@code best}. */
  private Place led(PointMm on, PointMm at, Envelope box, Place best) {
    LineSegment leader = new LineSegment(new Coordinate(on.x(), on.z()), end(on, box));
    double length = leader.getLength() / n;
    if (length < LEADER_MM || best != null && length >= best.cost()) {
      return null;
    }
    int lines = ink.along(leader.p0, leader.p1);
    double cost = length + LINE_COST * lines + OTHER_COST * inOthers(box.centre());
    Place place = new Place(at, 0, cost);
    return place.better(best) && !onLeader(box) && !crosses(leader) ? place : null;
  }

  /** Returns in how many parts and limbs a place lies: words there would seem to be theirs. */
  private int inOthers(Coordinate c) {
    int count = 0;
    for (Coordinate[] ring : others) {
      count += Grain.holds(ring, c.x, c.y) ? 1 : 0;
    }
    return count;
  }

  private static Envelope boxAt(Envelope size, PointMm middle) {
    Envelope box = new Envelope(size);
    Coordinate c = size.centre();
    box.translate(middle.x() - c.x, middle.z() - c.y);
    return box;
  }

  /** Returns where a leader from {@code on} meets a box. */
  private static Coordinate end(PointMm on, Envelope box) {
    return new Coordinate(
        Math.max(box.getMinX(), Math.min(box.getMaxX(), on.x())),
        Math.max(box.getMinY(), Math.min(box.getMaxY(), on.z())));
  }

  private boolean onLeader(Envelope box) {
    return leaders.stream().anyMatch(l -> meets(l, box));
  }

  private boolean crosses(LineSegment leader) {
    return taken.stream().anyMatch(t -> meets(leader, t))
        || leaders.stream().anyMatch(l -> l.distance(leader) < AIR_MM * n);
  }

  private static boolean meets(LineSegment line, Envelope box) {
    return SignSpots.crosses(line, box);
  }

  private void leader(String subject, PointMm on, PointMm middle, Envelope size) {
    Coordinate end = end(on, boxAt(size, middle));
    leaders.add(new LineSegment(new Coordinate(on.x(), on.z()), end));
    Style fine = Canvas.fine(Tone.INK);
    canvas.shape(PictureLayer.NAMES, subject, Planar.line(on.x(), on.z(), end.x, end.y), fine);
    canvas.circle(PictureLayer.NAMES, subject, on, canvas.paper(DOT_MM), Style.area(Tone.INK, 1));
  }

  private void put(Mark.Words words, Envelope size, PointMm middle) {
    // the middle of a box lies below that of its capitals, which is where words are anchored
    Coordinate box = size.centre();
    Mark.Words placed = Labels.moved(words, middle.x() - box.x, middle.z() - box.y);
    taken.add(boxAt(size, middle));
    canvas.shape(
        PictureLayer.NAMES,
        words.subject(),
        Planar.rectangle(Labels.box(placed, n)),
        Style.area(Tone.PAPER, 0.75));
    canvas.add(PictureLayer.NAMES, placed);
  }
}
