package org.longlow.constraints.check.person;

import static java.util.Comparator.comparingDouble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.effort.Shade;

/**
 * What cowls, screens and all that is broad cover ahead of a place, straight ahead of whoever sits
 * there and as broad as it stands there; air comes in under a roof, unless something else stands
 * there. People ahead are left out: what they leave of the wind is neither known nor small, so
 * whoever sits behind somebody holds less than is said.
 */
final class Shelter {

  /**
   * The wake of what stands across the wind closes so many of its breadths behind it, 1; judgement:
   * the still air behind a plate is some two to three of its breadths long.
   */
  static final double CLOSES = 3;

  /** What is no shell and less broad than this shelters nobody, mm; judgement. */
  private static final double LEAST_BROAD_MM = 200;

  /** What is raised to shelter a head reaches across this, mm; judgement. */
  private static final Interval MIDDLE = new Interval(-100, 100);

  /** So many of them are commonly ahead of a limb. */
  private static final int ROOM = 128;

  private static final ByThing<PartShape, Cover> COVERS = new ByThing<>(512, Cover::of);

  /**
   * What a part can cover.
   *
   * @param rings corners of the outlines of its prisms, none where it shelters nobody
   * @param boxes round each of these
   * @param across where each of these stands across the machine
   * @param rearMm where its rear end is
   * @param frontMm where its front end is
   * @param reachMm how far behind that its wake closes
   */
  private record Cover(
      List<Coordinate[]> rings,
      List<Envelope> boxes,
      List<Interval> across,
      double rearMm,
      double frontMm,
      double reachMm) {

    private static Cover of(PartShape shape) {
      List<Interval> across = shape.prisms().stream().map(Prism::across).toList();
      double broad = broadest(across);
      Envelope box = shape.box();
      boolean counts = shape.part() instanceof ShellPart || broad >= LEAST_BROAD_MM;
      return new Cover(
          counts
              ? shape.prisms().stream().map(p -> p.outline().getCoordinates()).toList()
              : List.of(),
          shape.prisms().stream().map(p -> p.outline().getEnvelopeInternal()).toList(),
          across,
          box.getMinX(),
          box.getMaxX(),
          CLOSES * broad);
    }

    /** How broad the broadest is of what hangs together across, mm. */
    private static double broadest(List<Interval> across) {
      double most = 0;
      Interval all = null;
      for (Interval i : across.stream().sorted(comparingDouble(Interval::from)).toList()) {
        all =
            all == null || i.from() > all.to()
                ? i
                : new Interval(all.from(), Math.max(all.to(), i.to()));
        most = Math.max(most, all.length());
      }
      return most;
    }

    void ahead(double xMm, List<Shade.Span> spans) {
      if (frontMm >= xMm && rearMm - xMm <= reachMm) {
        for (int k = 0; k < rings.size(); k++) {
          Envelope all = boxes.get(k);
          Interval y = across.get(k);
          if (all.getMinX() >= xMm) {
            spans.add(new Shade.Span(all.getMinY(), all.getMaxY(), y.from(), y.to()));
          } else if (all.getMaxX() >= xMm) {
            spans(rings.get(k), y, xMm, spans);
          }
        }
      }
    }
  }

  private Shelter() {}

  /** Returns what shelters somebody; nothing where the machine does not stand with them aboard. */
  static Shade of(Occupant who, List<Standing> standings) {
    List<Cover> covers =
        shapes(who, standings).map(COVERS::of).filter(c -> !c.rings.isEmpty()).toList();
    // both sides ask of the same place, riding along and braking
    Memo<Double, List<Shade.Span>> ahead = new Memo<>(16, x -> ahead(x, covers));
    return ahead::of;
  }

  private static List<Shade.Span> ahead(double xMm, List<Cover> covers) {
    List<Shade.Span> spans = new ArrayList<>(ROOM);
    for (Cover cover : covers) {
      cover.ahead(xMm, spans);
    }
    return spans;
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
        .max(comparingDouble(s -> top(s, xMm)))
        .map(s -> s.part().name());
  }

  private static double top(PartShape shape, double xMm) {
    return ahead(xMm, List.of(COVERS.of(shape))).stream()
        .filter(s -> s.rightMm() <= MIDDLE.from() && s.leftMm() >= MIDDLE.to())
        .mapToDouble(Shade.Span::highMm)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private static Stream<PartShape> shapes(Occupant who, List<Standing> standings) {
    return Standing.carrying(who, standings).stream().flatMap(s -> s.shapes().values().stream());
  }

  /** Which heights an outline covers ahead of a place: those of each way that it goes there. */
  private static void spans(
      Coordinate[] outline, Interval across, double x, List<Shade.Span> spans) {
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
        spans.add(new Shade.Span(low, top, across.from(), across.to()));
        low = Double.POSITIVE_INFINITY;
        top = Double.NEGATIVE_INFINITY;
      }
    }
  }
}
