package org.longlow.constraints.stand;

import java.util.List;
import org.longlow.constraints.machine.AxleLoads;
import org.longlow.constraints.machine.MassPoint;
import org.longlow.rider.geom.PointMm;

/**
 * Masses in a stance and what the axles carry.
 *
 * @param total all of it, in the axes of the frame
 * @param axles loads on the road, wheelbase and heights measured along the road
 */
public record Load(MassPoint total, AxleLoads axles) {

  /** Returns the load of {@code masses} on {@code ground}; null where there is no mass. */
  static Load of(List<MassPoint> masses, Ground ground) {
    if (masses.isEmpty()) {
      return null;
    }
    MassPoint total = MassPoint.total(masses);
    PointMm road = ground.toRoad(total.at());
    return new Load(
        total,
        AxleLoads.of(
            ground.wheelbaseMm(), List.of(new MassPoint(total.massKg(), road.x(), road.z()))));
  }
}
