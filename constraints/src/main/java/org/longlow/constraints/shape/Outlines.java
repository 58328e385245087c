package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Opening;
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
    return Curves.through(vertices(frame, outline, places), outline.smooth(), outline.closed());
  }

  /** Returns all vertices of {@code outline} in the elevation, in order; a half with its image. */
  public static List<PointMm> vertices(LocalAxes frame, Outline outline, Places places) {
    List<PointMm> written = Local.of(frame, places).places(outline.vertices());
    if (outline.count() == written.size()) {
      return written;
    }
    List<PointMm> vertices = new ArrayList<>(written);
    PointMm first = written.get(0);
    PointMm last = written.get(written.size() - 1);
    for (int i = written.size(); i < outline.count(); i++) {
      vertices.add(written.get(outline.written(i)).mirrored(first, last));
    }
    return vertices;
  }

  /**
   * Returns the area inside {@code outline} without its holes; an open one is closed by its chord.
   */
  public static Geometry area(LocalAxes frame, Outline outline, Places places) {
    return Holes.cutFrom(
        Curves.polygon(points(frame, outline, places)),
        Holes.of(frame, outline, places).stream().map(Holes.Placed::opening).toList());
  }

  /** Returns the area within an edge, holes left out of account; not mended where it crosses. */
  public static Polygon within(LocalAxes frame, Outline outline, Places places) {
    return Opening.polygon(points(frame, outline, places));
  }
}
