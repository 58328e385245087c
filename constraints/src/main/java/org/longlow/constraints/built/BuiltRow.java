package org.longlow.constraints.built;

import org.longlow.constraints.formula.Dim;

/**
 * One figure as planned and as built, in internal units; NaN where it is not known.
 *
 * @param kind what sort of thing, such as pin
 * @param name the user's
 * @param what which figure of it, such as forward
 */
public record BuiltRow(
    String kind, String name, String what, double planned, double built, Dim dim) {

  /** Returns by how much the built one is more. */
  public double difference() {
    return built - planned;
  }
}
