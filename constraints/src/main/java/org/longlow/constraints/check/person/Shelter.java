package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.effort.Shade;

/**
 * What cowls, screens and all that is broad cover ahead of a place, straight ahead of whoever sits
 * there; air comes in under a roof, unless something else stands there. People ahead are left out:
 * what they leave of the wind is neither known nor small, so whoever sits behind somebody holds
 * less than is said.
 */
final class Shelter {

  /**
   * A shell with nothing this near to the middle shelters nobody in it, and nothing else does that
   * is not as broad, mm; judgement.
   */
  private static final Interval MIDDLE = new Interval(-100, 100);

  private static final Coordinate[] NONE = {};

  private static final ByThing<PartShape, Coordinate[]> CORNERS =
      new ByThing<>(512, Shelter::corners);

  private Shelter() {}

  private static Coordinate[] corners(PartShape shape) {
    boolean shell = shape.part() instanceof ShellPart;
    return shape.prisms().stream().map(Prism::across).anyMatch(a -> shell ? near(a) : broad(a))
        ? shape.outline().getCoordinates()
        : NONE;
  }

  private static boolean near(Interval across) {
    return across.gap(MIDDLE) <= 0;
  }

  private static boolean broad(Interval across) {
    return across.from() <= MIDDLE.from() && across.to() >= MIDDLE.to();
  }

  /** Returns what shelters somebody; nothing where the machine does not stand with them aboard. */
  static Shade of(Occupant who, List<Standing> standings) {
    List<Coordinate[]> ahead =
        shapes(who, standings).map(CORNERS::of).filter(c -> c.length > 0).toList();
    return x -> ahead.stream().flatMap(c -> spans(c, x).stream()).toList();
  }

  /**
   * Returns the name of the shell that stands highest ahead of a place, of those that end between
   * two heights: what is lower is none, and what ends higher need not be raised.
   */
  static Optional<String> highest(
      Occupant who, List<Standing> standings, double xMm, double overMm, double underMm) {
    return shapes(who, standings)
        .filter(s -> s.part() instanceof ShellPart)
        .filter(s -> top(s, xMm) > overMm && top(s, xMm) < underMm)
        .max(Comparator.comparingDouble(s -> top(s, xMm)))
        .map(s -> s.part().name());
  }

  private static double top(PartShape shape, double xMm) {
    return spans(CORNERS.of(shape), xMm).stream()
        .mapToDouble(Shade.Span::highMm)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private static Stream<PartShape> shapes(Occupant who, List<Standing> standings) {
    return Standing.carrying(who, standings).stream().flatMap(s -> s.shapes().values().stream());
  }

  /** Which heights an outline covers ahead of a place: those of each way that it goes there. */
  private static List<Shade.Span> spans(Coordinate[] outline, double x) {
    List<Shade.Span> spans = new ArrayList<>();
    double low = Double.POSITIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < outline.length; k++) {
      Coordinate c = outline[k];
      Coordinate last = k == 0 ? c : outline[k - 1];
      if (last.x < x != c.x < x) {
        double cut = last.y + (c.y - last.y) * (x - last.x) / (c.x - last.x);
        low = Math.min(low, cut);
        top = Math.max(top, cut);
      }
      if (c.x >= x) {
        low = Math.min(low, c.y);
        top = Math.max(top, c.y);
      }
      if (top >= low && (c.x < x || k == outline.length - 1)) {
        spans.add(new Shade.Span(low, top));
        low = Double.POSITIVE_INFINITY;
        top = Double.NEGATIVE_INFINITY;
      }
    }
    return spans;
  }
}
