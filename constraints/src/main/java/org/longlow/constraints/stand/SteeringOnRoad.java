package org.longlow.constraints.stand;

import java.util.Optional;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.machine.chassis.Steering;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * The steering axis of a machine in a stance, on the road's axes.
 *
 * @param rakeRad how far the axis leans back from upright, rad
 * @param axle front axle
 * @param bottom lower point of the axis
 * @param radiusMm front tyre, mm
 */
public record SteeringOnRoad(double rakeRad, PointMm axle, PointMm bottom, double radiusMm) {

  /** Returns that of a machine; empty without a front system. */
  public static Optional<SteeringOnRoad> of(Wheels wheels, Places places, Ground ground) {
    FrontPart fork = wheels.fork();
    if (fork == null) {
      return Optional.empty();
    }
    PointMm top = ground.toRoad(places.pin(fork.top()));
    PointMm bottom = ground.toRoad(places.pin(fork.bottom()));
    PointMm axle = ground.toRoad(places.pin(fork.axle()));
    return Optional.of(
        new SteeringOnRoad(
            Steering.rakeRad(top, bottom), axle, bottom, wheels.frontTyre().freeRadiusMm()));
  }

  /** Whether {@link #steering} can be said: the axis does not lie flat. */
  public boolean upright() {
    return Steering.takes(rakeRad);
  }

  /** Returns trail, offset and flop. */
  public Steering steering() {
    return Steering.of(radiusMm, rakeRad, axle, bottom);
  }
}
