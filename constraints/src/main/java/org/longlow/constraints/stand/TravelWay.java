package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ride.Suspension;

/**
 * A way of the wheels from full droop to full bump: both together, through the stances named on it,
 * or one of them while the other stays.
 *
 * @param stops what is on it, from full droop on; each in its own words
 * @param ends which wheels move
 */
public record TravelWay(List<Stop> stops, Ends ends) {

  /** Which wheels move. */
  public enum Ends {
    BOTH,
    FRONT,
    REAR
  }

  /**
   * A named stance on the way.
   *
   * @param share of the way from full droop, 0 to 1
   */
  public record Stop(String name, Travel travel, double share) {}

  /** A shorter way is none, mm. */
  private static final double LEAST_MM = 1e-6;

  public TravelWay {
    stops = List.copyOf(stops);
  }

  /**
   * Returns the way of the wheels.
   *
   * @param named the stances on it besides its ends, each with the springs in balance
   * @param still where the wheel is that does not move, if one does not
   */
  public static TravelWay of(Wheels wheels, List<Standing> named, Ends ends, Travel still) {
    Suspension f = wheels.frontSuspension();
    Suspension r = wheels.rearSuspension();
    Travel droop = new Travel(-f.droopMm(), -r.droopMm());
    Travel bump = new Travel(f.bumpMm(), r.bumpMm());
    List<Stop> stops = new ArrayList<>();
    stops.add(stop(says(Stance.Kind.FULL_DROOP), droop, droop, bump, ends, still));
    for (Standing standing : named) {
      stops.add(stop(standing.condition().says(), Travel.of(standing), droop, bump, ends, still));
    }
    stops.add(stop(says(Stance.Kind.FULL_BUMP), bump, droop, bump, ends, still));
    stops.sort(Comparator.comparingDouble(Stop::share));
    return new TravelWay(stops, ends);
  }

  private static String says(Stance.Kind kind) {
    return Condition.empty(kind).says();
  }

  private static Stop stop(
      String name, Travel travel, Travel droop, Travel bump, Ends ends, Travel still) {
    Travel there =
        switch (ends) {
          case BOTH -> travel;
          case FRONT -> new Travel(travel.frontMm(), still.rearMm());
          case REAR -> new Travel(still.frontMm(), travel.rearMm());
        };
    double all = along(bump, ends) - along(droop, ends);
    double share = all < LEAST_MM ? 0 : (along(there, ends) - along(droop, ends)) / all;
    return new Stop(name, there, Math.max(0, Math.min(1, share)));
  }

  /** Both together are as far as they are in the mean. */
  private static double along(Travel travel, Ends ends) {
    return switch (ends) {
      case BOTH -> (travel.frontMm() + travel.rearMm()) / 2;
      case FRONT -> travel.frontMm();
      case REAR -> travel.rearMm();
    };
  }

  private Travel first() {
    return stops.get(0).travel();
  }

  private Travel last() {
    return stops.get(stops.size() - 1).travel();
  }

  /** Returns how far it is from full droop to full bump, mm; both together in the mean. */
  public double lengthMm() {
    return along(last(), ends) - along(first(), ends);
  }

  /** Returns whether anything moves on it. */
  public boolean moves() {
    return lengthMm() >= LEAST_MM;
  }

  /** Returns where the wheels are at a share of the way, 0 full droop to 1 full bump. */
  public Travel at(double share) {
    int k = 1;
    while (k < stops.size() - 1 && stops.get(k).share() < share) {
      k++;
    }
    Stop before = stops.get(k - 1);
    Stop after = stops.get(k);
    double step = after.share() - before.share();
    return before.travel().towards(after.travel(), step > 0 ? (share - before.share()) / step : 1);
  }

  /** Returns the share of the way at which the wheels are as far as that, 0 to 1. */
  public double share(Travel travel) {
    double all = lengthMm();
    return all < LEAST_MM
        ? 0
        : Math.max(0, Math.min(1, (along(travel, ends) - along(first(), ends)) / all));
  }
}
