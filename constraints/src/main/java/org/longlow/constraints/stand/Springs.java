package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;

/**
 * What the springs carry and what moves with each wheel.
 *
 * <p>A mass that rises {@code r} mm for each mm of an axle is on that wheel {@code r} times over
 * and on the springs for the rest: more than once behind the axle of a swingarm, less than nothing
 * ahead of its pivot, where it balances the arm. Virtual work asks for no more, and the common
 * centre moves as it does.
 *
 * @param sprung on the springs, with people
 * @param atFront with the front wheel
 * @param atRear with the rear wheel
 */
public record Springs(MassPoint.Sum sprung, MassPoint.Sum atFront, MassPoint.Sum atRear) {

  /**
   * Share of a front system's or swingarm's mass that moves with the wheel; common practice, no
   * source.
   */
  public static final double UNSPRUNG_SHARE = 0.5;

  /**
   * Returns the masses of parts as drawn and of who sits on them; empty where of either wheel and
   * what holds it no mass is known.
   */
  public static Optional<Springs> of(Collection<PartShape> drawn, Rider rider, Wheels wheels) {
    Springs springs =
        new Springs(MassPoint.Sum.of(rider.masses()), MassPoint.Sum.NONE, MassPoint.Sum.NONE);
    List<PartShape> besides = new ArrayList<>();
    for (PartShape shape : drawn) {
      switch (shape.part().traits().duty()) {
        case WHEEL -> springs = springs.on(end(shape), shape, 1);
        case CARRIER -> springs = springs.on(end(shape), shape, UNSPRUNG_SHARE);
        case FRAME, DRIVE, STAND, CONTROL, LOAD -> besides.add(shape);
      }
    }
    if (!(springs.atFront.massKg() > 0 && springs.atRear.massKg() > 0)) {
      return Optional.empty();
    }
    for (PartShape shape : besides) {
      springs = springs.hang(shape, wheels);
    }
    return Optional.of(springs);
  }

  private static Part.End end(PartShape shape) {
    return shape.part() instanceof Part.AtEnd at ? at.end() : Part.End.REAR;
  }

  /** Returns these with a share of a part's mass on a wheel and the rest of it on the springs. */
  private Springs on(Part.End end, PartShape shape, double share) {
    if (!(shape.massKg() > 0)) {
      return this;
    }
    MassPoint mass = new MassPoint(shape.massKg(), shape.centre(), shape.centreYMm());
    MassPoint.Sum rest = sprung.plus(mass, 1 - share);
    return end == Part.End.FRONT
        ? new Springs(rest, atFront.plus(mass, share), atRear)
        : new Springs(rest, atFront, atRear.plus(mass, share));
  }

  /**
   * Returns these with a part that, where it hangs on pins that go with a wheel and on no others,
   * is on that wheel as far as it rises with it: all of a motor in the hub or a guard on the fork,
   * half of what sits half way along a swingarm.
   */
  private Springs hang(PartShape shape, Wheels wheels) {
    List<String> pins = shape.pins();
    for (Part.End end : Part.End.values()) {
      if (wheels.carriesAll(end, pins)) {
        return on(end, shape, wheels.riseShare(end, shape));
      }
    }
    return on(Part.End.REAR, shape, 0);
  }

  /** Returns all the machine's mass after what is on the wheels has gone with them. */
  MassPoint.Sum moved(MassPoint.Sum total, PointMm frontBy, PointMm rearBy) {
    return total.shifted(atFront.massKg(), frontBy).shifted(atRear.massKg(), rearBy);
  }

  /**
   * Returns where the springs come to rest.
   *
   * @param loadFactor spring load over the static one; 1 upright
   */
  public StaticSag rest(Wheels wheels, double loadFactor) {
    return rest(wheels, wheels.frontSuspension(), wheels.rearSuspension(), loadFactor);
  }

  /** Returns where they come to rest with other springs at the wheels, upright. */
  public StaticSag resting(Wheels wheels, Suspension front, Suspension rear) {
    return rest(wheels, front, rear, 1);
  }

  private StaticSag rest(Wheels wheels, Suspension front, Suspension rear, double loadFactor) {
    return StaticSag.of(front(wheels, front), rear(wheels, rear), sprung, loadFactor);
  }

  /**
   * Returns where they come to rest while the machine slows down, upright: by the front wheel as
   * far as its tyre holds, by the rear one beyond.
   *
   * @param brakingG by how much, in that of gravity
   * @param grip friction at which the front tyre slides
   */
  public StaticSag braking(Wheels wheels, double brakingG, double grip) {
    return braking(wheels, wheels.frontSuspension(), wheels.rearSuspension(), brakingG, grip);
  }

  /** Returns the same with other springs at the wheels, by the front wheel alone. */
  public StaticSag braking(Wheels wheels, Suspension front, Suspension rear, double brakingG) {
    return braking(wheels, front, rear, brakingG, Double.POSITIVE_INFINITY);
  }

  private StaticSag braking(
      Wheels wheels, Suspension front, Suspension rear, double brakingG, double grip) {
    return StaticSag.braking(
        front(wheels, front),
        rear(wheels, rear),
        sprung,
        new StaticSag.Braking(brakingG, wheels.fork() == null || !wheels.fork().brakeRod(), grip));
  }

  private StaticSag.End front(Wheels wheels, Suspension suspension) {
    return new StaticSag.End(suspension, atFront, wheels.frontTyre().freeRadiusMm());
  }

  private StaticSag.End rear(Wheels wheels, Suspension suspension) {
    return new StaticSag.End(suspension, atRear, wheels.rearTyre().freeRadiusMm());
  }
}
