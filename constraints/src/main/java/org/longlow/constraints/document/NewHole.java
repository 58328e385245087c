package org.longlow.constraints.document;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;

/** A hole to begin with: where its outline has most room, no bigger than a third of that. */
final class NewHole {

  /** As large as a new hole is, mm. */
  private static final double MOST_MM = 10;

  private static final double SHARE_OF_ROOM = 1.0 / 3;

  /** Nearer than this the place with most room need not be met, mm. */
  private static final double NEAR_MM = 0.5;

  private NewHole() {}

  /** Returns a hole of a kind for an outline whose vertices are written as coordinates. */
  static Hole of(String word, Layout layout, Outline outline) {
    PointMm at = PointMm.ORIGIN;
    double sizeMm = MOST_MM;
    boolean written =
        outline.closed()
            && outline.vertices().size() > 2
            && Stream.concat(
                    outline.vertices().stream(),
                    outline.holes().stream().flatMap(h -> h.vertices().stream()))
                .allMatch(v -> v.pin() == null);
    if (written) {
      Geometry room = room(layout, outline);
      if (room.getArea() > 0) {
        MaximumInscribedCircle circle = new MaximumInscribedCircle(room, NEAR_MM);
        Coordinate centre = circle.getCenter().getCoordinate();
        at = new PointMm(Math.rint(centre.x), Math.rint(centre.y));
        sizeMm =
            Math.max(
                1,
                Math.min(
                    MOST_MM, Math.rint(circle.getRadiusLine().getLength() * 2 * SHARE_OF_ROOM)));
      }
    }
    return of(word, at, sizeMm);
  }

  private static Hole of(String word, PointMm at, double sizeMm) {
    double half = sizeMm / 2;
    return switch (word) {
      case "slot" -> new Hole.Slot(vertex(at, -half / 2, 0), vertex(at, half / 2, 0), mm(half));
      case "cut" ->
          new Hole.Cut(
              List.of(
                  vertex(at, -half, -half),
                  vertex(at, half, -half),
                  vertex(at, half, half),
                  vertex(at, -half, half)));
      default -> new Hole.Round(vertex(at, 0, 0), mm(sizeMm));
    };
  }

  private static Vertex vertex(PointMm at, double byX, double byZ) {
    return new Vertex(mm(at.x() + byX), mm(at.z() + byZ), null, false);
  }

  private static Formula mm(double mm) {
    return Formula.of(mm, Unit.MM);
  }

  /** The half that is drawn, or all of the outline, less the holes that are there. */
  private static Geometry room(Layout layout, Outline outline) {
    Geometry room = Opening.polygon(points(layout, outline.vertices())).buffer(0);
    for (Hole hole : outline.holes()) {
      List<PointMm> at = points(layout, hole.vertices());
      Opening there =
          hole instanceof Hole.Round round
              ? Opening.round(at.get(0), value(layout, round.diameter()))
              : hole instanceof Hole.Slot slot
                  ? Opening.slot(at.get(0), at.get(1), value(layout, slot.width()))
                  : Opening.cut(at);
      room = room.difference(there.core().buffer(there.radiusMm()));
    }
    return room;
  }

  private static List<PointMm> points(Layout layout, List<Vertex> vertices) {
    return vertices.stream()
        .map(v -> new PointMm(value(layout, v.x()), value(layout, v.z())))
        .toList();
  }

  private static double value(Layout layout, Formula formula) {
    return Measures.of(layout).drawn(formula);
  }
}
