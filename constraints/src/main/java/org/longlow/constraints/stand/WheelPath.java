package org.longlow.constraints.stand;

import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** How a wheel's carrier moves against the frame: it slides, or it turns about a pivot. */
sealed interface WheelPath {

  /** Returns where a point of the carrier goes when the axle rises by {@code travelMm}. */
  PointMm moved(PointMm point, double travelMm);

  /**
   * Sliding along the fork legs.
   *
   * @param up unit vector along the legs, upward
   */
  record Slide(PointMm up) implements WheelPath {
    @Override
    public PointMm moved(PointMm point, double travelMm) {
      return point.plus(up.times(travelMm / up.z()));
    }
  }

  /**
   * Turning about a pivot fixed to the frame.
   *
   * @param pivot the pivot
   * @param axle the axle as drawn
   */
  record Turn(PointMm pivot, PointMm axle) implements WheelPath {
    @Override
    public PointMm moved(PointMm point, double travelMm) {
      PointMm arm = axle.minus(pivot);
      double length = arm.length();
      double sine = Math.max(-1, Math.min(1, (arm.z() + travelMm) / length));
      double before = Math.asin(Math.max(-1, Math.min(1, arm.z() / length)));
      double turn = Math.asin(sine) - before;
      // an arm that points back rises as it turns clockwise
      return point.turnedAbout(pivot, arm.x() >= 0 ? turn : -turn);
    }
  }

  static WheelPath front(Part.Front fork, Places places) {
    if (fork.type() == Part.FrontKind.TELESCOPIC || fork.pivot().isEmpty()) {
      PointMm axis = places.pin(fork.top()).minus(places.pin(fork.bottom()));
      PointMm up = axis.times(1 / axis.length());
      return new Slide(up.z() < 0 ? up.times(-1) : up);
    }
    return new Turn(places.pin(fork.pivot().get()), places.pin(fork.axle()));
  }

  static WheelPath rear(Part.Swingarm arm, Places places) {
    return new Turn(places.pin(arm.pivot()), places.pin(arm.axle()));
  }
}
