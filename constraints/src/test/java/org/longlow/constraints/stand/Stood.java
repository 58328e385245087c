package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** A machine of the tests put into all its stances, and whether its springs are in balance. */
final class Stood {

  final Layout layout;
  final Places places;
  final Map<String, PartShape> shapes;
  final Wheels wheels;
  final List<Standing> all;

  Stood(TestMachine machine, Rider... riders) {
    layout = machine.layout();
    places = Placer.place(layout).places();
    shapes = Shapes.of(layout, places);
    wheels = Wheels.of(layout, places);
    all = new Stances(wheels, shapes).all(List.of(riders));
  }

  Standing in(Stance.Kind kind) {
    return all.stream().filter(s -> s.kind() == kind).findFirst().orElseThrow();
  }

  List<String> says() {
    return all.stream().map(s -> s.condition().says()).toList();
  }

  /**
   * Holds that with the wheels at these travels each spring carries its load: moments about the
   * rear contact, of masses as drawn and of those that went with a wheel, give the wheel loads; the
   * sprung part of one, times a factor and the rise of its axle, is the spring's force.
   */
  void balanced(
      Standing s, Ground ground, double frontMm, double rearMm, double factor, double withinN) {
    Springs springs = s.springs().orElseThrow();
    Places now = wheels.moved(frontMm, rearMm);
    double[] sum = new double[2];
    add(sum, springs.sprung(), PointMm.ORIGIN, ground);
    add(sum, springs.atFront(), now.pin("frontAxle").minus(places.pin("frontAxle")), ground);
    add(sum, springs.atRear(), now.pin("rearAxle").minus(places.pin("rearAxle")), ground);
    double front = sum[1] / ground.wheelbaseMm();
    double rear = sum[0] - front;
    double frontKg = (front - kg(springs.atFront())) * factor;
    double rearKg = (rear - kg(springs.atRear())) * factor;
    carries(wheels.frontSuspension(), frontMm, ground, frontKg, withinN);
    carries(wheels.rearSuspension(), rearMm, ground, rearKg, withinN);
  }

  private static double kg(MassPoint.Sum masses) {
    return masses.massKg();
  }

  private static void add(double[] sum, MassPoint.Sum masses, PointMm shift, Ground ground) {
    PointMm at = masses.total().at().plus(shift);
    sum[0] += masses.massKg();
    sum[1] += masses.massKg() * ground.toRoad(at).x();
  }

  private static void carries(
      Suspension s, double travel, Ground ground, double kg, double withinN) {
    PointMm way = s.path().axle(travel + 1e-3).minus(s.path().axle(travel - 1e-3)).times(1 / 2e-3);
    double force = kg * 9.80665 * ground.along().cross(way);
    double spring = s.preloadN() + s.rateNPerMm() * (travel + s.droopMm());
    assertThat(travel).isBetween(-s.droopMm(), s.bumpMm());
    if (travel == -s.droopMm()) {
      assertThat(force).isLessThanOrEqualTo(spring);
    } else if (travel == s.bumpMm()) {
      assertThat(force).isGreaterThanOrEqualTo(spring);
    } else {
      assertThat(force).isCloseTo(spring, within(withinN));
    }
  }
}
