package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.MassPoint;
import org.longlow.constraints.machine.StaticSag;
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
    drawn.forEach(shape -> springs.share(shape, axles));
    return springs;
  }

  /**
   * Puts a part's mass on the springs or on a wheel. What hangs on an axle alone, such as a motor
   * or a brake in the hub, goes up and down with it; carriers are shared half and half.
   */
  private void share(PartShape shape, Map<String, Part.End> axles) {
    Part part = shape.part();
    Optional<Part.End> hub = hub(part, axles);
    double unsprung =
        switch (part.traits().duty()) {
          case WHEEL -> 1;
          case CARRIER -> UNSPRUNG_SHARE;
          case FRAME, DRIVE, STAND, LOAD -> hub.isPresent() ? 1 : 0;
        };
    Optional<Part.End> end = part instanceof Part.AtEnd at ? Optional.of(at.end()) : hub;
    add(sprung, shape, 1 - unsprung);
    add(end.equals(Optional.of(Part.End.FRONT)) ? atFront : atRear, shape, unsprung);
  }

  /** The wheel on whose axle alone a part hangs. */
  private static Optional<Part.End> hub(Part part, Map<String, Part.End> axles) {
    return part.pins().size() > 0 && axles.keySet().containsAll(part.pins())
        ? Optional.of(axles.get(part.pins().iterator().next()))
        : Optional.empty();
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
