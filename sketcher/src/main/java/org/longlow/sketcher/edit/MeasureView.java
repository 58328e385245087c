package org.longlow.sketcher.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;

/**
 * A machine as it is shown while somebody measures on it, in the axes of the frame.
 *
 * @param drawn where the pins are as drawn
 * @param now where they are in the stance shown
 * @param outlines of the parts in that stance, by name
 * @param ground the road under it
 */
public record MeasureView(
    Layout layout, Places drawn, Places now, Map<String, Geometry> outlines, Ground ground) {

  /**
   * Returns what a pointer means: a pin, a point of an outline, an edge, the ground, else a place.
   *
   * @param pxPerMm the scale at which somebody points
   * @param exactly whether the very place is meant, whatever is near
   */
  public MeasureSpot at(PointMm pointer, double pxPerMm, boolean exactly) {
    if (exactly) {
      return MeasureSpot.bare(pointer);
    }
    Snapping snapping = Snapping.at(pxPerMm, layout, now, outlines);
    Snapping.Snap snap = snapping.thing(pointer).orElseGet(() -> snapping.of(pointer));
    if (snap.pin().isPresent()) {
      return pin(snap.pin().get(), snap.to());
    }
    return point(pointer, snapping.reachMm())
        .orElseGet(
            () -> {
              if (snap.part().isPresent()) {
                return MeasureSpot.edge(snap.at(), snap.part().get());
              }
              PointMm road = ground.toRoad(pointer);
              return Math.abs(road.z()) <= snapping.reachMm() / 2
                  ? MeasureSpot.ground(ground.toFrame(new PointMm(road.x(), 0)))
                  : MeasureSpot.bare(snap.at());
            });
  }

  /** Returns a pin as something to measure from. */
  public MeasureSpot pin(String name) {
    return pin(name, "pin " + name);
  }

  private MeasureSpot pin(String name, String words) {
    return MeasureSpot.end(now.pin(name), End.pin(name), words);
  }

  private Optional<MeasureSpot> point(PointMm pointer, double reachMm) {
    MeasureSpot best = null;
    double least = reachMm;
    for (Part part : layout.parts().values()) {
      List<PointMm> points = points(part);
      for (int i = 0; i < points.size(); i++) {
        double d = points.get(i).distance(pointer);
        if (d <= least) {
          least = d;
          End end = End.point(part.name(), i);
          best = MeasureSpot.end(points.get(i), end, end.words());
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private List<PointMm> points(Part part) {
    if (!(part instanceof Part.Outlined outlined)) {
      return List.of();
    }
    Outline outline = outlined.outline();
    return Outlines.vertices(outlined.frame(), outline, now);
  }

  /** Returns where a spot is now; empty if what it was on is there no more. */
  public Optional<MeasureSpot> again(MeasureSpot spot) {
    if (spot.end().isEmpty()) {
      return spot.part().isEmpty() || outlines.containsKey(spot.part())
          ? Optional.of(spot)
          : Optional.empty();
    }
    End end = spot.end().get();
    PointMm at = null;
    if (!end.pin().isEmpty()) {
      at = now.pins().get(end.pin());
    } else if (layout.parts().containsKey(end.part())) {
      List<PointMm> points = points(layout.parts().get(end.part()));
      at = end.point().filter(i -> i < points.size()).map(points::get).orElse(null);
    }
    return Optional.ofNullable(at).map(p -> MeasureSpot.end(p, end, spot.words()));
  }
}
