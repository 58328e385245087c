package org.longlow.constraints.machine.linkage;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * A section that swings about one pivot.
 *
 * @param pivot body axes
 * @param openRad turn when fully open, counter-clockwise positive, rad
 */
public record Hinge(PointMm pivot, double openRad) implements SectionMotion {

  public Hinge {
    if (pivot == null) {
      throw new IllegalArgumentException("a hinge needs its pivot");
    }
    Values.finite("opening turn", openRad);
  }

  @Override
  public RigidMotion at(double opening) {
    Values.within("opening", opening, 0, 1);
    return RigidMotion.about(pivot, opening * openRad);
  }

  @Override
  public MotionRate rate(double opening) {
    return MotionRate.of(openRad, pivot, PointMm.ORIGIN);
  }

  @Override
  public Swing swing(double from, double to) {
    return new Swing(pivot, 0, Math.abs(openRad) * (to - from));
  }

  @Override
  public Hinge seenFrom(PointMm origin, double gridMm) {
    return new Hinge(SectionMotion.onGrid(pivot, origin, gridMm), openRad);
  }
}
