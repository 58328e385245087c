package org.longlow.constraints.machine.section;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.longlow.constraints.machine.linkage.MotionRate;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.rider.geom.Bracket;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.SeatLoad;

/**
 * Forces on a section by its weight and by what helps it, balanced by a hand. Hinges and links have
 * no friction; nothing is fast.
 *
 * <p>Each force is worth its part along the way that its point goes, so that what hinges and links
 * carry does not count.
 *
 * @param motion of the section
 * @param massKg of all that moves
 * @param centre of that mass, shut
 * @param down direction of gravity, a unit vector
 */
public record SectionForces(
    SectionMotion motion,
    double massKg,
    PointMm centre,
    PointMm down,
    List<Gas> springs,
    List<Weight> weights) {

  /** Places of the way that are looked at; what happens between two is smooth. */
  private static final int STEPS = 48;

  /** Shares of the way are told to so much. */
  private static final double SHARE = 1e-6;

  /** A point that moves no farther than this over the whole way gives no hold, mm. */
  private static final double LEAST_WAY_MM = 1e-6;

  /**
   * Gas springs in place.
   *
   * @param on where the end that moves is, shut
   */
  public record Gas(PointMm frame, PointMm on, GasLaw law) {}

  /**
   * A counterweight in place.
   *
   * @param on where it hangs on the section, shut
   * @param pulley over which it hangs down, if it is on a cord
   */
  public record Weight(PointMm on, Optional<PointMm> pulley, double massKg) {}

  /**
   * Most of something over a way.
   *
   * @param value N
   * @param opening where
   */
  public record Most(double value, double opening) {}

  public SectionForces {
    springs = List.copyOf(springs);
    weights = List.copyOf(weights);
  }

  /**
   * Returns the force that opens it, times the way of its point: N mm for all the way; negative
   * where it falls shut.
   *
   * @param opening 0 shut to 1 open
   * @param share of their force at 20 °C that gas springs have
   */
  public double opening(double opening, double share) {
    MotionRate rate = motion.rate(opening);
    RigidMotion to = motion.at(opening);
    double sum = weigh(massKg, rate.of(to.apply(centre)));
    for (Gas gas : springs) {
      PointMm end = to.apply(gas.on());
      PointMm along = end.minus(gas.frame());
      double length = along.length();
      if (length > LEAST_WAY_MM) {
        sum += share * gas.law().pushN(length) * along.dot(rate.of(end)) / length;
      }
    }
    for (Weight weight : weights) {
      PointMm at = to.apply(weight.on());
      PointMm way = rate.of(at);
      PointMm cord = weight.pulley().map(p -> p.minus(at)).orElse(PointMm.ORIGIN);
      double length = cord.length();
      if (weight.pulley().isEmpty()) {
        sum += weigh(weight.massKg(), way);
      } else if (length > LEAST_WAY_MM) {
        sum += weight.massKg() * SeatLoad.GRAVITY * cord.dot(way) / length;
      }
    }
    return sum;
  }

  private double weigh(double kg, PointMm way) {
    return kg * SeatLoad.GRAVITY * down.dot(way);
  }

  /**
   * Returns the force of a hand, along the way of its grip, that moves it: N, positive where it
   * must be opened by force, negative where it must be held back; NaN where the grip stands still.
   *
   * @param grip where the hand is, shut
   */
  public double handN(double opening, double share, PointMm grip) {
    double way = motion.rate(opening).of(motion.at(opening).apply(grip)).length();
    return way > LEAST_WAY_MM ? -opening(opening, share) / way : Double.NaN;
  }

  /** Returns the most that a hand must open it with, up to {@code to}. */
  public Most mostToOpen(double to, double share, PointMm grip) {
    return most(to, s -> handN(s, share, grip));
  }

  /** Returns the most that a hand must shut it with, from {@code to}. */
  public Most mostToShut(double to, double share, PointMm grip) {
    return most(to, s -> -handN(s, share, grip));
  }

  private static Most most(double to, DoubleUnaryOperator force) {
    Most most = new Most(Double.NaN, 0);
    for (int k = 0; k <= STEPS; k++) {
      double at = to * k / STEPS;
      double value = force.applyAsDouble(at);
      if (Double.isFinite(value) && !(value <= most.value())) {
        most = new Most(value, at);
      }
    }
    return most;
  }

  /**
   * Returns from which opening on it goes on by itself up to {@code to}; empty where it does not
   * end so. 0 where it opens all the way.
   */
  public Optional<Double> turnsOver(double to, double share) {
    if (!(opening(to, share) > 0)) {
      return Optional.empty();
    }
    for (int k = STEPS - 1; k >= 0; k--) {
      double low = to * k / STEPS;
      if (!(opening(low, share) > 0)) {
        return Optional.of(Bracket.root(s -> opening(s, share), low, to * (k + 1) / STEPS, SHARE));
      }
    }
    return Optional.of(0.0);
  }
}
