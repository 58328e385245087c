package org.longlow.constraints.mend;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a finding goes with one dial: the side on which it gets better, how quickly, and the fewest
 * steps that mend it. Not for several threads.
 */
final class Along {

  /** So many guesses along the slope before it is given up. */
  private static final int GUESSES = 6;

  /** A guess goes this much farther than the slope says, so that the second is seldom needed. */
  private static final double FARTHER = 1.1;

  /** Where nothing tells the way, these shares of the whole travel are tried to both sides. */
  private static final double[] FAR = {0.05, 0.15, 0.4};

  private final Dial dial;
  private final Trying trying;
  private final double start;
  private final Map<Integer, Outcome> seen = new HashMap<>();
  private int unmet;
  private int met;
  private double slope;

  /**
   * @param start margin of the finding as it is, NaN where it has none or lacks none
   */
  Along(Dial dial, Trying trying, double start) {
    this.dial = dial;
    this.trying = trying;
    this.start = start;
  }

  Dial dial() {
    return dial;
  }

  private Outcome at(int steps) {
    return seen.computeIfAbsent(
        steps, n -> dial.turned(n).map(trying::after).orElse(Outcome.CANNOT_BE));
  }

  /** Looks a little way to both sides, to one only where that tells enough. */
  void probe() {
    int p = dial.grid().probe();
    for (int steps : new int[] {p, -p}) {
      Outcome r = at(steps);
      if (r.met()) {
        met = steps;
        return;
      }
      if (r.holds() && !Double.isNaN(r.margin() - start)) {
        slope = (r.margin() - start) / steps;
        return;
      }
    }
  }

  /** Whether each of two pulls along one way takes the other's pin along. */
  boolean isLike(Along other) {
    return dial instanceof Pull a
        && other.dial instanceof Pull b
        && a.way().equals(b.way())
        && a.moves(b.pin())
        && b.moves(a.pin());
  }

  /** Goes along a direction whose slope is known. */
  void expect(double marginPerStep) {
    slope = marginPerStep;
  }

  /** Looks far away to both sides, for findings that have no figure to follow. */
  void lookFar() {
    for (double share : FAR) {
      int far = (int) Math.max(1, Math.round(share * dial.grid().most()));
      for (int steps : new int[] {far, -far}) {
        if (met == 0 && at(steps).met()) {
          met = steps;
        }
      }
    }
  }

  /** Returns how much the margin grows with a step to the positive side; 0 where unknown. */
  double slope() {
    return slope;
  }

  /** Returns whether nothing is known of a way to go. */
  boolean isBlind() {
    return met == 0 && !(Math.abs(slope) * dial.grid().most() > Math.abs(start) / 3);
  }

  /** Returns about how much of a change is needed; 1 is much. */
  double expected() {
    double steps = met != 0 ? Math.abs(met) : Math.abs(start / slope);
    return isBlind() ? Double.POSITIVE_INFINITY : steps / dial.grid().much();
  }

  /** Returns the fewest steps that mend the finding, one fewer not mending it. */
  OptionalInt fewest() {
    if (isBlind()) {
      return OptionalInt.empty();
    }
    if (met == 0) {
      follow();
    }
    if (met == 0) {
      return OptionalInt.empty();
    }
    int side = Integer.signum(met);
    int no = Math.abs(unmet);
    int yes = Math.abs(met);
    int next = yes - 1;
    while (yes - no > 1 && !trying.isSpent()) {
      if (at(side * next).met()) {
        yes = next;
      } else {
        no = next;
      }
      next = (yes + no) / 2;
    }
    return yes - no == 1 ? OptionalInt.of(side * yes) : OptionalInt.empty();
  }

  /** Follows the slope until the finding is mended. */
  private void follow() {
    int side = slope > 0 ? 1 : -1;
    int most = dial.grid().most();
    double margin = start;
    double rise = Math.abs(slope);
    int from = 0;
    for (int guess = 0; guess < GUESSES && from < most; guess++) {
      int to = (int) Math.min(most, from + Math.max(1, Math.ceil(-margin / rise * FARTHER)));
      Optional<Integer> there = reached(side, from, to);
      if (there.isEmpty()) {
        return;
      }
      to = there.get();
      Outcome r = at(side * to);
      if (r.met()) {
        unmet = side * from;
        met = side * to;
        return;
      }
      rise = (r.margin() - margin) / (to - from);
      margin = r.margin();
      from = to;
      if (!(rise > 0)) {
        return;
      }
    }
  }

  /** Returns how far it can go towards {@code to}: what stops it is come up to by halves. */
  private Optional<Integer> reached(int side, int from, int to) {
    for (int n = to; n > from; n = (n + from) / 2) {
      if (at(side * n).holds()) {
        return Optional.of(n);
      }
    }
    return Optional.empty();
  }
}
