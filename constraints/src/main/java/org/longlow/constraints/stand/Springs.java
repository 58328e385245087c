package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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
  public static Springs of(Collection<PartShape> drawn, Rider rider) {
    Springs springs = new Springs(rider.masses(), new ArrayList<>(), new ArrayList<>());
    Map<String, Part.End> axles =
        drawn.stream()
            .map(PartShape::part)
            .filter(Part.Wheel.class::isInstance)
            .map(Part.Wheel.class::cast)
            .collect(Collectors.toMap(Part.Wheel::axle, Part.Wheel::end, (one, other) -> one));
    List<PartShape> besides = new ArrayList<>();
    for (PartShape shape : drawn) {
      switch (shape.part().traits().duty()) {
        case WHEEL -> springs.share(shape, 1);
        case CARRIER -> springs.share(shape, UNSPRUNG_SHARE);
        case FRAME, DRIVE, STAND, LOAD -> besides.add(shape);
      }
    }
    besides.forEach(shape -> springs.hang(shape, axles));
    return springs;
  }

  /** Puts a part's mass on the springs and on its wheel. */
  private void share(PartShape shape, double unsprung) {
    boolean front = shape.part() instanceof Part.AtEnd at && at.end() == Part.End.FRONT;
    add(sprung, shape, 1 - unsprung);
    add(front ? atFront : atRear, shape, unsprung);
  }

  /**
   * Puts a part's mass on the springs, or on a wheel of known mass where it hangs on its axle alone
   * and so goes up and down with it, as a motor in the hub does or a guard over the tyre.
   */
  private void hang(PartShape shape, Map<String, Part.End> axles) {
    List<String> pins = shape.part().pins();
    List<MassPoint> into = sprung;
    if (!pins.isEmpty() && axles.keySet().containsAll(pins)) {
      into = axles.get(pins.get(0)) == Part.End.FRONT ? atFront : atRear;
    }
    add(into.isEmpty() ? sprung : into, shape, 1);
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
