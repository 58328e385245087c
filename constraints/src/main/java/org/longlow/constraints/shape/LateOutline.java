package org.longlow.constraints.shape;

import java.util.function.Supplier;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * The outline of a part, worked out when it is first asked for where its body tells as much: a
 * crowd that is judged asks for few. For any number of threads.
 */
final class LateOutline {

  private final Envelope box;
  private final Supplier<Geometry> how;
  private volatile Geometry outline;

  private LateOutline(Envelope box, Supplier<Geometry> how, Geometry outline) {
    this.box = box;
    this.how = how;
    this.outline = outline;
  }

  static LateOutline as(Geometry outline) {
    return new LateOutline(outline.getEnvelopeInternal(), null, outline);
  }

  /** Returns an outline that lies in a box, and reaches each side of it but for its chords. */
  static LateOutline later(Envelope box, Supplier<Geometry> how) {
    return new LateOutline(box, how, null);
  }

  /** Returns the box round it, as little work as may be. */
  Envelope box() {
    return box;
  }

  Geometry outline() {
    Geometry known = outline;
    if (known == null) {
      known = how.get();
      outline = known;
    }
    return known;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LateOutline d && d.outline().equals((Object) outline());
  }

  @Override
  public int hashCode() {
    return box.hashCode();
  }
}
