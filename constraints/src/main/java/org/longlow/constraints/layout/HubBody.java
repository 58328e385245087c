package org.longlow.constraints.layout;

import org.longlow.constraints.formula.Formula;

/**
 * Something round about an axle, within a wheel or beside it, that is no part of its own.
 *
 * @param what what it is
 * @param radius how far it reaches from the axle
 * @param width how broad it is across the machine
 * @param y distance of its middle from the middle plane, left positive
 */
public record HubBody(What what, Formula radius, Formula width, Formula y) {

  /** What sits about an axle. */
  public enum What {
    MOTOR(true),
    DISC(true),
    /** A brake's drum with its plate. */
    DRUM(true),
    SPROCKET(true),
    /** A brake's calliper, which stands still. */
    CALLIPER(false);

    private final boolean turns;

    What(boolean turns) {
      this.turns = turns;
    }

    /** Whether it turns with the wheel, so that it may touch the rim. */
    public boolean turns() {
      return turns;
    }

    /** Whether a wheel is braked by it. */
    public boolean brakes() {
      return this == DISC || this == DRUM;
    }
  }
}
