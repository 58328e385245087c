package org.longlow.constraints.stand;

import java.util.Collection;
import java.util.List;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;

/**
 * Masses in a stance and what the axles carry.
 *
 * @param total all of it, in the axes of the frame, y to the left
 * @param axles loads on the road, wheelbase and heights measured along the road
 */
public record Load(MassPoint total, AxleLoads axles) {

  /** Returns the load of parts and people on {@code ground}; null where there is no mass. */
  public static Load of(Collection<PartShape> shapes, Rider rider, Ground ground) {
    List<MassPoint> masses = rider.masses();
    for (PartShape shape : shapes) {
      if (shape.massKg() > 0) {
        masses.add(new MassPoint(shape.massKg(), shape.centre(), shape.centreYMm()));
      }
    }
    if (masses.isEmpty()) {
      return null;
    }
    MassPoint total = MassPoint.total(masses);
    PointMm road = ground.toRoad(total.at());
    return new Load(
        total,
        new AxleLoads(ground.wheelbaseMm(), new MassPoint(total.massKg(), road, total.yMm())));
  }
}
