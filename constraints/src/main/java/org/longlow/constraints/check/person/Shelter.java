package org.longlow.constraints.check.person;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;

/**
 * How high cowls and screens stand ahead of a place, straight ahead of whoever sits there. People
 * ahead are left out: what they leave of the wind is neither known nor small, so whoever sits
 * behind somebody holds less than is said.
 */
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
    List<Coordinate[]> shells = shells(who, standings).stream().map(CORNERS::of).toList();
    return x -> shells.stream().mapToDouble(c -> top(c, x)).max().orElse(Double.NEGATIVE_INFINITY);
  }

  /** Returns the name of the shell that stands highest ahead of a place, if it is over a height. */
  static Optional<String> highest(
      Occupant who, List<Standing> standings, double xMm, double overMm) {
    return shells(who, standings).stream()
        .filter(s -> top(CORNERS.of(s), xMm) > overMm)
        .max(Comparator.comparingDouble(s -> top(CORNERS.of(s), xMm)))
        .map(s -> s.part().name());
  }

  private static List<PartShape> shells(Occupant who, List<Standing> standings) {
    return Standing.carrying(who, standings).stream()
        .flatMap(s -> s.shapes().values().stream())
        .filter(s -> s.part() instanceof ShellPart)
        .toList();
  }

  /** How high an outline stands ahead of a place, mm. */
  private static double top(Coordinate[] outline, double x) {
    double top = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < outline.length; k++) {
      Coordinate c = outline[k];
      if (c.x >= x) {
        top = Math.max(top, c.y);
      }
      Coordinate last = k == 0 ? c : outline[k - 1];
      if (last.x < x != c.x < x) {
        top = Math.max(top, last.y + (c.y - last.y) * (x - last.x) / (c.x - last.x));
      }
    }
    return top;
  }
}
