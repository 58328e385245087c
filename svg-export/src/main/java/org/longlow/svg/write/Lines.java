package org.longlow.svg.write;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;

/** Takes geometries apart into what both file formats draw. */
final class Lines {

  private Lines() {}

  /** Returns all lines and rings with at least one point, in order; points are left out. */
  static List<LineString> of(Geometry geometry) {
    List<LineString> out = new ArrayList<>();
    geometry.apply(
        (GeometryComponentFilter)
            part -> {
              if (part instanceof LineString line && !line.isEmpty()) {
                out.add(line);
              }
            });
    return out;
  }

  /**
   * Returns whether the line ends where it starts and encloses something, so that it is written as
   * closed.
   */
  static boolean isClosed(LineString line) {
    return line.getNumPoints() > 3 && line.isClosed();
  }
}
