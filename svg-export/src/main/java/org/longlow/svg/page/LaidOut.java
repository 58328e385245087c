package org.longlow.svg.page;

import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
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
}
