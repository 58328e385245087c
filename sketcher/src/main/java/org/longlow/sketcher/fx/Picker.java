package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.edit.Things;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;

/**
 * Finds what a drawing shows at a place, pins before everything, then what lies on top; and the
 * other way round, where a thing is.
 */
final class Picker {

  /** What of a drawing can be picked. */
  private static final List<String> KINDS =
      List.of("part:", "person:", "dimension:", "line:", "tie:");

  /** Left free round a pin, px. */
  private static final double PIN_ROOM_PX = 24;

  /** How near the pointer takes a pin, px. */
  private static final double PIN_PX = 11;

  private Picker() {}

  /**
   * Returns the subject on top at a place, such as {@code part:tank}.
   *
   * @param reachMm how far beside a line still counts, mm
   */
  static Optional<String> at(Drawing drawing, PointMm place, double reachMm) {
    return stream(drawing, place, reachMm).findFirst();
  }

  /** Returns all subjects at a place, from the top down, each once. */
  static List<String> all(Drawing drawing, PointMm place, double reachMm) {
    return stream(drawing, place, reachMm).distinct().toList();
  }

  /** Returns all that is shown at a place on the screen: pins, then what lies on top. */
  static List<String> all(BoardState shown, ViewFrame frame, PointMm px, double reachPx) {
    List<String> all = new ArrayList<>();
    pins(shown, frame, px).forEach(pin -> all.add("pin:" + pin));
    PointMm place = frame.point(px.x(), px.z());
    all.addAll(all(shown.drawing(), place, reachPx / frame.pxPerMm()));
    return all;
  }

  /** Returns the pins within reach of a place on the screen, the nearest first. */
  static List<String> pins(BoardState shown, ViewFrame frame, PointMm px) {
    Map<String, Double> near = new LinkedHashMap<>();
    if (!shown.fromSide()) {
      return List.of(); // pins are places of the elevation
    }
    for (String name : shown.layout().pins().keySet()) {
      PointMm at = shown.onDrawing(name);
      double d = Math.hypot(frame.screenX(at.x()) - px.x(), frame.screenY(at.z()) - px.z());
      if (d < PIN_PX) {
        // of pins on one spot, take the one that can move
        near.put(name, shown.movable().contains(name) ? d - 2 : d);
      }
    }
    return near.keySet().stream().sorted(Comparator.comparingDouble(near::get)).toList();
  }

  private static Stream<String> stream(Drawing drawing, PointMm place, double reachMm) {
    Point point = Planar.FACTORY.createPoint(new Coordinate(place.x(), place.z()));
    Envelope near = new Envelope(place.x(), place.x(), place.z(), place.z());
    near.expandBy(reachMm);
    return reversed(drawing.layers())
        .flatMap(layer -> reversed(layer.marks()))
        .filter(mark -> KINDS.stream().anyMatch(mark.subject()::startsWith))
        .filter(
            mark ->
                mark instanceof Mark.Shape shape
                    && shape.geometry().getEnvelopeInternal().intersects(near)
                    && hits(shape, point, reachMm))
        .map(Mark::subject);
  }

  private static <T> Stream<T> reversed(List<T> list) {
    return IntStream.rangeClosed(1, list.size()).mapToObj(i -> list.get(list.size() - i));
  }

  private static boolean hits(Mark.Shape shape, Point point, double reachMm) {
    Geometry g = shape.geometry();
    return shape.style().fill() != null && g.getDimension() == 2
        ? g.isWithinDistance(point, reachMm / 2)
        : g.isWithinDistance(point, reachMm);
  }

  /** Returns the box round a thing on the screen, px; empty if it has no place there. */
  static Optional<Spots.Box> box(BoardState shown, ViewFrame frame, String subject) {
    if (subject.startsWith("pin:")) {
      String name = subject.substring(4);
      if (!shown.layout().pins().containsKey(name) || !shown.fromSide()) {
        return Optional.empty();
      }
      PointMm at = shown.onDrawing(name);
      return Optional.of(
          new Spots.Box(
              frame.screenX(at.x()) - PIN_ROOM_PX,
              frame.screenY(at.z()) - PIN_ROOM_PX,
              2 * PIN_ROOM_PX,
              2 * PIN_ROOM_PX));
    }
    Envelope box = new Envelope();
    for (Layer layer : shown.drawing().layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape && shape.subject().equals(subject)) {
          box.expandToInclude(shape.geometry().getEnvelopeInternal());
        }
      }
    }
    for (String pin : Things.pins(shown.layout(), subject)) {
      if (shown.layout().pins().containsKey(pin) && shown.fromSide()) {
        PointMm at = shown.onDrawing(pin);
        box.expandToInclude(at.x(), at.z());
      }
    }
    return subject.isEmpty() || box.isNull() ? Optional.empty() : Optional.of(frame.onScreen(box));
  }
}
