package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A vertex of an outline or a hole, either at local coordinates or on a pin.
 *
 * @param x along the frame's axis; null where {@code pin} is given
 * @param z square to it, counter-clockwise; null where {@code pin} is given
 * @param pin the pin it sits on, or null
 * @param smooth true if the edge runs through it without a corner
 * @param reach how far the body reaches to each side there, where that is said
 */
public record Vertex(
    Formula x, Formula z, String pin, boolean smooth, Optional<HalfBreadths> reach) {

  /** A vertex that does not say how broad the body is. */
  public Vertex(Formula x, Formula z, String pin, boolean smooth) {
    this(x, z, pin, smooth, Optional.empty());
  }

  public Vertex {
    if ((pin == null) == (x == null || z == null)) {
      throw new IllegalArgumentException("a vertex needs either x and z or a pin");
    }
  }

  /** Returns the same elsewhere. */
  public Vertex at(Formula newX, Formula newZ) {
    return new Vertex(newX, newZ, null, smooth, reach);
  }

  /** Returns the same on a pin. */
  public Vertex on(String newPin) {
    return new Vertex(null, null, newPin, smooth, reach);
  }

  /** Returns the same with a corner, or without. */
  public Vertex smooth(boolean nowSmooth) {
    return new Vertex(x, z, pin, nowSmooth, reach);
  }

  /** Returns the same with another reach. */
  public Vertex reaching(Optional<HalfBreadths> now) {
    return new Vertex(x, z, pin, smooth, now);
  }
}
