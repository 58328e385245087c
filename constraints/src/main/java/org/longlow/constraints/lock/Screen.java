package org.longlow.constraints.lock;

import org.longlow.constraints.space.Separation;

/**
 * Whether a piece that turns about an axis surely keeps a gap to one that stays. A plane that keeps
 * them apart at the middle of some turns goes on doing so: a point turns square to the axis, so
 * that towards the plane it comes no faster than its distance from the axis times how much of the
 * plane's direction is square to the axis. For one thread.
 */
final class Screen {

  /** How often turns are halved to find that a pair is nowhere near. */
  private static final int HALVINGS = 3;

  private final SteeringAxis axis;
  private final Separation separation = new Separation();
  private final double[] on = new double[3];

  Screen(SteeringAxis axis) {
    this.axis = axis;
  }

  /** Returns whether a pair surely keeps more than a gap between two turns. */
  boolean keepsMore(NearPair pair, double gapMm, double from, double to) {
    return keepsMore(pair, gapMm, from, to, HALVINGS);
  }

  private boolean keepsMore(NearPair pair, double gapMm, double from, double to, int halvings) {
    double middle = (from + to) / 2;
    // what is farther out than that is not near
    double most = pair.reachMm() * (to - from) / 2;
    Turned a = pair.one();
    a.turn(middle);
    a.point(pair.middle(), on);
    double[] past = pair.pastMiddle();
    separation.begin(on[0] - past[0], on[1] - past[1], on[2] - past[2]);
    // a gap that is looked at may come out smaller than it is by that bound, and what is by so much
    // farther out than the reach may yet be as near
    double cut = gapMm + 3 * Separation.BOUND_MM;
    if (separation.keeps(a, pair.past(), cut, most, axis.up())) {
      return true;
    }
    return halvings > 0
        && keepsMore(pair, gapMm, from, middle, halvings - 1)
        && keepsMore(pair, gapMm, middle, to, halvings - 1);
  }
}
