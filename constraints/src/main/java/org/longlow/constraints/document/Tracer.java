package org.longlow.constraints.document;

import org.longlow.constraints.layout.Outline;

/** Finds the vertices of traced outlines, which are not in the document but in files beside it. */
public interface Tracer {

  /** Leaves the vertices as they are. */
  Tracer NONE = (outline, scaleMm, at) -> outline;

  /**
   * Returns {@code outline} with its vertices, or without any after reporting why there are none.
   *
   * @param scaleMm mm for each user unit, &gt; 0
   */
  Outline.Traced traced(Outline.Traced outline, double scaleMm, Spot at);
}
