package org.longlow.constraints.lock;

import java.util.List;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Separation;
import org.longlow.rider.geom.PointMm;

/**
 * How near a body that turns about an axis comes to one that stays, or that turns about another
 * axis by as much.
 *
 * <p>Nothing is missed between positions: a gap changes by no more than any point moves
 * (conservative advancement, after Mirtich), which is its distance from the axis times the turn.
 * What is answered is {@link #BOUND_MM} on the near side: a gap never less than that below the true
 * one, never above it. For one thread.
 */
public final class TurnSweep {

  /** Gaps are found to within this, mm, and said to be that much smaller. */
  public static final double BOUND_MM = 0.1;

  private final SteeringAxis axis;
  private final NearPairs nearPairs;
  private final Separation separation = new Separation();
  private final Screen screen;
  private final double[] on = new double[3];

  private NearPair last;
  private double best;
  private double bestRad;
  private PointMm where;

  private TurnSweep(SteeringAxis axis, SteeringAxis other) {
    this.axis = axis;
    screen = other == null ? new Screen(axis) : null;
    nearPairs = new NearPairs(axis, other, screen);
  }

  /** Returns sweeps past what stays. */
  public static TurnSweep pastStill(SteeringAxis axis) {
    return new TurnSweep(axis, null);
  }

  /** Returns sweeps past what turns about another axis at the same time, by the same angle. */
  public static TurnSweep past(SteeringAxis axis, SteeringAxis other) {
    return new TurnSweep(axis, other);
  }

  /** Returns whether two bodies touch as they are. */
  public static boolean touch(SpaceBody one, SpaceBody other) {
    if (one.apartMm(other) > BOUND_MM + NearPairs.ROUND_MM) {
      return false; // their pieces keep to these boxes but for what is round
    }
    Separation separation = new Separation();
    List<Piece> others = other.pieces();
    for (Piece a : one.pieces()) {
      for (Piece b : others) {
        if (separation.mm(a, b, BOUND_MM) < BOUND_MM) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Where two bodies are closest.
   *
   * @param gapMm the gap there, mm, not above the true one; 0 or less where they touch
   * @param turnRad the turn there, left positive, rad
   * @param where the place on the body that stays, in the elevation
   */
  public record Closest(double gapMm, double turnRad, PointMm where) {}

  /**
   * Where a gap first becomes smaller than asked.
   *
   * @param turnRad the turn there, left positive, rad
   * @param armMm how far the place on the body that stays is from the axis, mm
   * @param where that place, in the elevation
   */
  public record First(double turnRad, double armMm, PointMm where) {

    First mirrored() {
      return new First(-turnRad, armMm, where);
    }
  }

  /**
   * Returns where the gap is smallest between two turns, or null if it is nowhere below a cut.
   *
   * @param cutMm gaps of at least this do not matter, mm, &gt; 0
   */
  public Closest closest(
      SpaceBody body, SpaceBody past, double fromRad, double toRad, double cutMm) {
    List<NearPair> pairs = nearPairs.of(body, past, fromRad, toRad, cutMm + BOUND_MM);
    best = cutMm + BOUND_MM;
    where = null;
    for (NearPair pair : pairs) {
      if (best > 0 && keepsMore(pair, best, pair.from(), pair.to())) {
        continue;
      }
      // most come nearest at full lock; where else turns end, the pair is not near
      if (best > 0 && pair.to() == toRad) {
        look(pair, toRad);
      }
      if (best > 0 && pair.from() == fromRad) {
        look(pair, fromRad);
      }
      within(pair, pair.from(), pair.to());
    }
    return where == null ? null : new Closest(best - BOUND_MM, bestRad, where);
  }

  private boolean keepsMore(NearPair pair, double gapMm, double from, double to) {
    return screen != null && screen.keepsMore(pair, gapMm, from, to);
  }

  private double look(NearPair pair, double rad) {
    return look(pair, rad, best);
  }

  private double look(NearPair pair, double rad, double cut) {
    double mm = apart(pair, rad, cut);
    if (mm < best) {
      best = mm;
      bestRad = rad;
      separation.onSecond(on);
      where = new PointMm(on[0], on[2]);
    }
    return mm;
  }

  private double apart(NearPair pair, double rad, double cut) {
    Turned a = pair.one();
    a.turn(rad);
    Convex b = pair.past();
    if (b instanceof Turned t) {
      t.turn(rad);
    }
    if (pair != last) {
      a.point(pair.middle(), on);
      double[] past = pair.pastMiddle();
      separation.begin(on[0] - past[0], on[1] - past[1], on[2] - past[2]);
      last = pair;
    }
    return separation.mm(a, b, cut);
  }

  private void within(NearPair pair, double from, double to) {
    double middle = (from + to) / 2;
    double most = pair.reachMm() * (to - from) / 2;
    if (best <= 0 || most <= 0) {
      return; // in each other is as near as can be
    }
    double cut = best + Math.max(0, most - BOUND_MM);
    if (look(pair, middle, cut) >= cut || most <= BOUND_MM || keeps(pair, middle, to - middle)) {
      return;
    }
    within(pair, from, middle);
    within(pair, middle, to);
  }

  /** Returns whether the plane found at a turn keeps what no look near it would better. */
  private boolean keeps(NearPair pair, double middleRad, double halfRad) {
    return screen != null
        && pair.one().keptOver(separation, pair.past(), middleRad, halfRad)
            >= best + 3 * Separation.BOUND_MM;
  }

  /**
   * Returns the first turn on the way from straight ahead at which a gap is smaller than asked, or
   * null if it is kept all the way.
   *
   * @param toRad how far it turns, left positive
   * @param gapMm the gap asked, mm; 0 for where they touch
   */
  public First first(SpaceBody body, SpaceBody past, double toRad, double gapMm) {
    double side = Math.signum(toRad);
    First first = null;
    double end = Math.abs(toRad);
    for (NearPair pair :
        nearPairs.of(body, past, Math.min(0, toRad), Math.max(0, toRad), gapMm + BOUND_MM)) {
      double rad = side < 0 ? -pair.to() : pair.from();
      double stop = Math.min(end, side < 0 ? -pair.from() : pair.to());
      if (rad <= stop
          && keepsMore(
              pair,
              gapMm + BOUND_MM,
              Math.min(side * rad, side * stop),
              Math.max(side * rad, side * stop))) {
        continue;
      }
      boolean last = false;
      while (!last) {
        last = rad >= stop;
        rad = Math.min(rad, stop);
        double mm = apart(pair, side * rad, gapMm + BOUND_MM + pair.reachMm() * (stop - rad));
        if (mm < gapMm + BOUND_MM) {
          separation.onSecond(on);
          PointMm there = new PointMm(on[0], on[2]);
          first = new First(side * rad, Math.hypot(axis.aheadMm(there), on[1]), there);
          end = Math.min(end, rad);
          break;
        }
        rad += (mm - gapMm) / pair.reachMm();
      }
    }
    return first;
  }
}
