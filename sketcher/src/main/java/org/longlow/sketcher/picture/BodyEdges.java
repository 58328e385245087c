package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/**
 * Where on a picture the machine and its people are, asked along level and upright lines.
 *
 * <p>Only where a line leaves for the last time is asked, so holes and areas that lie over each
 * other need no care.
 */
final class BodyEdges {

  /** Nothing is anywhere. */
  static final BodyEdges NONE = new BodyEdges(List.of());

  private record Ring(Envelope box, CoordinateSequence points) {}

  private final List<Ring> rings;

  private BodyEdges(List<Ring> rings) {
    this.rings = rings;
  }

  /** Returns that of everything on a picture that is filled and is a part or a person. */
  static BodyEdges of(Drawing picture) {
    List<Ring> rings = new ArrayList<>();
    for (Layer layer : picture.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape && isBody(shape)) {
          for (Object line : LinearComponentExtracter.getLines(shape.geometry())) {
            LineString ring = (LineString) line;
            rings.add(new Ring(ring.getEnvelopeInternal(), ring.getCoordinateSequence()));
          }
        }
      }
    }
    return new BodyEdges(rings);
  }

  private static boolean isBody(Mark.Shape shape) {
    return shape.style().fill() != null
        && shape.geometry().getDimension() == 2
        && (shape.subject().startsWith("part:") || shape.subject().startsWith("person:"));
  }

  /**
   * Returns where a line that comes from within leaves the bodies for the last time.
   *
   * @param level whether the line is level, at a height; else it is upright, at an x
   * @param at that height or x, drawing mm
   * @param from where it begins
   * @param to where it ends, on either side of that
   * @return a place from {@code from} to {@code to}; {@code from} if it meets nothing
   */
  double left(boolean level, double at, double from, double to) {
    double way = Math.signum(to - from);
    double last = from;
    for (Ring ring : rings) {
      double low = level ? ring.box.getMinY() : ring.box.getMinX();
      double high = level ? ring.box.getMaxY() : ring.box.getMaxX();
      if (at >= low && at <= high) {
        last = farthest(ring.points, level, at, last, to, way);
      }
    }
    return last;
  }

  private static double farthest(
      CoordinateSequence points, boolean level, double at, double last, double to, double way) {
    double best = last;
    for (int i = 1; i < points.size(); i++) {
      double a = points.getOrdinate(i - 1, level ? 1 : 0) - at;
      double b = points.getOrdinate(i, level ? 1 : 0) - at;
      if (a > 0 == b > 0) {
        continue;
      }
      double along0 = points.getOrdinate(i - 1, level ? 0 : 1);
      double along1 = points.getOrdinate(i, level ? 0 : 1);
      double crossing = along0 + (along1 - along0) * a / (a - b);
      if (way * (crossing - best) > 0 && way * (to - crossing) >= 0) {
        best = crossing;
      }
    }
    return best;
  }
}
