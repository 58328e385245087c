package org.longlow.sketcher.picture;

import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.stand.Turning;

/**
 * The machine held at a lean by a steady turn.
 *
 * @param state how it stands there
 * @param side 1 leaned to the left, -1 to the right
 */
public record Leaned(Turning.State state, int side) {

  /**
   * Returns where a point of the frame is over the road but for the roll: forward, to the left and
   * up, mm.
   */
  double[] pitched(double x, double y, double z) {
    double[] at = state.onRoad(x, side * y, z);
    double up = at[2] - state.road().startMm();
    double roll = state.rollRad();
    return new double[] {at[0], y, up * Math.cos(roll) + at[1] * Math.sin(roll)};
  }

  /** Returns the roll on a page that is seen from ahead. */
  AffineTransformation roll() {
    return AffineTransformation.rotationInstance(-side * state.rollRad())
        .translate(0, state.road().startMm());
  }
}
