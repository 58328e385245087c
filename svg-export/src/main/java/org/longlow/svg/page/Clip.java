package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.RingClipper;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Cuts marks to a rectangle.
 *
 * <p>Outlines are cut as lines (Liang-Barsky, segment by segment) and areas as areas, so the
 * outline of a cut polygon has no false edge along the rectangle. Neither step can fail on invalid
 * polygons. Words stay whole: they are kept when their anchor is inside, and slid inwards when they
 * would run over the edge.
 */
final class Clip {

  private Clip() {}

  static Drawing drawing(Drawing drawing, Envelope box) {
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      List<Mark> marks = new ArrayList<>();
      layer.marks().forEach(m -> mark(m, box, marks));
      layers.add(new Layer(layer.id(), layer.title(), marks));
    }
    return new Drawing(drawing.title(), layers);
  }

  /** Words that are slid keep this far from the edge, mm. */
  private static final double WORDS_AIR_MM = 0.5;

  /** Returns a drawing whose words are cut to a rectangle, and whose lines and areas are not. */
  static Drawing words(Drawing drawing, Envelope box) {
    Envelope within = new Envelope(box);
    within.expandBy(-WORDS_AIR_MM);
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      List<Mark> marks = new ArrayList<>();
      for (Mark m : layer.marks()) {
        if (!(m instanceof Mark.Words w)) {
          marks.add(m);
        } else if (box.contains(w.x(), w.y())) {
          marks.add(slidInside(w, within));
        }
      }
      layers.add(new Layer(layer.id(), layer.title(), marks));
    }
    return new Drawing(drawing.title(), layers);
  }

  /** Returns whether a shape is drawn as what is cut by: with the wide line. */
  static boolean isCut(Mark.Shape shape) {
    return shape.style().stroke() != null
        && shape.style().strokeMm() >= Style.wide(Tone.INK).strokeMm();
  }

  /**
   * Returns a drawing whose lines leave some rectangles out.
   *
   * @param boxes but for those to cut
   * @param strict those to cut too
   */
  static Drawing round(Drawing drawing, List<Envelope> boxes, List<Envelope> strict) {
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      layers.add(
          new Layer(
              layer.id(),
              layer.title(),
              layer.marks().stream().map(m -> round(m, boxes, strict)).toList()));
    }
    return new Drawing(drawing.title(), layers);
  }

  private static Mark round(Mark mark, List<Envelope> thin, List<Envelope> strict) {
    if (!(mark instanceof Mark.Shape shape)
        || shape.style().fill() != null
        || shape.style().stroke() == null) {
      return mark;
    }
    List<Envelope> boxes = new ArrayList<>(strict);
    if (!isCut(shape)) {
      boxes.addAll(thin);
    }
    Geometry line = shape.geometry();
    for (Envelope box : boxes) {
      Geometry hole = Planar.rectangle(box);
      if (box.intersects(line.getEnvelopeInternal()) && hole.intersects(line)) {
        line = (line.getDimension() < 2 ? line : line.getBoundary()).difference(hole);
      }
    }
    return line == shape.geometry() ? shape : new Mark.Shape(shape.subject(), line, shape.style());
  }

  private static void mark(Mark mark, Envelope box, List<Mark> out) {
    if (mark instanceof Mark.Words words) {
      if (box.contains(words.x(), words.y())) {
        out.add(slidInside(words, box));
      }
      return;
    }
    Mark.Shape shape = (Mark.Shape) mark;
    Envelope extent = shape.geometry().getEnvelopeInternal();
    if (box.contains(extent)) {
      out.add(shape);
      return;
    }
    if (!box.intersects(extent)) {
      return;
    }
    Style style = shape.style();
    if (style.fill() != null) {
      Geometry area = areas(shape.geometry(), box);
      if (!area.isEmpty()) {
        out.add(
            new Mark.Shape(shape.subject(), area, Style.area(style.fill(), style.fillOpacity())));
      }
    }
    if (style.stroke() != null) {
      Geometry lines = lines(shape.geometry(), box);
      if (!lines.isEmpty()) {
        out.add(
            new Mark.Shape(
                shape.subject(),
                lines,
                Style.line(style.stroke(), style.strokeMm()).withLine(style.line())));
      }
    }
  }

  /**
   * Returns the words moved by as little as puts their whole box inside; too long ones keep their
   * start inside.
   */
  private static Mark slidInside(Mark.Words words, Envelope box) {
    Envelope e = words.boxMm();
    double dx = slide(e.getMinX(), e.getMaxX(), box.getMinX(), box.getMaxX());
    double dy = slide(e.getMinY(), e.getMaxY(), box.getMinY(), box.getMaxY());
    return dx == 0 && dy == 0
        ? words
        : words.transformed(AffineTransformation.translationInstance(dx, dy));
  }

  private static double slide(double low, double high, double from, double to) {
    if (low < from || high - low > to - from) {
      return from - low;
    }
    return high > to ? to - high : 0;
  }

  /** Returns the areas of the geometry inside the box; rings that leave it run along its edge. */
  static Geometry areas(Geometry geometry, Envelope box) {
    RingClipper clipper = new RingClipper(box);
    List<Polygon> out = new ArrayList<>();
    for (Object o : PolygonExtracter.getPolygons(geometry)) {
      Polygon p = (Polygon) o;
      LinearRing shell = ring(clipper, p.getExteriorRing());
      if (shell == null) {
        continue;
      }
      List<LinearRing> holes = new ArrayList<>();
      for (int i = 0; i < p.getNumInteriorRing(); i++) {
        LinearRing hole = ring(clipper, p.getInteriorRingN(i));
        if (hole != null) {
          holes.add(hole);
        }
      }
      out.add(Planar.FACTORY.createPolygon(shell, holes.toArray(new LinearRing[0])));
    }
    return Planar.FACTORY.createMultiPolygon(out.toArray(new Polygon[0]));
  }

  private static LinearRing ring(RingClipper clipper, LineString ring) {
    Coordinate[] cut = clipper.clip(ring.getCoordinates());
    if (cut.length == 0) {
      return null;
    }
    List<Coordinate> closed = new ArrayList<>(List.of(cut));
    if (!closed.get(0).equals2D(closed.get(closed.size() - 1))) {
      closed.add(closed.get(0).copy());
    }
    return closed.size() < 4
        ? null
        : Planar.FACTORY.createLinearRing(closed.toArray(new Coordinate[0]));
  }

  /** Returns the parts of all lines and outlines inside the box. */
  static Geometry lines(Geometry geometry, Envelope box) {
    List<LineString> out = new ArrayList<>();
    GeometryComponentFilter each =
        part -> {
          if (part instanceof LineString line && box.intersects(line.getEnvelopeInternal())) {
            cut(line.getCoordinateSequence(), box, out);
          }
        };
    geometry.apply(each);
    return Planar.FACTORY.createMultiLineString(out.toArray(new LineString[0]));
  }

  private static void cut(CoordinateSequence line, Envelope box, List<LineString> out) {
    List<Coordinate> run = new ArrayList<>();
    double[] t = new double[2];
    for (int i = 1; i < line.size(); i++) {
      double x1 = line.getX(i - 1);
      double y1 = line.getY(i - 1);
      double dx = line.getX(i) - x1;
      double dy = line.getY(i) - y1;
      if (!inside(x1, y1, dx, dy, box, t)) {
        finish(run, out);
        continue;
      }
      if (t[0] > 0 || run.isEmpty()) {
        finish(run, out);
        run.add(new Coordinate(x1 + t[0] * dx, y1 + t[0] * dy));
      }
      run.add(
          t[1] == 1
              ? new Coordinate(line.getX(i), line.getY(i))
              : new Coordinate(x1 + t[1] * dx, y1 + t[1] * dy));
      if (t[1] < 1) {
        finish(run, out);
      }
    }
    finish(run, out);
  }

  private static void finish(List<Coordinate> run, List<LineString> out) {
    if (run.size() > 1) {
      LineString line = Planar.FACTORY.createLineString(run.toArray(new Coordinate[0]));
      if (line.getLength() > 0) {
        out.add(line);
      }
    }
    run.clear();
  }

  /**
   * Liang-Barsky: sets t to the part of the segment inside the box; returns false if there is none.
   */
  static boolean inside(double x, double y, double dx, double dy, Envelope box, double[] t) {
    t[0] = 0;
    t[1] = 1;
    return side(-dx, x - box.getMinX(), t)
        && side(dx, box.getMaxX() - x, t)
        && side(-dy, y - box.getMinY(), t)
        && side(dy, box.getMaxY() - y, t);
  }

  private static boolean side(double p, double q, double[] t) {
    if (p == 0) {
      return q >= 0;
    }
    double r = q / p;
    if (p < 0) {
      t[0] = Math.max(t[0], r);
    } else {
      t[1] = Math.min(t[1], r);
    }
    return t[0] <= t[1];
  }
}
