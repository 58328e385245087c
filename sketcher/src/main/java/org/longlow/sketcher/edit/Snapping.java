package org.longlow.sketcher.edit;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;

/**
 * Where a pointer means when it is near something: a pin, an edge, the height or the upright of an
 * axle, the ground, else the next point of a grid.
 *
 * @param outlines of the parts, by name
 * @param reachMm how near is near, mm &gt; 0
 * @param gridMm spacing of the grid, mm &gt; 0
 */
public record Snapping(
    Layout layout, Places places, Map<String, Geometry> outlines, double reachMm, double gridMm) {

  /** Grids to choose from, mm. */
  private static final double FINE_MM = 5;

  /** Grids to choose from where inches are shown. */
  private static final double FINE_IN = 0.25;

  /** Points of a grid closer than this can hardly be told apart. */
  private static final double CLOSEST_PX = 4;

  private static final double REACH_PX = 9;

  /**
   * Where that is.
   *
   * @param pin the pin there, if there is one
   * @param part the part whose edge is there, if it is one
   * @param to what it is near to, in words; empty for the grid
   */
  public record Snap(PointMm at, Optional<String> pin, Optional<String> part, String to) {

    /** Says it beside the pointer. */
    public String words(Units units) {
      String place = PointWords.place(at, units);
      return to.isEmpty() ? place : to + "  " + place;
    }

    public PinSpot spot() {
      return new PinSpot(at, pin);
    }
  }

  /** Returns what suits the scale at which somebody points. */
  public static Snapping at(
      double pxPerMm, Layout layout, Places places, Map<String, Geometry> outlines) {
    double fine = layout.units() == Units.IN ? FINE_IN * Units.INCH_MM : FINE_MM;
    double grid = fine * pxPerMm >= CLOSEST_PX ? fine : 2 * fine;
    return new Snapping(layout, places, outlines, REACH_PX / pxPerMm, grid);
  }

  /** Returns a place as it is, near to nothing. */
  public static Snap exact(PointMm at) {
    return new Snap(at, Optional.empty(), Optional.empty(), "");
  }

  public Snap of(PointMm pointer) {
    return pin(pointer)
        .or(() -> edge(pointer))
        .orElseGet(
            () ->
                new Snap(level(pointer), Optional.empty(), Optional.empty(), levelWords(pointer)));
  }

  private Optional<Snap> pin(PointMm pointer) {
    String best = null;
    double least = reachMm;
    for (Map.Entry<String, PointMm> pin : places.pins().entrySet()) {
      double d = pin.getValue().distance(pointer);
      if (d <= least) {
        least = d;
        best = pin.getKey();
      }
    }
    return Optional.ofNullable(best)
        .map(p -> new Snap(places.pin(p), Optional.of(p), Optional.empty(), words(p)));
  }

  private String words(String pin) {
    return axles()
        .filter(w -> w.axle().equals(pin))
        .findFirst()
        .map(w -> "axle of " + w.name())
        .orElse("pin " + pin);
  }

  private Stream<WheelPart> axles() {
    return layout.parts(WheelPart.class);
  }

  private Optional<Snap> edge(PointMm pointer) {
    Snap best = null;
    double least = reachMm;
    for (Map.Entry<String, Geometry> part : outlines.entrySet()) {
      Geometry outline = part.getValue();
      Point point = outline.getFactory().createPoint(new Coordinate(pointer.x(), pointer.z()));
      if (outline.isEmpty() || !outline.isWithinDistance(point, reachMm)) {
        continue;
      }
      Geometry boundary = outline.getDimension() == 2 ? outline.getBoundary() : outline;
      Coordinate near = DistanceOp.nearestPoints(boundary, point)[0];
      double d = near.distance(point.getCoordinate());
      if (d <= least) {
        least = d;
        best =
            new Snap(
                new PointMm(near.x, near.y),
                Optional.empty(),
                Optional.of(part.getKey()),
                "edge of " + part.getKey());
      }
    }
    return Optional.ofNullable(best);
  }

  /** Each coordinate goes to an axle or the ground if that is near, else to the grid. */
  private PointMm level(PointMm pointer) {
    return new PointMm(
        upright(pointer).map(w -> axle(w).x()).orElse(grid(pointer.x())),
        Math.abs(pointer.z()) <= reachMm
            ? 0
            : height(pointer).map(w -> axle(w).z()).orElse(grid(pointer.z())));
  }

  private String levelWords(PointMm pointer) {
    String up = upright(pointer).map(w -> "plumb with axle of " + w.name()).orElse("");
    String along =
        Math.abs(pointer.z()) <= reachMm
            ? "on the ground"
            : height(pointer).map(w -> "level with axle of " + w.name()).orElse("");
    return up + (up.isEmpty() || along.isEmpty() ? "" : ", ") + along;
  }

  private Optional<WheelPart> upright(PointMm pointer) {
    return axles().filter(w -> Math.abs(axle(w).x() - pointer.x()) <= reachMm).findFirst();
  }

  private Optional<WheelPart> height(PointMm pointer) {
    return axles().filter(w -> Math.abs(axle(w).z() - pointer.z()) <= reachMm).findFirst();
  }

  private PointMm axle(WheelPart wheel) {
    return places.pin(wheel.axle());
  }

  private double grid(double mm) {
    return gridMm * Math.rint(mm / gridMm);
  }
}
