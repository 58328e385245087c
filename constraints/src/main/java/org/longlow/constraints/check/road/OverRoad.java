package org.longlow.constraints.check.road;

import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Turning;
import org.longlow.rider.geom.PointMm;

/** How high something is over the road in turns to one side. For one thread. */
interface OverRoad {

  /** Returns whether its lowest point is on the road or in it. */
  boolean reachesRoad(Turning.State state);

  /** Returns its lowest point. */
  LowSide.Low lowest(Turning.State state);

  /**
   * Returns a part of the stance that {@code turning} begins with.
   *
   * @param onWheel whether it goes with a wheel, as {@link Turning#goesWithWheel} says
   */
  static OverRoad of(PartShape shape, boolean onWheel, Turning turning, Undersides undersides) {
    LowSide as = undersides.of(shape.prisms());
    if (!onWheel) {
      return fixed(as);
    }
    List<String> pins = shape.pins();
    return pins.size() == 1
        ? new Shifted(as, pins.get(0), turning)
        : new Shaped(
            shape,
            as,
            Shapes.beyondPinsMm(shape.part(), turning.placesBefore()),
            turning,
            undersides);
  }

  /** Returns what the frame carries. */
  static OverRoad fixed(LowSide underside) {
    return new Fixed(underside);
  }

  /** What the frame carries, in whose axes all is told. */
  record Fixed(LowSide underside) implements OverRoad {
    @Override
    public boolean reachesRoad(Turning.State state) {
      return underside.reachesRoad(state, PointMm.ORIGIN);
    }

    @Override
    public LowSide.Low lowest(Turning.State state) {
      return underside.lowest(state, PointMm.ORIGIN);
    }
  }

  /** What hangs on one pin that goes with a wheel. */
  record Shifted(LowSide underside, String pin, Turning turning) implements OverRoad {
    @Override
    public boolean reachesRoad(Turning.State state) {
      return underside.reachesRoad(state, turning.shift(pin, state));
    }

    @Override
    public LowSide.Low lowest(Turning.State state) {
      return underside.lowest(state, turning.shift(pin, state));
    }
  }

  /** What is another shape wherever its pins are, but as far out. */
  record Shaped(
      PartShape shape,
      LowSide before,
      OptionalDouble beyondPinsMm,
      Turning turning,
      Undersides undersides)
      implements OverRoad {
    @Override
    public boolean reachesRoad(Turning.State state) {
      if (beyondPinsMm.isPresent()) {
        Envelope room = turning.pins(shape, state);
        room.expandBy(beyondPinsMm.getAsDouble());
        if (before.isClear(state, room)) {
          return false; // nothing of it is outside of that room
        }
      }
      return there(state).reachesRoad(state, PointMm.ORIGIN);
    }

    @Override
    public LowSide.Low lowest(Turning.State state) {
      return there(state).lowest(state, PointMm.ORIGIN);
    }

    private LowSide there(Turning.State state) {
      return undersides.once(turning.body(shape, state));
    }
  }
}
