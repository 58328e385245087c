package org.longlow.sketcher.edit;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
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
 * axle, the ground, else the next point of a grid. The nearest of them is meant, and a pin before
 * the lines that run through it; lines draw it from half as far as pins, for they are everywhere.
 *
 * @param outlines of the parts, by name
 * @param reachMm how near to a pin is near, mm &gt; 0
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

  private static final double REACH_PX = 8;

  /** A pin so near to a line lies on it, mm. */
  private static final double ON_LINE_MM = 1e-3;

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

  /** Returns the pin or edge that a pointer means, whatever lines of axles run there too. */
  Optional<Snap> thing(PointMm pointer) {
    Optional<Snap> edge = edge(pointer);
    double toEdge = edge.map(e -> e.at().distance(pointer)).orElse(Double.POSITIVE_INFINITY);
    return pin(pointer)
        .filter(p -> p.at().distance(pointer) <= toEdge || isOnEdge(p.at(), edge.get()))
        .or(() -> edge);
  }

  /** Returns what a pointer means. */
  public Snap of(PointMm pointer) {
    Optional<Snap> pin = pin(pointer);
    Optional<Snap> edge = edge(pointer);
    Snap level = level(pointer);
    double toLevel = Math.min(off(pointer, level, true), off(pointer, level, false));
    double toEdge = edge.map(e -> e.at().distance(pointer)).orElse(Double.POSITIVE_INFINITY);
    Snap line = toEdge <= toLevel ? edge.orElse(level) : level;
    return pin.filter(
            p ->
                p.at().distance(pointer) <= Math.min(toEdge, toLevel)
                    || (line == level ? isOnLevel(p.at(), line) : isOnEdge(p.at(), line)))
        .orElse(line);
  }

  /** How far from the pointer an axle or the ground drew a coordinate; infinite for the grid. */
  private double off(PointMm pointer, Snap level, boolean x) {
    if (x) {
      return upright(pointer).isPresent()
          ? Math.abs(level.at().x() - pointer.x())
          : Double.POSITIVE_INFINITY;
    }
    return isGround(pointer) || height(pointer).isPresent()
        ? Math.abs(level.at().z() - pointer.z())
        : Double.POSITIVE_INFINITY;
  }

  private boolean isOnLevel(PointMm pin, Snap level) {
    return Math.abs(pin.x() - level.at().x()) <= ON_LINE_MM
        || Math.abs(pin.z() - level.at().z()) <= ON_LINE_MM;
  }

  private boolean isOnEdge(PointMm pin, Snap edge) {
    Geometry outline = outlines.get(edge.part().orElseThrow());
    Point point = outline.getFactory().createPoint(new Coordinate(pin.x(), pin.z()));
    return boundary(outline).isWithinDistance(point, ON_LINE_MM);
  }

  /** How near to a line is near, mm. */
  private double lineMm() {
    return reachMm / 2;
  }

  private static Geometry boundary(Geometry outline) {
    return outline.getDimension() == 2 ? outline.getBoundary() : outline;
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
    double least = lineMm();
    for (Map.Entry<String, Geometry> part : outlines.entrySet()) {
      Geometry outline = part.getValue();
      Point point = outline.getFactory().createPoint(new Coordinate(pointer.x(), pointer.z()));
      if (outline.isEmpty() || !outline.isWithinDistance(point, lineMm())) {
        continue;
      }
      Coordinate near = DistanceOp.nearestPoints(boundary(outline), point)[0];
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
  private Snap level(PointMm pointer) {
    Optional<WheelPart> plumb = upright(pointer);
    Optional<WheelPart> level = isGround(pointer) ? Optional.empty() : height(pointer);
    PointMm at =
        new PointMm(
            plumb.map(w -> axle(w).x()).orElse(grid(pointer.x())),
            isGround(pointer) ? 0 : level.map(w -> axle(w).z()).orElse(grid(pointer.z())));
    String up = plumb.map(w -> "plumb with axle of " + w.name()).orElse("");
    String along =
        isGround(pointer)
            ? "on the ground"
            : level.map(w -> "level with axle of " + w.name()).orElse("");
    String words = up + (up.isEmpty() || along.isEmpty() ? "" : ", ") + along;
    return new Snap(at, Optional.empty(), Optional.empty(), words);
  }

  private boolean isGround(PointMm pointer) {
    return Math.abs(pointer.z()) <= lineMm();
  }

  private Optional<WheelPart> upright(PointMm pointer) {
    return nearest(w -> Math.abs(axle(w).x() - pointer.x()));
  }

  private Optional<WheelPart> height(PointMm pointer) {
    return nearest(w -> Math.abs(axle(w).z() - pointer.z()));
  }

  private Optional<WheelPart> nearest(ToDoubleFunction<WheelPart> off) {
    return axles()
        .filter(w -> off.applyAsDouble(w) <= lineMm())
        .min(Comparator.comparingDouble(off));
  }

  private PointMm axle(WheelPart wheel) {
    return places.pin(wheel.axle());
  }

  private double grid(double mm) {
    return gridMm * Math.rint(mm / gridMm);
  }
}
