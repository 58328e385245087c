package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.longlow.constraints.check.PartialChecks;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Wheels;

/**
 * Least squares on the strays of all margins, along the ties of the layout.
 *
 * <p>Each step: a fresh {@link Gauge} at the present place, the directions in which the pins can
 * go, one measurement a little way along each, and a damped Gauss-Newton step (after Levenberg and
 * Marquardt) that must lower the sum. A first pass weighs failing findings so that the way round
 * them is found, a second so that they end up passing. Not for several threads.
 */
final class Search {

  /** How much more a failing finding counts than discomfort, in the first pass. */
  private static final double ROUGH_WEIGHT = 10;

  /** The same in the second pass, and where results are compared. */
  static final double FULL_WEIGHT = 80;

  /** How much more findings that need care count than wishes for shares and sight. */
  private static final double CARE = 3;

  private static final double PROBE_MM = 0.5;
  private static final double FARTHEST_LOOK_MM = 160;
  private static final double LONGEST_STEP_MM = 80;
  private static final double SHORTEST_STEP_MM = 0.05;

  /**
   * What is sought.
   *
   * @param who which of the crew count
   * @param comfortWeight weight of joint angles and other matters of care
   * @param near coordinates to stay near to, x, z, x, z ..., mm
   * @param nearMm so far from them counts as much as one spread of discomfort, mm
   */
  record Aim(Predicate<String> who, double comfortWeight, double[] near, double nearMm) {

    /** So far from the others' place counts as much as one spread, mm. */
    private static final double NEAR_MM = 150;

    /** Ease only breaks ties here. */
    private static final double COMFORT_WEIGHT = 1e-3;

    /** One person near a place. */
    static Aim of(String person, double[] near) {
      return new Aim(person::equals, COMFORT_WEIGHT, near, NEAR_MM);
    }

    /** The whole crew at ease, with the layout's own weight for comfort. */
    static Aim crew(LayoutProblem layout, double[] near) {
      double weight =
          layout.layout().wishes().values().stream()
              .filter(w -> w.kind() == Wish.Kind.COMFORT)
              .mapToDouble(Wish::weight)
              .max()
              .orElse(1);
      return new Aim(name -> true, weight, near, 1000);
    }

    double weighted(Reading r, double hardWeight) {
      double stray = r.stray(hardWeight);
      if (r.kind().hard()) {
        return stray;
      }
      return r.wished() ? stray : CARE * stray * Math.sqrt(comfortWeight);
    }
  }

  /**
   * A place that was measured.
   *
   * @param x values of all variables of the layout
   * @param at coordinates of the moved pins
   * @param readings margins there
   */
  record Trial(double[] x, double[] at, List<Reading> readings) {

    boolean passes(Set<String> excused) {
      return readings.stream().noneMatch(r -> r.fails() && !excused.contains(r.id()));
    }

    long fails() {
      return readings.stream().filter(Reading::fails).count();
    }
  }

  private final Mover mover;
  private final Aim aim;
  private final PartialChecks checks;
  private final Set<String> company;
  private int allowed = Integer.MAX_VALUE;
  private int measured;

  /**
   * @param from values of all variables near which the search runs
   */
  Search(Mover mover, Aim aim, double[] from) {
    this.mover = mover;
    this.aim = aim;
    Layout layout = mover.layout().layout();
    Places places = mover.layout().places(from);
    company = mover.company(from);
    checks = new PartialChecks(layout, Wheels.of(layout, places), places);
  }

  /** Returns this search, which from now on measures no more than so many places. */
  Search within(int places) {
    allowed = places;
    measured = 0;
    return this;
  }

  /** Whether it stopped because no more places may be measured. */
  boolean isSpent() {
    return measured >= allowed;
  }

  /** How many places it has measured. */
  int measured() {
    return measured;
  }

  /** Returns the margins at {@code x}, all measured anew. */
  Trial measure(double[] x) {
    return trial(gauge(x), x);
  }

  private Gauge gauge(double[] x) {
    return new Gauge(mover.layout().layout(), mover.layout().places(x), company, aim.who, checks);
  }

  private Trial trial(Gauge gauge, double[] x) {
    measured++;
    return new Trial(x, mover.at(x), gauge.at(mover.layout().places(x)));
  }

  private double merit(Trial trial, double hardWeight) {
    return merit(trial, aim, hardWeight);
  }

  /** Returns the sum of squares that is made least. */
  static double merit(Trial trial, Aim aim, double hardWeight) {
    double sum = 0;
    for (Reading r : trial.readings()) {
      double stray = aim.weighted(r, hardWeight);
      sum += stray * stray;
    }
    for (int k = 0; k < trial.at().length; k++) {
      double d = (trial.at()[k] - aim.near[k]) / aim.nearMm;
      sum += d * d;
    }
    return sum;
  }

  /**
   * Returns the best place found from {@code start}.
   *
   * @param start values of all variables, where ties and limits hold
   */
  Trial run(double[] start, int steps) {
    return finish(rough(start, steps), steps);
  }

  /** The first pass: past failing findings to a good place. */
  Trial rough(double[] start, int steps) {
    return measure(descend(start, ROUGH_WEIGHT, steps));
  }

