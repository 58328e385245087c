package org.longlow.constraints.lock;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.longlow.constraints.space.Convex;
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

  /** Outlines of round things lie inside of them by less than this, mm. */
  private static final double ROUND_MM = 1;

  /** How often turns are halved to find that a pair is nowhere near. */
  private static final int SCREENED = 3;

  private final SteeringAxis axis;
  private final SteeringAxis other;
  private final Separation separation = new Separation();
  private final Separation screen = new Separation();
  private final double[] on = new double[3];

  private List<Turned> moving;
  private List<? extends Convex> still;
  private List<double[]> middles;
  private List<double[]> pastMiddles;
  private Near last;
  private double best;
  private double bestRad;
  private PointMm where;

  private TurnSweep(SteeringAxis axis, SteeringAxis other) {
    this.axis = axis;
    this.other = other;
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
    if (one.apartMm(other) > BOUND_MM + ROUND_MM) {
      return false; // their pieces keep to these boxes but for what is round
    }
    Separation separation = new Separation();
    for (Convex a : one.pieces()) {
      for (Convex b : other.pieces()) {
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

  /** A pair of pieces, the turns at which they may be near, and how fast that changes. */
  private record Near(int i, int j, double from, double to, double reachMm) {}

  /**
   * Returns where the gap is smallest between two turns, or null if it is nowhere below a cut.
   *
   * @param cutMm gaps of at least this do not matter, mm, &gt; 0
   */
  public Closest closest(
      SpaceBody body, SpaceBody past, double fromRad, double toRad, double cutMm) {
    List<Near> pairs = near(body, past, fromRad, toRad, cutMm + BOUND_MM);
    best = cutMm + BOUND_MM;
    where = null;
    for (Near pair : pairs) {
      if (keepsMore(pair, pair.from, pair.to, SCREENED)) {
        continue;
      }
      // most come nearest at full lock; where else turns end, the pair is not near
      if (best > 0 && pair.to == toRad) {
        look(pair, toRad);
      }
      if (best > 0 && pair.from == fromRad) {
        look(pair, fromRad);
      }
      within(pair, pair.from, pair.to);
    }
    return where == null ? null : new Closest(best - BOUND_MM, bestRad, where);
  }

  /**
   * Returns whether a pair, turned between two turns, surely keeps more than the best gap so far. A
   * plane that keeps them apart at the middle goes on doing so: a point turns square to the axis,
   * so that towards the plane it comes no faster than its distance from the axis times how much of
   * the plane's direction is square to the axis. What is farther out than {@code reachMm} is not
   * near.
   *
   * @param halvings how often the turns may be halved to find that out
   */
  private boolean keepsMore(Near pair, double from, double to, int halvings) {
    if (other != null || best <= 0) {
      return false;
    }
    double middle = (from + to) / 2;
    double most = pair.reachMm * (to - from) / 2;
    Turned a = moving.get(pair.i);
    a.turn(middle);
    a.point(middles.get(pair.i), on);
    double[] past = pastMiddles.get(pair.j);
    screen.begin(on[0] - past[0], on[1] - past[1], on[2] - past[2]);
    // a gap that is looked at may come out smaller than it is by that bound, and what is by so much
    // farther out than the reach may yet be as near
    double cut = best + 3 * Separation.BOUND_MM;
    if (screen.keeps(a, still.get(pair.j), cut, most, axis.up())) {
      return true;
    }
    return halvings > 0
        && keepsMore(pair, from, middle, halvings - 1)
        && keepsMore(pair, middle, to, halvings - 1);
  }

  private double look(Near pair, double rad) {
    return look(pair, rad, best);
  }

  private double look(Near pair, double rad, double cut) {
    double mm = apart(pair, rad, cut);
    if (mm < best) {
      best = mm;
      bestRad = rad;
      separation.onSecond(on);
      where = new PointMm(on[0], on[2]);
    }
    return mm;
  }

  private double apart(Near pair, double rad, double cut) {
    Turned a = moving.get(pair.i);
    a.turn(rad);
    Convex b = still.get(pair.j);
    if (b instanceof Turned t) {
      t.turn(rad);
    }
    if (pair != last) {
      a.point(middles.get(pair.i), on);
      double[] past = pastMiddles.get(pair.j);
      separation.begin(on[0] - past[0], on[1] - past[1], on[2] - past[2]);
      last = pair;
    }
    return separation.mm(a, b, cut);
  }

  private void within(Near pair, double from, double to) {
    double middle = (from + to) / 2;
    double most = pair.reachMm * (to - from) / 2;
    if (best <= 0 || most <= 0) {
      return; // in each other is as near as can be
    }
    double cut = best + Math.max(0, most - BOUND_MM);
    if (look(pair, middle, cut) >= cut || most <= BOUND_MM) {
      return;
    }
    within(pair, from, middle);
    within(pair, middle, to);
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
    for (Near pair : near(body, past, Math.min(0, toRad), Math.max(0, toRad), gapMm + BOUND_MM)) {
      double rad = side < 0 ? -pair.to : pair.from;
      double stop = Math.min(end, side < 0 ? -pair.from : pair.to);
      boolean last = false;
      while (!last) {
        last = rad >= stop;
        rad = Math.min(rad, stop);
        double mm = apart(pair, side * rad, gapMm + BOUND_MM + pair.reachMm * (stop - rad));
        if (mm < gapMm + BOUND_MM) {
          separation.onSecond(on);
          PointMm there = new PointMm(on[0], on[2]);
          first = new First(side * rad, Math.hypot(axis.aheadMm(there), on[1]), there);
          end = Math.min(end, rad);
          break;
        }
        rad += (mm - gapMm) / pair.reachMm;
      }
    }
    return first;
  }

  /** Returns the pairs of pieces that may come nearer than a distance between two turns. */
  private List<Near> near(SpaceBody body, SpaceBody past, double from, double to, double mm) {
    List<Near> pairs = new ArrayList<>();
    Around whole = body.around(axis);
    Around wholePast = past.around(axis);
    if (whole == null || wholePast == null) {
      return pairs;
    }
    if (other == null && window(whole, wholePast, from, to, mm + ROUND_MM) == null) {
      return pairs;
    }
    if (other != null
        && whole.swept(axis, from, to).apartMm(past.around(other).swept(other, from, to))
            >= mm + ROUND_MM) {
      return pairs;
    }
    List<Around> ones = body.aroundPieces(axis);
    List<Around> others = past.aroundPieces(other == null ? axis : other);
    middles = body.middles();
    pastMiddles = past.middles();
    moving = body.pieces().stream().map(p -> new Turned(p, axis)).toList();
    if (other != null) {
      still = past.pieces().stream().map(p -> new Turned(p, other)).toList();
      List<Around.Swept> boxes = others.stream().map(b -> b.swept(other, from, to)).toList();
      for (int i = 0; i < ones.size(); i++) {
        Around a = ones.get(i);
        Around.Swept box = a.swept(axis, from, to);
        for (int j = 0; j < others.size(); j++) {
          Around b = others.get(j);
          if (box.apartMm(boxes.get(j)) < mm) {
            pairs.add(new Near(i, j, from, to, a.farMm() + b.farMm()));
          }
        }
      }
      return pairs;
    }
    still = past.pieces();
    // what of the other body no place of this one comes near is near to no piece of it
    int[] candidates =
        IntStream.range(0, others.size())
            .filter(j -> window(whole, others.get(j), from, to, mm + ROUND_MM) != null)
            .toArray();
    for (int i = 0; i < ones.size(); i++) {
      Around a = ones.get(i);
      if (window(a, wholePast, from, to, mm + ROUND_MM) == null) {
        continue;
      }
      for (int j : candidates) {
        Around b = others.get(j);
        double[] turns = window(a, b, from, to, mm);
        if (turns != null) {
          // only what is as near to the axis as the other, and the distance, can be that near
          double reach = Math.min(a.farMm(), b.farMm() + mm);
          pairs.add(new Near(i, j, turns[0], turns[1], reach));
        }
      }
    }
    return pairs;
  }

  /** Returns the turns at which two rooms are nearer than a distance, or null if there are none. */
  private static double[] window(Around a, Around b, double from, double to, double mm) {
    double within = a.withinRad(b, mm);
    if (Double.isNaN(within)) {
      return null;
    }
    if (within >= Math.PI) {
      return new double[] {from, to};
    }
    double off = a.offRad(b);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int round = -1; round <= 1; round++) {
      double low = Math.max(from, off + 2 * Math.PI * round - within);
      double high = Math.min(to, off + 2 * Math.PI * round + within);
      if (low <= high) {
        least = Math.min(least, low);
        most = Math.max(most, high);
      }
    }
    return least <= most ? new double[] {least, most} : null;
  }
}
