package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
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

  private Picker() {}

  /**
   * Returns the subject at a place, such as {@code part:tank}.
   *
   * @param reachMm how far beside a line still counts, mm
   */
  static Optional<String> at(Drawing drawing, PointMm place, double reachMm) {
    Point point = Planar.FACTORY.createPoint(new Coordinate(place.x(), place.z()));
    Envelope near = new Envelope(place.x(), place.x(), place.z(), place.z());
    near.expandBy(reachMm);
    String found = null;
    for (int l = drawing.layers().size() - 1; l >= 0; l--) {
      List<Mark> marks = drawing.layers().get(l).marks();
      for (int i = marks.size() - 1; i >= 0; i--) {
        if (!(marks.get(i) instanceof Mark.Shape shape) || shape.subject().isEmpty()) {
          continue;
        }
        String subject = shape.subject();
        boolean pickable = subject.startsWith("part:") || subject.startsWith("person:");
        if (found == null
            && pickable
            && shape.geometry().getEnvelopeInternal().intersects(near)
            && hits(shape, point, reachMm)) {
          found = subject;
        }
      }
    }
    return Optional.ofNullable(found);
  }

  private static boolean hits(Mark.Shape shape, Point point, double reachMm) {
    Geometry g = shape.geometry();
    return shape.style().fill() != null && g.getDimension() == 2
        ? g.isWithinDistance(point, reachMm / 2)
        : g.isWithinDistance(point, reachMm);
  }
}
