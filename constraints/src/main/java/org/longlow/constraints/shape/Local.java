package org.longlow.constraints.shape;

import java.util.List;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;

/**
 * Local axes in place.
 *
 * @param places of pins, and worth of measures
 * @param origin of the axes in the elevation
 * @param turnRad of the local x axis from that of the elevation, counter-clockwise
 */
public record Local(Places places, PointMm origin, double turnRad) {

  public static Local of(LocalAxes frame, Places places) {
    PointMm origin = places.pin(frame.origin());
    double turn = frame.angle().map(places::value).orElse(0.0);
    if (frame.along().isPresent()) {
      PointMm along = places.pin(frame.along().get()).minus(origin);
      turn += along.angleRad();
    }
    return new Local(places, origin, turn);
  }

  /** Returns where vertices are in the elevation. */
  public List<PointMm> places(List<Vertex> vertices) {
    PointMm axis = PointMm.unit(turnRad);
    PointMm up = axis.left();
    return vertices.stream()
        .map(
            v ->
                v.pin() != null
                    ? places.pin(v.pin())
                    : origin
                        .plus(axis.times(places.value(v.x())))
                        .plus(up.times(places.value(v.z()))))
        .toList();
  }

  /** Returns a place of the elevation in these axes. */
  public PointMm within(PointMm elevation) {
    return elevation.minus(origin).turned(-turnRad);
  }
}
