package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.longlow.constraints.layout.Shock;
import org.longlow.constraints.machine.linkage.RockerLink;
import org.longlow.constraints.machine.ride.WheelPath;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * How the pins of a shock and of its rocker go as the rear wheel goes up and down.
 *
 * @param shock said in full
 * @param drawn places as drawn
 * @param goesWithArm whether a pin is fixed to the arm
 * @param path of the rear axle
 */
public record ShockTravel(
    Shock shock, Places drawn, Predicate<String> goesWithArm, WheelPath path) {

  /** Travel over which a slope is taken, mm. */
  private static final double SLOPE_MM = 0.01;

  /** Steps of travel between which forces are taken as straight. */
  private static final int STEPS = 48;

  /** A spring that is less at the wheel carries nobody, N/mm. */
  private static final double LEAST_RATE = 0.05;

  /** Returns that of an arm's shock; empty where nothing is said of it. */
  static Optional<ShockTravel> of(
      Shock shock, Places drawn, Predicate<String> goesWithArm, WheelPath path) {
    return shock.foot().isEmpty()
        ? Optional.empty()
        : Optional.of(new ShockTravel(shock, drawn, goesWithArm, path));
  }

  /** Returns the rocker; empty where it cannot turn: one end of its loop goes with the arm. */
  private Optional<RockerLink> link() {
    return shock
        .loop()
        .filter(r -> goesWithArm.test(r.pivot()) != goesWithArm.test(r.end()))
        .filter(r -> RockerLink.turns(drawn.pin(r.pivot()), drawn.pin(r.rod()), drawn.pin(r.end())))
        .map(r -> new RockerLink(drawn.pin(r.pivot()), drawn.pin(r.rod()), drawn.pin(r.end())));
  }

  /** Returns whether it has no rocker, or one that turns as it is drawn. */
  public boolean turns() {
    return shock.loop().isEmpty() || link().isPresent();
  }

  /** Returns the pins that go with the rocker; none where it has none that turns. */
  List<String> onRocker() {
    return link().isEmpty()
        ? List.of()
        : List.of(shock.loop().orElseThrow().rod(), shock.foot().orElseThrow());
  }

  /** Returns where a pin is with the rear wheel so far up. */
  public PointMm pin(String name, double travelMm) {
    PointMm there = drawn.pin(name);
    Optional<RockerLink> link = link();
    if (link.isPresent() && travelMm != 0 && onRocker().contains(name)) {
      Shock.Loop r = shock.loop().orElseThrow();
      return link.get().motion(onArm(r.pivot(), travelMm), onArm(r.end(), travelMm)).apply(there);
    }
    return onArm(name, travelMm);
  }

  private PointMm onArm(String name, double travelMm) {
    PointMm there = drawn.pin(name);
    return goesWithArm.test(name) ? path.carried(there, travelMm) : there;
  }

  /** Returns whether rod and rocker meet with the rear wheel so far up. */
  public boolean reaches(double travelMm) {
    Optional<RockerLink> link = link();
    return link.isEmpty()
        || link.get()
            .reaches(
                onArm(shock.loop().orElseThrow().pivot(), travelMm),
                onArm(shock.loop().orElseThrow().end(), travelMm));
  }

  /** Returns how long it is, pin to pin, mm. */
  public double lengthMm(double travelMm) {
    return pin(shock.foot().orElseThrow(), travelMm)
        .distance(pin(shock.top().orElseThrow(), travelMm));
  }

  /** Returns by how much it closes for each mm that the axle goes up along its way. */
  public double ratio(double travelMm) {
    return (lengthMm(travelMm - SLOPE_MM) - lengthMm(travelMm + SLOPE_MM)) / (2 * SLOPE_MM);
  }

  /**
   * Returns what its spring presses with along the way of the axle, at equal steps from full droop
   * to full bump, N: by virtual work its force times its ratio there. Empty where that does not
   * rise all the way, so that nobody can say where the wheel rests.
   *
   * @param preloadN at the wheel at full droop
   */
  Optional<List<Double>> forcesN(double droopMm, double bumpMm, double preloadN) {
    double rate = drawn.value(shock.spring().orElseThrow());
    double hung = lengthMm(-droopMm);
    double first = ratio(-droopMm);
    List<Double> forces = new ArrayList<>();
    for (int k = 0; k <= STEPS; k++) {
      double travel = -droopMm + k * (droopMm + bumpMm) / STEPS;
      double ratio = ratio(travel);
      double force = (preloadN / first + rate * (hung - lengthMm(travel))) * ratio;
      double least = k == 0 ? 0 : forces.get(k - 1) + LEAST_RATE * (droopMm + bumpMm) / STEPS;
      if (!(ratio > 0 && force >= least && reaches(travel))) {
        return Optional.empty();
      }
      forces.add(force);
    }
    return Optional.of(forces);
  }
}
