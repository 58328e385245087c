package org.longlow.rider.seat;

import org.longlow.rider.body.Body;

/**
 * The work of {@link Settle}: rounds of where a body sits and how it presses until both agree. Used
 * once, by one thread.
 */
final class Settling {

  /** Posture and sinks agree when no sink changes more than this in a round, mm. */
  static final double TOLERANCE_MM = 1e-10;

  private static final int MOST_ROUNDS = 60;
  private static final int CATCH_UP = 3;
  private static final int MOST_STEPS = 25;

  private final SeatFit fit;
  private final Agree sinks = new Agree(4);
  private Seating at;
  private Pressing pressing;
  private int rounds;
  private boolean settled;

  Settling(Body body, SeatGeometry seat, SettleOptions options, boolean leaning) {
    fit = SeatFit.of(body, seat, options, leaning);
    pressing = Pressing.UNKNOWN;
  }

  /**
   * A seat near one that is settled already: sinks are given, all else starts as that one ended.
   */
  Settling(Settling near, SeatGeometry seat) {
    fit = near.fit.on(seat);
    at = near.at;
    pressing = near.pressing;
  }

  /** Returns the sinks: pan, lower and upper end of the back, head rest, mm. */
  double[] state() {
    return sinks.state();
  }

  /**
   * Returns by how much a round of work changes these sinks, mm; the posture is left as they have
   * it.
   */
  double[] changeAt(double[] state) {
    hold(state);
    return round();
  }

  /** Puts the body where these sinks have it. */
  void hold(double[] state) {
    sinks.begin(state);
    // the ends of the torso's contact are one round behind
    for (int i = 0; i < CATCH_UP; i++) {
      place();
    }
  }

  /**
   * Works until posture and sinks agree.
   *
   * @return false if the head was to lean on a rest and cannot
   */
  boolean run() {
    if (!fit.canBe()) {
      return false;
    }
    while (rounds < MOST_ROUNDS && !settled) {
      rounds++;
      settled = sinks.move(round()) < TOLERANCE_MM;
    }
    return headIsWhereItShould();
  }

  /**
   * Works on from the sinks of a seat near by.
   *
   * @param inverse inverse of the slope of a round's change by the sinks there
   * @return false if that leads nowhere or the head cannot lean
   */
  boolean runFrom(double[] start, double[][] inverse) {
    if (!fit.canBe()) {
      return false;
    }
    sinks.begin(start, inverse);
    while (rounds < MOST_STEPS && !settled) {
      rounds++;
      double size = sinks.move(round());
      if (!(size < 1e3)) {
        return false;
      }
      settled = size < TOLERANCE_MM;
    }
    return settled && headIsWhereItShould();
  }

  private double[] round() {
    place();
    pressing = Pressing.of(at, pressing);
    return pressing.change(fit, state());
  }

  private void place() {
    at =
        at == null
            ? Seating.of(fit, state(), 0, 0)
            : Seating.of(fit, state(), at.torsoFrom(), at.torsoTo());
  }

  private boolean headIsWhereItShould() {
    return !fit.leaning() || at.headIsOnRest();
  }

  /** Returns whether the pan carries the person at all. */
  boolean carried() {
    return pressing.carries(at);
  }

  /** Whether the pan carries the person well away from its ends. */
  boolean isOverPan() {
    return carried() && at.isWellOn();
  }

  /** Whether that is so, but for the load, with nothing pressed in. */
  boolean wouldBeOverPan() {
    hold(new double[4]);
    return at.isWellOn();
  }

  SeatFit fit() {
    return fit;
  }

  Seating at() {
    return at;
  }

  Pressing pressing() {
    return pressing;
  }

  int rounds() {
    return rounds;
  }

  boolean settled() {
    return settled;
  }
}
