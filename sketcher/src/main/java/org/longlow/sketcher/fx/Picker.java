package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;

/** Finds what a drawing shows at a place: pins before everything, then what lies on top. */
final class Picker {

  /** What of a drawing can be picked. */
  private static final List<String> KINDS = List.of("part:", "person:", "dimension:");

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
}
