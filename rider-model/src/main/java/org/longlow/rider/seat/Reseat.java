package org.longlow.rider.seat;

import java.util.Optional;
import org.longlow.rider.body.Body;

/**
 * Seats one person again and again as the pins of their seat move: the answers of {@link Settle},
 * to its tolerance, several times faster. Every search starts from the same first seat, so that an
 * answer does not depend on what was asked before. Safe for several threads.
 */
public final class Reseat {

  private final Body body;
  private final SettledNearby leaning;
  private final SettledNearby free;

  /**
   * @param first the seat to start from
   */
  public Reseat(Body body, SeatGeometry first) {
    this.body = body;
    boolean sound = Settle.fault(first) == null;
    leaning = sound ? settled(Settle.run(body, first, SettleOptions.DEFAULT, true)) : null;
    free = sound ? settled(Settle.run(body, first, SettleOptions.DEFAULT, false)) : null;
  }

  private static SettledNearby settled(Settling settling) {
    return settling != null && settling.settled() && settling.carried()
        ? new SettledNearby(settling)
        : null;
  }

  /** Returns the person settled on {@code seat}; empty if nobody can sit there. */
  public Optional<SettledNearby> on(SeatGeometry seat) {
    if (Settle.fault(seat) != null) {
      return Optional.empty();
    }
    Settling settling = Settle.choose(lean -> run(seat, lean));
    return settling.carried() ? Optional.of(new SettledNearby(settling)) : Optional.empty();
  }

  private Settling run(SeatGeometry seat, boolean lean) {
    SettledNearby start = lean ? leaning : free;
    Settling near = start == null ? null : start.settle(seat);
    // half off the pan there are two answers, and which one depends on the way of the search
    return near != null && near.isOverPan() && new Settling(near, seat).wouldBeOverPan()
        ? near
        : Settle.run(body, seat, SettleOptions.DEFAULT, lean);
  }
}
