package org.longlow.rider.pose;

import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** What the head does. */
public sealed interface HeadTarget {

  /** Held free, looking at the road: see {@link HeadSolver#gazePitch}. */
  record Gaze() implements HeadTarget {}

  /**
   * Held at a pitch.
   *
   * @param pitchRad Frankfurt plane from the horizontal, nose up positive, rad
   */
  record Pitch(double pitchRad) implements HeadTarget {
    public Pitch {
      if (!Double.isFinite(pitchRad)) {
        throw new OutOfRange("pitchRad must be finite, got " + pitchRad);
      }
    }
  }

  /**
   * Leaning on a surface, helmet and all; free if the surface cannot be touched.
   *
   * @param surface a point of the (compressed) surface
   * @param normal unit vector off the surface, towards the head
   */
  record OnRest(PointMm surface, PointMm normal) implements HeadTarget {}
}
