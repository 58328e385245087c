package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;

/**
 * What must hold of outlines and their holes, as far as a file alone tells. Where pins and free
 * measures lie is the solver's, and what runs smooth is known once it is in place: those are left
 * to the findings on edges.
 */
final class EdgeRules {

  private EdgeRules() {}

  static void whole(Outline.Drawn outline, Spot at) {
    int points = outline.vertices().size();
    if (outline.closed() && points == 2) {
      at.fault(
          "points",
          "",
          "has 2 entries, a closed outline needs at least 3",
          "add vertices or write \"closed\": false");
    }
    if (outline.half() && !outline.closed()) {
      at.fault(
          "half",
          "true",
          "is for a closed outline: the axis runs from its first vertex to its last",
          "take \"half\" out or write \"closed\": true");
    } else if (outline.half()
        && points > 2
        && ring(outline.axis(), at).map(EdgeRules::isOnePlace).orElse(false)) {
      at.fault(
          "points",
          "",
          "starts and ends in one place, which gives a half no axis",
          "let the first and the last vertex lie apart on the axis");
      return;
    }
    uncrossed(outline, "points", at);
    holes(outline, at);
  }

  private static boolean isOnePlace(List<PointMm> axis) {
    return axis.get(0).distance(axis.get(1)) == 0;
  }

  /** Reports a closed outline that crosses itself. */
  static void uncrossed(Outline outline, String key, Spot at) {
    if (outline.closed() && outline.vertices().size() > 2) {
      whole(outline, at).ifPresent(ring -> uncrossed(ring, key, at));
    }
  }

  /** Reports a cut-out that crosses itself. */
  static void uncrossed(Hole.Cut cut, Spot at) {
    if (cut.vertices().size() > 2) {
      ring(cut.vertices(), at).ifPresent(ring -> uncrossed(ring, "points", at));
    }
  }

  private static void uncrossed(List<PointMm> ring, String key, Spot at) {
    TopologyValidationError error = new IsValidOp(Opening.polygon(ring)).getValidationError();
    if (error != null) {
      Coordinate near = error.getCoordinate();
      at.fault(
          key,
          "",
          "crosses or touches itself near x "
              + Range.number(Math.rint(near.x * 10) / 10)
              + " mm, z "
              + Range.number(Math.rint(near.y * 10) / 10)
              + " mm",
          "put the vertices in order round the edge, each once");
    }
  }

  /** Reports holes that are not within their outline, or run into each other. */
  static void holes(Outline outline, Spot at) {
    if (outline.holes().isEmpty() || outline.vertices().isEmpty()) {
      return;
    }
    if (!outline.closed()) {
      at.fault(
          "holes",
          "[...]",
          "are for a closed outline; this one is a strip along its edge",
          "take them out or close the outline");
      return;
    }
    Optional<Polygon> within =
        outline.smooth().contains(true) || outline.count() < 3
            ? Optional.empty()
            : whole(outline, at).map(Opening::polygon).filter(Polygon::isValid);
    Optional<List<PointMm>> axis =
        Optional.of(outline)
            .filter(Outline::half)
            .flatMap(o -> ring(o.axis(), at))
            .filter(ends -> !isOnePlace(ends));
    List<Seen> seen = new ArrayList<>();
    for (int i = 0; i < outline.holes().size(); i++) {
      Optional<Opening> opening = opening(outline.holes().get(i), at);
      if (opening.isPresent()) {
        Seen hole = new Seen(i, opening.get());
        held(hole, within, seen, at);
        Optional<Seen> image =
            axis.flatMap(ends -> hole.opening().image(ends.get(0), ends.get(1)))
                .map(o -> new Seen(hole.index(), o));
        seen.add(hole);
        image.ifPresent(
            there -> {
              clear(there, seen, at);
              seen.add(there);
            });
      }
    }
  }

  /** A hole of the list, or the image of one. */
  private record Seen(int index, Opening opening) {}

  private static void held(Seen hole, Optional<Polygon> within, List<Seen> before, Spot at) {
    if (within.isPresent() && !(hole.opening().webMm(within.get()) > 0)) {
      at.itemFault(
          "holes",
          hole.index(),
          "{...}",
          "reaches the edge of its outline or lies outside of it",
          "move it inside, make it smaller, or draw the edge round it");
    }
    clear(hole, before, at);
  }

  private static void clear(Seen hole, List<Seen> before, Spot at) {
    for (Seen other : before) {
      if (!(hole.opening().webMm(other.opening()) > 0)) {
        boolean own = other.index() == hole.index();
        at.itemFault(
            "holes",
            hole.index(),
            "{...}",
            own
                ? "runs into its own image across the axis"
                : "runs into hole " + (other.index() + 1),
            own
                ? "put its middle on the axis or move all of it to one side"
                : "move them apart, or draw both as one cut");
        return;
      }
    }
  }

  private static Optional<Opening> opening(Hole hole, Spot at) {
    if (hole instanceof Hole.Round round) {
      return ring(round.vertices(), at)
          .flatMap(p -> at.fixed(round.diameter()).map(d -> Opening.round(p.get(0), d)));
    }
    if (hole instanceof Hole.Slot slot) {
      return ring(slot.vertices(), at)
          .flatMap(p -> at.fixed(slot.width()).map(w -> Opening.slot(p.get(0), p.get(1), w)));
    }
    boolean plain =
        hole.vertices().size() > 2 && hole.vertices().stream().noneMatch(Vertex::smooth);
    return plain
        ? ring(hole.vertices(), at).map(Opening::cut).filter(o -> o.core().isValid())
        : Optional.empty();
  }

  private static Optional<List<PointMm>> whole(Outline outline, Spot at) {
    return ring(outline.vertices(), at)
        .map(
            points -> {
              List<PointMm> all = new ArrayList<>(points);
              PointMm first = points.get(0);
              PointMm last = points.get(points.size() - 1);
              for (int i = points.size(); i < outline.count(); i++) {
                all.add(points.get(outline.written(i)).mirrored(first, last));
              }
              return all;
            });
  }

  private static Optional<List<PointMm>> ring(List<Vertex> vertices, Spot at) {
    List<PointMm> points = new ArrayList<>();
    for (Vertex v : vertices) {
      if (v.pin() != null) {
        return Optional.empty();
      }
      Optional<Double> x = at.fixed(v.x());
      Optional<Double> z = at.fixed(v.z());
      if (x.isEmpty() || z.isEmpty()) {
        return Optional.empty();
      }
      if (!(Math.max(Math.abs(x.get()), Math.abs(z.get())) <= Range.largest(Dim.LENGTH))) {
        return Optional.empty(); // what is out of reach is told where it stands
      }
      points.add(new PointMm(x.get(), z.get()));
    }
    return Optional.of(points);
  }
}
