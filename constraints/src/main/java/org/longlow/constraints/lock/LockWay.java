package org.longlow.constraints.lock;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;

/** The way of the steering from straight ahead to full lock on both sides. For one thread. */
public final class LockWay {

  /** No steering is looked at beyond this, rad. */
  public static final double MOST_RAD = Math.toRadians(85);

  private final double lockRad;
  private final Map<SteeringAxis, TurnSweep> pastStill = new IdentityHashMap<>();

  /**
   * @param askedRad how far it is to turn to each side; looked at as far as {@link #MOST_RAD}
   */
  public LockWay(double askedRad) {
    lockRad = Math.max(0, Math.min(MOST_RAD, askedRad));
  }

  /** Returns how far it is turned to each side, rad. */
  public double lockRad() {
    return lockRad;
  }

  /**
   * What comes of two bodies that do not keep a gap.
   *
   * @param gapMm the smallest gap, mm; where they meet, 0 or less: how far the place where they
   *     meet would have to give way for all of the lock, along its arc
   * @param turnRad the turn at which it is so small, or at which they meet, left positive, rad
   * @param where the place on the body that stays, in the elevation
   * @param yMm where that is across the machine, left positive, mm
   * @param from the first turn to that side at which the gap is smaller than asked
   * @param left where they meet on the way to the left, or null
   * @param right likewise to the right
   */
  public record Met(
      double gapMm,
      double turnRad,
      PointMm where,
      double yMm,
      double from,
      TurnSweep.First left,
      TurnSweep.First right) {

    /** Of two that are in each other straight ahead already nothing is said of a way. */
    public static final Met STRAIGHT = new Met(0, 0, PointMm.ORIGIN, 0, 0, null, null);

    /** Whether they meet. */
    public boolean meets() {
      return left != null || right != null;
    }

    /** Returns where they meet on the way to a side, or null. */
    public TurnSweep.First to(boolean leftSide) {
      return leftSide ? left : right;
    }
  }

  /**
   * Returns what comes of a body that turns and one that stays; empty where a gap is kept.
   *
   * @param gapMm the gap asked, mm; at 0 they may not meet
   */
  public Optional<Met> past(SteeringAxis axis, SpaceBody body, SpaceBody still, double gapMm) {
    return met(
        pastStill.computeIfAbsent(axis, TurnSweep::pastStill), body, still, Math.max(0, gapMm));
  }

  /**
   * Returns where a body that turns is nearest to one that stays, if that is nearer than a cut, mm.
   */
  public Optional<TurnSweep.Closest> nearest(
      SteeringAxis axis, SpaceBody body, SpaceBody still, double cutMm) {
    return nearest(pastStill.computeIfAbsent(axis, TurnSweep::pastStill), body, still, cutMm);
  }

  /** The same of two bodies that turn about an axis each. */
  public Optional<TurnSweep.Closest> nearest(
      SteeringAxis axis, SpaceBody body, SteeringAxis otherAxis, SpaceBody other, double cutMm) {
    return nearest(TurnSweep.past(axis, otherAxis), body, other, cutMm);
  }

  private Optional<TurnSweep.Closest> nearest(
      TurnSweep sweep, SpaceBody body, SpaceBody past, double cutMm) {
    boolean alike = body.symmetrical() && past.symmetrical();
    return Optional.ofNullable(sweep.closest(body, past, alike ? 0 : -lockRad, lockRad, cutMm));
  }

  /** Returns whether a body and one that stays meet straight ahead. */
  public boolean meetStraight(SteeringAxis axis, SpaceBody body, SpaceBody still) {
    TurnSweep sweep = pastStill.computeIfAbsent(axis, TurnSweep::pastStill);
    return sweep.closest(body, still, 0, 0, TurnSweep.BOUND_MM / 2) != null;
  }

  /** Returns what comes of two bodies that turn about an axis each. */
  public Optional<Met> past(
      SteeringAxis axis, SpaceBody body, SteeringAxis otherAxis, SpaceBody other, double gapMm) {
    return met(TurnSweep.past(axis, otherAxis), body, other, Math.max(0, gapMm));
  }

  private Optional<Met> met(TurnSweep sweep, SpaceBody body, SpaceBody past, double gapMm) {
    // what is alike on both sides is so turned to both sides
    boolean alike = body.symmetrical() && past.symmetrical();
    // at no gap asked, what comes within the bound of the sweep counts as meeting
    double cut = Math.max(gapMm, TurnSweep.BOUND_MM / 2);
    TurnSweep.Closest closest = sweep.closest(body, past, alike ? 0 : -lockRad, lockRad, cut);
    if (closest == null || closest.gapMm() >= gapMm && closest.gapMm() > 0) {
      return Optional.empty();
    }
    if (closest.gapMm() > 0) {
      double from = from(sweep, body, past, closest.turnRad(), gapMm);
      return Optional.of(
          new Met(
              closest.gapMm(),
              closest.turnRad(),
              closest.where(),
              closest.yMm(),
              from,
              null,
              null));
    }
    TurnSweep.First left = sweep.first(body, past, lockRad, 0);
    TurnSweep.First right =
        alike && left != null ? left.mirrored() : sweep.first(body, past, -lockRad, 0);
    boolean toLeft = right == null || left != null && left.turnRad() <= -right.turnRad();
    TurnSweep.First first = toLeft ? left : right;
    if (first == null) {
      return Optional.of(
          new Met(
              0, closest.turnRad(), closest.where(), closest.yMm(), closest.turnRad(), null, null));
    }
    double from = gapMm > 0 ? from(sweep, body, past, first.turnRad(), gapMm) : first.turnRad();
    double arc = first.armMm() * (lockRad - Math.abs(first.turnRad()));
    return Optional.of(
        new Met(-arc, first.turnRad(), first.where(), first.yMm(), from, left, right));
  }

  /** The first turn on the way to one at which the gap is smaller than asked. */
  private static double from(
      TurnSweep sweep, SpaceBody body, SpaceBody past, double toRad, double gapMm) {
    TurnSweep.First from = sweep.first(body, past, toRad, gapMm);
    return from == null ? toRad : from.turnRad();
  }
}
