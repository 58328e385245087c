package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.shape.PartShape;

/**
 * What the springs carry and what moves with each wheel.
 *
 * @param sprung on the springs, with people
 * @param atFront with the front wheel
 * @param atRear with the rear wheel
 */
public record Springs(List<MassPoint> sprung, List<MassPoint> atFront, List<MassPoint> atRear) {

  /**
   * Share of a front system's or swingarm's mass that moves with the wheel; common practice, no
   * source.
   */
  public static final double UNSPRUNG_SHARE = 0.5;

  /** Returns the masses of parts as drawn and of who sits on them. */
  public static Springs of(Collection<PartShape> drawn, Rider rider, Wheels wheels) {
    Springs springs = new Springs(rider.masses(), new ArrayList<>(), new ArrayList<>());
    List<PartShape> besides = new ArrayList<>();
    for (PartShape shape : drawn) {
      switch (shape.part().traits().duty()) {
        case WHEEL -> springs.share(shape, 1);
        case CARRIER -> springs.share(shape, UNSPRUNG_SHARE);
        case FRAME, DRIVE, STAND, CONTROL, LOAD -> besides.add(shape);
      }
    }
    besides.forEach(shape -> springs.hang(shape, wheels));
    return springs;
  }

  /** Puts a part's mass on the springs and on its wheel. */
  private void share(PartShape shape, double unsprung) {
    boolean front = shape.part() instanceof Part.AtEnd at && at.end() == Part.End.FRONT;
    add(sprung, shape, 1 - unsprung);
    add(front ? atFront : atRear, shape, unsprung);
  }

  /**
   * Puts a part's mass on the springs and, where it hangs on pins that go with a wheel of known
   * mass and on no others, on that wheel as far as they rise with it: all of a motor in the hub or
   * a guard on the fork, half of what sits half way along a swingarm.
   */
  private void hang(PartShape shape, Wheels wheels) {
    double front = rises(shape, wheels, Part.End.FRONT);
    double rear = rises(shape, wheels, Part.End.REAR);
    double onFront = atFront.isEmpty() ? 0 : front;
    double onRear = atRear.isEmpty() ? 0 : rear;
    add(atFront, shape, onFront);
    add(atRear, shape, onRear);
    add(sprung, shape, 1 - onFront - onRear);
  }

  /**
   * Rise of a part over that of an axle, 0 to 1; 0 where a pin of it does not go with the wheel.
   */
  private static double rises(PartShape shape, Wheels wheels, Part.End end) {
    List<String> pins = shape.part().pins();
    if (!pins.stream().allMatch(pin -> wheels.carries(end, pin))) {
      return 0;
    }
    double mean = pins.stream().mapToDouble(pin -> wheels.riseShare(end, pin)).average().orElse(0);
    return Math.max(0, Math.min(1, mean));
  }

  private static void add(List<MassPoint> into, PartShape shape, double share) {
    if (share > 0 && shape.massKg() > 0) {
      into.add(new MassPoint(shape.massKg() * share, shape.centre(), shape.centreYMm()));
    }
  }

  /** Returns whether something is known to stand on each wheel. */
  public boolean known() {
    return !atFront.isEmpty() && !atRear.isEmpty();
  }

  /**
   * Returns where the springs come to rest.
   *
   * @param loadFactor spring load over the static one; 1 upright
   */
  public StaticSag rest(Wheels wheels, double loadFactor) {
    return StaticSag.of(
        new StaticSag.End(
            wheels.frontSuspension(), MassPoint.total(atFront), wheels.frontTyre().freeRadiusMm()),
        new StaticSag.End(
            wheels.rearSuspension(), MassPoint.total(atRear), wheels.rearTyre().freeRadiusMm()),
        sprung,
        loadFactor);
  }
}
