package org.longlow.rider.pose;

import java.util.List;

/** How a posture came out. Either way there is a posture to draw. */
public sealed interface PoseResult {

  Posture posture();

  /** Returns what is out of reach; empty when all is reached. */
  default List<Shortfall> shortfalls() {
    return List.of();
  }

  /** Feet and hands are where they should be. */
  record Reached(Posture posture) implements PoseResult {}

  /**
   * Something is out of reach; the limb is drawn at full stretch (or full fold) towards its target.
   */
  record Short(Posture posture, List<Shortfall> shortfalls) implements PoseResult {
    public Short {
      shortfalls = List.copyOf(shortfalls);
    }
  }

  /** Which limb. */
  enum Limb {
    LEG,
    ARM
  }

  /** Which way a target is out of reach. */
  enum Side {
    TOO_FAR,
    TOO_NEAR
  }

  /**
   * One limb that does not reach.
   *
   * @param limb which
   * @param side too far or too near
   * @param mm by how much, mm, &gt; 0
   */
  record Shortfall(Limb limb, Side side, double mm) {}
}
