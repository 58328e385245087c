package org.longlow.constraints.check.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.WhippleParameters;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Inertia;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.SteeringOnRoad;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/**
 * A machine as the linear model of balance knows it: two wheels, what is steered, and all the rest
 * with its people, who are taken as rigid.
 */
final class SingleTrack {

  /**
   * Moment of inertia of a wheel about its axle over mass times free radius squared where the
   * layout does not say it: 0.6 to 0.8 are typical; from memory.
   */
  static final double SPREAD = 0.7;

  /**
   * That about a diameter, of the one about the axle: about half; from memory, exact for a ring.
   */
  private static final double ABOUT_DIAMETER = 0.5;

  private static final double M = 1e-3;

  private SingleTrack() {}

  /**
   * Returns the parameters of a machine in a stance; empty where there is no steering, or a wheel
   * or what is steered has no mass.
   */
  static Optional<WhippleParameters> of(Standing s, Wheels wheels) {
    if (wheels.fork() == null) {
      return Optional.empty();
    }
    Optional<Steered> steered = Steered.of(wheels.layout(), wheels.fork(), s.places());
    if (steered.isEmpty()) {
      return Optional.empty();
    }
    List<PartShape> ahead = new ArrayList<>();
    List<PartShape> behind = new ArrayList<>();
    for (PartShape shape : s.shapes().values()) {
      if (!(shape.part() instanceof WheelPart)) {
        (steered.get().turns(shape.part().name()) ? ahead : behind).add(shape);
      }
    }
    double frontKg = kg(s, wheels.front());
    double rearKg = kg(s, wheels.rear());
    List<MassPoint> turned = masses(ahead, Rider.NOBODY);
    List<MassPoint> rest = masses(behind, s.rider());
    SteeringOnRoad on = SteeringOnRoad.of(wheels, s.places(), s.ground()).orElseThrow();
    if (!(frontKg > 0 && rearKg > 0) || turned.isEmpty() || rest.isEmpty() || !on.upright()) {
      return Optional.empty();
    }
    return Optional.of(
        new WhippleParameters(
            M * s.ground().wheelbaseMm(),
            M * on.steering().groundTrailMm(),
            on.rakeRad(),
            Values.STANDARD_GRAVITY_MS2,
            wheel(wheels.rear(), rearKg, wheels.rearTyre().freeRadiusMm(), s.places()),
            body(behind, s.rider(), MassPoint.total(rest), s),
            body(ahead, Rider.NOBODY, MassPoint.total(turned), s),
            wheel(wheels.front(), frontKg, on.radiusMm(), s.places())));
  }

  private static double kg(Standing s, WheelPart wheel) {
    return s.shapes().get(wheel.name()).massKg();
  }

  private static List<MassPoint> masses(List<PartShape> shapes, Rider rider) {
    List<MassPoint> masses = new ArrayList<>(rider.masses());
    for (PartShape shape : shapes) {
      if (shape.massKg() > 0) {
        masses.add(new MassPoint(shape.massKg(), shape.centre(), shape.centreYMm()));
      }
    }
    return masses;
  }

  private static WhippleParameters.Wheel wheel(
      WheelPart wheel, double kg, double radiusMm, Places places) {
    double spread = wheel.spread().map(places::value).orElse(SPREAD);
    double r = M * radiusMm;
    double spin = spread * kg * r * r;
    return new WhippleParameters.Wheel(r, kg, ABOUT_DIAMETER * spin, spin);
  }

  private static WhippleParameters.Body body(
      List<PartShape> shapes, Rider rider, MassPoint total, Standing s) {
    Inertia in = Inertia.of(shapes, rider, total);
    PointMm at = s.ground().toRoad(total.at());
    // the road rises by this angle in the axes of the frame
    double a = s.ground().along().angleRad();
    double cos = Math.cos(a);
    double sin = Math.sin(a);
    double xx = (in.pitchKgM2() + in.yawKgM2() - in.rollKgM2()) / 2;
    double zz = (in.pitchKgM2() + in.rollKgM2() - in.yawKgM2()) / 2;
    double yy = (in.rollKgM2() + in.yawKgM2() - in.pitchKgM2()) / 2;
    double alongSquares = cos * cos * xx + 2 * sin * cos * in.productKgM2() + sin * sin * zz;
    double upSquares = sin * sin * xx - 2 * sin * cos * in.productKgM2() + cos * cos * zz;
    double product = (cos * cos - sin * sin) * in.productKgM2() + sin * cos * (zz - xx);
    return new WhippleParameters.Body(
        M * at.x(), -M * at.z(), total.massKg(), yy + upSquares, product, alongSquares + yy);
  }
}
