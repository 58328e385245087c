package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.rider.geom.PointMm;

/** Outlines put in place by their frames. */
public final class Outlines {

  private Outlines() {}

  /**
   * Returns the points of {@code outline} in the elevation, curves flattened to {@link
   * Curves#FLATNESS_MM}.
   */
  public static List<PointMm> points(LocalAxes frame, Outline outline, Places places) {
    List<PointMm> vertices = vertices(frame, outline, places);
    List<Boolean> smooth = outline.vertices().stream().map(Outline.Vertex::smooth).toList();
    return Curves.through(vertices, smooth, outline.closed());
  }

  /** Returns the vertices of {@code outline} in the elevation, in order. */
  public static List<PointMm> vertices(LocalAxes frame, Outline outline, Places places) {
    PointMm origin = places.pin(frame.origin());
    double turn = frame.angle().map(places::value).orElse(0.0);
    if (frame.along().isPresent()) {
      PointMm along = places.pin(frame.along().get()).minus(origin);
      turn += along.angleRad();
    }
    PointMm axis = PointMm.unit(turn);
    PointMm up = axis.left();
    List<PointMm> vertices = new ArrayList<>();
    for (Outline.Vertex v : outline.vertices()) {
      vertices.add(
          v.pin() != null
              ? places.pin(v.pin())
              : origin.plus(axis.times(places.value(v.x()))).plus(up.times(places.value(v.z()))));
    }
    return vertices;
  }

  /** Returns the area inside {@code outline}; an open one is closed by its chord. */
  public static Geometry area(LocalAxes frame, Outline outline, Places places) {
    return Curves.polygon(points(frame, outline, places));
  }
}
