package org.longlow.constraints.suit;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Draws the places that people pass at nearer to each other, by ways along which they still do. */
final class Nearing {

  /** As often as each is drawn to the others in turn. */
  static final int ROUNDS = 4;

  /** A round that brings less is the last; a thing that travels less stays, mm. */
  static final double STILL_MM = 0.5;

  /** How finely the last way towards each other is tried, as a share of it. */
  private static final double NEARER = 1.0 / 512;

  /** The last way round: its longest steps, how many of each length, and in how many directions. */
  private static final double LONGEST_STEP_MM = 40;

  private static final int STEPS_OF_A_LENGTH = 8;
  private static final int DIRECTIONS = 12;

  private final Mover mover;
  private final double[] shared;
  private final int allowed;
  private int measured;

  /**
   * @param shared the place from which everything is moved
   * @param allowed how many places may be measured for each person and round
   */
  Nearing(Mover mover, double[] shared, int allowed) {
    this.mover = mover;
    this.shared = shared;
    this.allowed = allowed;
  }

  /** Returns how many places were measured. */
  int measured() {
    return measured;
  }

  /** Draws each place nearer to the others, in turns, until that brings nothing more. */
  void draw(Map<String, Search.Trial> places) {
    double apart = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS && apart(places) < apart - STILL_MM; round++) {
      apart = apart(places);
      for (String person : List.copyOf(places.keySet())) {
        double[] others = middleOfOthers(person, places);
        Search search = new Search(mover, Search.Aim.of(person, others), shared).within(allowed);
        Search.Trial straight = drawnIn(places.get(person), others, mover, search);
        places.put(person, roundTo(straight, others, mover, search));
        measured += search.measured();
      }
    }
  }

  static double[] middleOfOthers(String person, Map<String, Search.Trial> places) {
    double[] sum = null;
    for (Map.Entry<String, Search.Trial> e : places.entrySet()) {
      if (!e.getKey().equals(person)) {
        double[] at = e.getValue().at();
        if (sum == null) {
          sum = new double[at.length];
        }
        for (int k = 0; k < at.length; k++) {
          sum[k] += at[k] / (places.size() - 1);
        }
      }
    }
    return sum;
  }

  static double apart(Map<String, Search.Trial> places) {
    double most = 0;
    for (Search.Trial a : places.values()) {
      for (Search.Trial b : places.values()) {
        most = Math.max(most, farthest(a.at(), b.at()));
      }
    }
    return most;
  }

  /**
   * A place as far along the straight way to the others' as one passes; searches stop short of it.
   */
  private static Search.Trial drawnIn(
      Search.Trial place, double[] others, Mover mover, Search search) {
    Set<String> excused = excusedAt(place);
    Search.Trial best = place;
    double passed = 0;
    double failed = 1;
    while (failed - passed > NEARER) {
      double share = (passed + failed) / 2;
      double[] target = place.at().clone();
      for (int k = 0; k < target.length; k++) {
        target[k] += share * (others[k] - target[k]);
      }
      Optional<Search.Trial> there = mover.to(place.x(), target).map(search::measure);
      if (there.isPresent() && there.get().passes(excused)) {
        best = there.get();
        passed = share;
      } else {
        failed = share;
      }
    }
    return best;
  }

  /**
   * A place nearer to the others' by short steps of one pin, in whatever direction helps: the
   * straight way may be barred, by a limit that a pin lies on too, where a way round is not.
   */
  private static Search.Trial roundTo(
      Search.Trial place, double[] others, Mover mover, Search search) {
    Set<String> excused = excusedAt(place);
    Search.Trial best = place;
    for (double step = LONGEST_STEP_MM; step >= STILL_MM; step /= 2) {
      for (int tries = 0; tries < STEPS_OF_A_LENGTH; tries++) {
        Optional<Search.Trial> next = aStep(best, others, step, excused, mover, search);
        if (next.isEmpty()) {
          break;
        }
        best = next.get();
      }
    }
    return best;
  }

  private static Optional<Search.Trial> aStep(
      Search.Trial from,
      double[] others,
      double mm,
      Set<String> excused,
      Mover mover,
      Search search) {
    for (int pin = 0; pin < from.at().length; pin += 2) {
      for (int direction = 0; direction < DIRECTIONS; direction++) {
        double turn = 2 * Math.PI * direction / DIRECTIONS;
        double[] target = from.at().clone();
        target[pin] += mm * Math.cos(turn);
        target[pin + 1] += mm * Math.sin(turn);
        if (farthest(target, others) >= farthest(from.at(), others)) {
          continue;
        }
        Optional<Search.Trial> there =
            mover
                .to(from.x(), target)
                .map(search::measure)
                .filter(t -> t.passes(excused))
                .filter(t -> farthest(t.at(), others) < farthest(from.at(), others));
        if (there.isPresent()) {
          return there;
        }
      }
    }
    return Optional.empty();
  }

  private static Set<String> excusedAt(Search.Trial place) {
    Set<String> ids = new HashSet<>();
    place.readings().stream().filter(Reading::fails).forEach(r -> ids.add(r.id()));
    return ids;
  }

  /** Returns the longest way between pins of two places, mm. */
  static double farthest(double[] a, double[] b) {
    double most = 0;
    for (int k = 0; k + 1 < a.length; k += 2) {
      most = Math.max(most, Math.hypot(a[k] - b[k], a[k + 1] - b[k + 1]));
    }
    return most;
  }
}
