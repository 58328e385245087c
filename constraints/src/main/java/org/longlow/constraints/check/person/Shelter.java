package org.longlow.constraints.check.person;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;

/** How high cowls and screens stand ahead of a place, straight ahead of the rider. */
final class Shelter {

  /** A shell with nothing this near to the middle shelters nobody in it, mm; judgement. */
  private static final Interval MIDDLE = new Interval(-100, 100);

  private static final ByThing<PartShape, Coordinate[]> CORNERS =
      new ByThing<>(256, Shelter::corners);

  private Shelter() {}

  private static Coordinate[] corners(PartShape shape) {
    return shape.prisms().stream().anyMatch(p -> p.across().gap(MIDDLE) <= 0)
        ? shape.outline().getCoordinates()
        : new Coordinate[0];
  }

  /**
   * Returns the height up to which a shell stands ahead of a place, by how far forward that is;
   * negative infinity where none does, or the machine does not stand with them aboard.
   */
  static DoubleUnaryOperator of(Occupant who, List<Standing> standings) {
    List<Coordinate[]> shells =
        standings.stream()
            .filter(s -> s.condition().ladenBy(who))
            .limit(1)
            .flatMap(s -> s.shapes().values().stream())
            .filter(s -> s.part() instanceof ShellPart)
            .map(CORNERS::of)
            .toList();
    return x ->
        shells.stream()
            .flatMap(Stream::of)
            .filter(c -> c.x >= x)
            .mapToDouble(c -> c.y)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
  }
}
