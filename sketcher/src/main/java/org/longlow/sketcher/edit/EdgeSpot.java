package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * A place on an edge of an outline or a straight of a tube.
 *
 * @param edge which, counted from 0
 * @param at the place on it that is nearest to what was asked for
 * @param offMm how far that is off
 */
public record EdgeSpot(int edge, PointMm at, double offMm) {

  /**
   * Returns the place on the edges of a part that is nearest; empty for a part without edges.
   *
   * @param body which of its further bodies; -1 for the first
   */
  public static Optional<EdgeSpot> nearest(
      Layout layout, Places places, String name, int body, PointMm to) {
    return nearest(edges(layout, places, name, body), to);
  }

  private static List<List<PointMm>> edges(Layout layout, Places places, String name, int body) {
    Part part = layout.parts().get(name);
    if (part instanceof TubePart tube) {
      List<PointMm> pins = tube.path().stream().map(places::pin).toList();
      List<List<PointMm>> straights = new ArrayList<>();
      for (int i = 1; i < pins.size(); i++) {
        straights.add(List.of(pins.get(i - 1), pins.get(i)));
      }
      return straights;
    }
    if (part instanceof Part.Outlined outlined) {
      Outline outline = Handle.outline(layout, name, body).orElseThrow();
      return edges(
          Outlines.vertices(outlined.frame(), outline, places), outline.smooth(), outline.closed());
    }
    return List.of();
  }

  /**
   * Returns the place half way along an edge of an outline, or a straight of a tube.
   *
   * @param body which of its further bodies; -1 for the first
   * @param edge counted from 0, around from the last to the first
   * @return empty for a part without such an edge
   */
  public static Optional<EdgeSpot> halfWay(
      Layout layout, Places places, String name, int body, int edge) {
    List<List<PointMm>> edges = edges(layout, places, name, body);
    if (edges.isEmpty()) {
      return Optional.empty();
    }
    int at = Math.floorMod(edge, edges.size());
    List<PointMm> line = edges.get(at);
    double left = 0;
    for (int i = 1; i < line.size(); i++) {
      left += line.get(i - 1).distance(line.get(i)) / 2;
    }
    for (int i = 1; i < line.size(); i++) {
      double step = line.get(i - 1).distance(line.get(i));
      if (step >= left && step > 0) {
        return Optional.of(new EdgeSpot(at, line.get(i - 1).towards(line.get(i), left / step), 0));
      }
      left -= step;
    }
    return Optional.empty();
  }

  /** Returns the points of each edge, curves flattened. */
  static List<List<PointMm>> edges(List<PointMm> vertices, List<Boolean> smooth, boolean closed) {
    List<PointMm> all = Curves.through(vertices, smooth, closed);
    List<List<PointMm>> edges = new ArrayList<>();
    int from = 0;
    for (int i = 1; i < vertices.size(); i++) {
      int to = from + all.subList(from + 1, all.size()).indexOf(vertices.get(i)) + 1;
      edges.add(all.subList(from, to + 1));
      from = to;
    }
    if (closed) {
      List<PointMm> last = new ArrayList<>(all.subList(from, all.size()));
      last.add(vertices.get(0));
      edges.add(last);
    }
    return edges;
  }

  private static Optional<EdgeSpot> nearest(List<List<PointMm>> edges, PointMm to) {
    EdgeSpot best = null;
    for (int e = 0; e < edges.size(); e++) {
      List<PointMm> line = edges.get(e);
      for (int i = 1; i < line.size(); i++) {
        PointMm foot = foot(line.get(i - 1), line.get(i), to);
        double off = foot.distance(to);
        if (best == null || off < best.offMm()) {
          best = new EdgeSpot(e, foot, off);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static PointMm foot(PointMm a, PointMm b, PointMm p) {
    PointMm along = b.minus(a);
    double square = along.dot(along);
    double share = square > 0 ? p.minus(a).dot(along) / square : 0;
    return a.towards(b, Math.max(0, Math.min(1, share)));
  }
}