  /** The second pass: from a good place to where findings pass. */
  Trial finish(Trial from, int steps) {
    Trial end = measure(descend(from.x(), FULL_WEIGHT, steps));
    if (end.fails() > 0) {
      end = measure(descend(compass(end.x()), FULL_WEIGHT, steps));
    }
    return end;
  }

  private double[] descend(double[] start, double weight, int steps) {
    double[] x = start;
    double damping = 1e-3;
    for (int k = 0; k < steps && !isSpent(); k++) {
      Gauge gauge = gauge(x);
      Trial now = trial(gauge, x);
      double before = merit(now, weight);
      double[][] ways = mover.directions(x);
      if (ways.length == 0) {
        return x;
      }
      Slopes slopes = slopes(gauge, now, ways, weight);
      Trial better = null;
      double longest = 0;
      for (int tries = 0; tries < 7 && better == null; tries++) {
        double[] step = DampedStep.of(slopes.rows(), slopes.residuals(), damping);
        longest = clamp(step);
        if (longest < SHORTEST_STEP_MM) {
          break;
        }
        Trial trial = go(gauge, now, ways, step).orElse(null);
        if (trial != null && merit(trial, weight) < before - 1e-9) {
          better = trial;
          damping = Math.max(1e-6, damping / 5);
        } else {
          damping = Math.max(1e-3, damping * 8);
        }
      }
      if (better == null) {
        return x;
      }
      x = better.x();
      if (longest < SHORTEST_STEP_MM || before - merit(better, weight) < 1e-4 * before) {
        return x;
      }
    }
    return x;
  }

  /**
   * Residuals at a place and how they change.
   *
   * @param residuals strays, then the distances from the place to stay near to
   * @param rows for each residual its change per mm along each direction
   */
  private record Slopes(double[] residuals, double[][] rows) {}

  private Slopes slopes(Gauge gauge, Trial now, double[][] ways, double weight) {
    List<Trial> probes = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    for (double[] way : ways) {
      double length = PROBE_MM;
      Trial probe = go(gauge, now, new double[][] {way}, new double[] {length}).orElse(null);
      if (probe == null || still(probe, now)) {
        length = -PROBE_MM; // against a limit: look the other way
        probe = go(gauge, now, new double[][] {way}, new double[] {length}).orElse(null);
      }
      probes.add(probe == null ? now : probe);
      lengths.add(length);
    }
    Set<String> names = new LinkedHashSet<>();
    now.readings().forEach(r -> names.add(r.id()));
    probes.forEach(p -> p.readings().forEach(r -> names.add(r.id())));
    List<String> ids = List.copyOf(names);
    double[] here = residuals(now, ids, weight);
    double[][] slopes = new double[here.length][ways.length];
    for (int c = 0; c < ways.length; c++) {
      double[] there = residuals(probes.get(c), ids, weight);
      for (int r = 0; r < here.length; r++) {
        slopes[r][c] = (there[r] - here[r]) / lengths.get(c);
      }
    }
    return new Slopes(here, slopes);
  }

  private static boolean still(Trial probe, Trial now) {
    double moved = 0;
    for (int k = 0; k < now.at().length; k++) {
      moved = Math.max(moved, Math.abs(probe.at()[k] - now.at()[k]));
    }
    return moved < 0.1 * PROBE_MM;
  }

  private double[] residuals(Trial trial, List<String> names, double weight) {
    Map<String, Double> strays = new LinkedHashMap<>();
    trial.readings().forEach(r -> strays.merge(r.id(), aim.weighted(r, weight), Math::max));
    double[] out = new double[names.size() + trial.at().length];
    for (int i = 0; i < names.size(); i++) {
      out[i] = strays.getOrDefault(names.get(i), 0.0);
    }
    for (int k = 0; k < trial.at().length; k++) {
      out[names.size() + k] = (trial.at()[k] - aim.near[k]) / aim.nearMm;
    }
    return out;
  }

  private static double clamp(double[] step) {
    double length = 0;
    for (double s : step) {
      length += s * s;
    }
    length = Math.sqrt(length);
    if (length > LONGEST_STEP_MM) {
      for (int i = 0; i < step.length; i++) {
        step[i] *= LONGEST_STEP_MM / length;
      }
    }
    return length;
  }

  private Optional<Trial> go(Gauge gauge, Trial from, double[][] ways, double[] step) {
    double[] target = from.at().clone();
    for (int c = 0; c < ways.length; c++) {
      for (int k = 0; k < target.length; k++) {
        target[k] += step[c] * ways[c][k];
      }
    }
    return mover.to(from.x(), target).map(x -> trial(gauge, x));
  }

  /** Looks far, then nearer, along each direction where steps on slopes got stuck at a kink. */
  private double[] compass(double[] start) {
    double[] x = start;
    for (double reach = FARTHEST_LOOK_MM; reach >= 2 && !isSpent(); reach /= 2) {
      Gauge gauge = gauge(x);
      Trial best = trial(gauge, x);
      double merit = merit(best, FULL_WEIGHT);
      for (double[] way : mover.directions(x)) {
        for (double sign : new double[] {1, -1}) {
          Trial trial =
              go(gauge, best, new double[][] {way}, new double[] {sign * reach}).orElse(null);
          if (trial != null && merit(trial, FULL_WEIGHT) < merit) {
            best = trial;
            merit = merit(trial, FULL_WEIGHT);
          }
        }
      }
      x = best.x();
    }
    return x;
  }
}
