package org.longlow.sketcher.edit;

import java.util.Optional;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.rider.geom.PointMm;

/**
 * What somebody measures from or to.
 *
 * @param at where that is as the machine is shown, in the axes of the frame
 * @param end what a kept dimension can end at there; empty where there is nothing that moves along
 * @param part whose edge it lies on; empty for none
 * @param onGround whether it lies on the road
 * @param words says what it is; empty for a bare place
 */
public record MeasureSpot(
    PointMm at, Optional<End> end, String part, boolean onGround, String words) {

  static MeasureSpot end(PointMm at, End end, String words) {
    return new MeasureSpot(at, Optional.of(end), "", false, words);
  }

  static MeasureSpot edge(PointMm at, String part) {
    return new MeasureSpot(at, Optional.empty(), part, false, "edge of " + part);
  }

  static MeasureSpot ground(PointMm at) {
    return new MeasureSpot(at, Optional.empty(), "", true, "the ground");
  }

  /** Returns a place with nothing there. */
  public static MeasureSpot bare(PointMm at) {
    return new MeasureSpot(at, Optional.empty(), "", false, "");
  }

  /** Returns whether it is an edge anywhere along it. */
  boolean isEdge() {
    return !part.isEmpty();
  }
}
