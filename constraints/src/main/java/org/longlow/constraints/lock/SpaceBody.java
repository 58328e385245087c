package org.longlow.constraints.lock;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.shape.Tyres;
import org.longlow.rider.geom.PointMm;

/**
 * A body in space: wheels, bent tubes, fork legs, grips and pegs round as they are, all else the
 * outline of the elevation over its breadth. Cut into convex pieces when asked for. For one thread.
 */
public final class SpaceBody {

  private final String name;
  private final List<Prism> prisms;
  private final PartShape shape;
  private final Places places;
  private List<Lump> lumps;
  private Boolean symmetrical;
  private Box box;
  private final Map<SteeringAxis, Around> around = new IdentityHashMap<>();

  private SpaceBody(String name, List<Prism> prisms, PartShape shape, Places places) {
    this.name = name;
    this.prisms = prisms;
    this.shape = shape;
    this.places = places;
  }

  /** Returns a body of outlines over breadths. */
  public static SpaceBody of(String name, List<Prism> prisms) {
    return new SpaceBody(name, prisms, null, null);
  }

  /**
   * Returns the body of a part.
   *
   * @param places where its pins are
   */
  public static SpaceBody of(PartShape shape, Places places) {
    return new SpaceBody(shape.part().name(), shape.prisms(), shape, places);
  }

  /** Returns whether its right side is the mirror image of its left. */
  boolean symmetrical() {
    if (symmetrical == null) {
      symmetrical = isSymmetrical();
    }
    return symmetrical;
  }

  private boolean isSymmetrical() {
    return prisms.stream().allMatch(p -> prisms.stream().anyMatch(q -> mirror(p, q)));
  }

  private static boolean mirror(Prism p, Prism q) {
    return p.outline() == q.outline() && p.across().mirrored().equals(q.across());
  }

  public String name() {
    return name;
  }

  /** The box of its outlines over their breadths, in the axes of the machine. */
  private record Box(Envelope side, double from, double to) {

    double apartMm(Box other) {
      if (side.isNull() || other.side.isNull()) {
        return Double.POSITIVE_INFINITY;
      }
      double across = Math.max(0, Math.max(from - other.to, other.from - to));
      return Math.hypot(side.distance(other.side), across);
    }
  }

  /** Returns a distance that the outlines of this and another keep as they are, mm. */
  double apartMm(SpaceBody other) {
    return box().apartMm(other.box());
  }

  private Box box() {
    if (box == null) {
      Envelope side = new Envelope();
      double from = Double.POSITIVE_INFINITY;
      double to = Double.NEGATIVE_INFINITY;
      for (Prism prism : prisms) {
        side.expandToInclude(prism.outline().getEnvelopeInternal());
        from = Math.min(from, prism.across().from());
        to = Math.max(to, prism.across().to());
      }
      box = new Box(side, from, to);
    }
    return box;
  }

  /** Returns its convex pieces. */
  List<Convex> pieces() {
    return lumps().stream().flatMap(lump -> lump.pieces().stream()).toList();
  }

  /** Returns what it is put together of. */
  List<Lump> lumps() {
    if (lumps == null) {
      lumps = isRound() ? List.of(whole()) : blocks();
    }
    return lumps;
  }

  private boolean isRound() {
    return shape != null
        && (shape.part() instanceof WheelPart
            || shape.part() instanceof TubePart
            || shape.part() instanceof FrontPart
            || shape.part() instanceof RestPart rest && rest.to().isEmpty());
  }

  /** What is round lies in the boxes of its outlines but for less than a millimetre. */
  private Lump whole() {
    return new Lump(
        prisms.stream().map(p -> new Lump.Room(box(p.outline()), p.across())).toList(),
        true,
        this::made);
  }

  private static Coordinate[] box(Geometry outline) {
    Envelope box = outline.getEnvelopeInternal();
    return box.isNull()
        ? new Coordinate[0]
        : new Coordinate[] {
          new Coordinate(box.getMinX(), box.getMinY()),
          new Coordinate(box.getMaxX(), box.getMinY()),
          new Coordinate(box.getMinX(), box.getMaxY()),
          new Coordinate(box.getMaxX(), box.getMaxY())
        };
  }

  private List<Lump> blocks() {
    List<Lump> blocks = new ArrayList<>();
    for (Prism prism : prisms) {
      blocks.add(
          new Lump(
              List.of(new Lump.Room(prism.outline().getCoordinates(), prism.across())),
              false,
              () -> blocks(prism)));
    }
    return blocks;
  }

  private static List<Convex> blocks(Prism prism) {
    return ConvexPieces.of(prism.outline()).stream()
        .<Convex>map(ring -> new Block(ring, prism.across()))
        .toList();
  }

  private List<Convex> made() {
    if (shape.part() instanceof WheelPart wheel) {
      return List.of(Rings.wheel(places.pin(wheel.axle()), Tyres.of(wheel, places)));
    }
    if (shape.part() instanceof TubePart tube) {
      List<PointMm> line = Shapes.centreLine(tube, places);
      double radius = places.value(tube.diameter()) / 2;
      double y = places.value(tube.y());
      List<Convex> rods = rods(line, y, radius, false);
      if (tube.both()) {
        rods.addAll(rods(line, -y, radius, false));
      }
      return rods;
    }
    if (shape.part() instanceof RestPart rest) {
      PointMm at = places.pin(rest.at());
      double radius = places.value(rest.diameter()) / 2;
      return prisms.stream()
          .map(Prism::across)
          .<Convex>map(i -> Rings.cylinder(at, radius, i.from(), i.to()))
          .toList();
    }
    FrontPart front = (FrontPart) shape.part();
    double radius = places.value(front.tube()) / 2;
    double y = places.value(front.y());
    List<PointMm> stem = List.of(places.pin(front.top()), places.pin(front.bottom()));
    List<PointMm> legs = Shapes.legs(front, places);
    List<Convex> rods = rods(stem, 0, radius, true);
    rods.addAll(rods(legs, y, radius, true));
    rods.addAll(rods(legs, -y, radius, true));
    return rods;
  }

  private static List<Convex> rods(List<PointMm> line, double y, double radius, boolean roundEnds) {
    List<Convex> rods = new ArrayList<>();
    for (int i = 1; i < line.size(); i++) {
      boolean first = roundEnds || i > 1;
      boolean last = roundEnds || i + 1 < line.size();
      rods.add(new Rod(line.get(i - 1), line.get(i), y, radius, first, last));
    }
    return rods;
  }

  /** Returns the room about an axis that it keeps to, or null if it is nowhere. */
  Around around(SteeringAxis axis) {
    return around.computeIfAbsent(axis, this::measured);
  }

  private Around measured(SteeringAxis axis) {
    Around all = null;
    for (Lump lump : lumps()) {
      Around one = lump.around(axis);
      all = all == null || one == null ? one == null ? all : one : all.with(one);
    }
    return all;
  }
}
