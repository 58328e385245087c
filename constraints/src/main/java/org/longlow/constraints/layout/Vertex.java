package org.longlow.constraints.layout;

import org.longlow.constraints.formula.Formula;

/**
 * A vertex of an outline or a hole, either at local coordinates or on a pin.
 *
 * @param x along the frame's axis; null where {@code pin} is given
 * @param z square to it, counter-clockwise; null where {@code pin} is given
 * @param pin the pin it sits on, or null
 * @param smooth true if the edge runs through it without a corner
 */
public record Vertex(Formula x, Formula z, String pin, boolean smooth) {
  public Vertex {
    if ((pin == null) == (x == null || z == null)) {
      throw new IllegalArgumentException("a vertex needs either x and z or a pin");
    }
  }
}
