package org.longlow.svg.page;

import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;

/** A template that is drawn once it is known where the seams between its sheets run. */
@FunctionalInterface
public interface LaidOut {

  /**
   * Returns the template at 1:1, mm, its words clear of the seams as far as they find room.
   *
   * @param sheets tells how a drawing with these bounds is divided
   */
  Drawing on(Function<Envelope, Tiling> sheets);

  /**
   * Returns what needs paper, without words, mm; empty if nothing is known of it before it is
   * drawn, which then is neither turned nor shifted.
   */
  default Optional<Geometry> ink() {
    return Optional.empty();
  }

  /**
   * Returns the same template turned about the origin, its words upright.
   *
   * @param rad counter-clockwise
   */
  default LaidOut turned(double rad) {
    return this;
  }

  /** Returns the same template with few and small words, for a sheet that it shares. */
  default LaidOut brief() {
    return this;
  }
}
