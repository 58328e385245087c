package org.longlow.constraints.lock;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Rings;
import org.longlow.constraints.space.Rod;
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
  private List<Convex> pieces;
  private List<double[]> middles;
  private Boolean symmetrical;
  private Box box;
  private final Map<SteeringAxis, Around> around = new IdentityHashMap<>();
  private final Map<SteeringAxis, List<Around>> aroundPieces = new IdentityHashMap<>();

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
    return p.outline() == q.outline()
        && p.across().mirrored().equals(q.across())
        && p.pieces().size() == q.pieces().size()
        && p.pieces().stream().allMatch(piece -> q.pieces().contains(piece.mirrored()));
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

  List<Convex> pieces() {
    if (pieces == null) {
      pieces = shape == null ? blocks() : made();
    }
    return pieces;
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
    if (shape.part() instanceof RestPart rest && rest.to().isEmpty()) {
      PointMm at = places.pin(rest.at());
      double radius = places.value(rest.diameter()) / 2;
      return prisms.stream()
          .map(Prism::across)
          .<Convex>map(i -> Rings.cylinder(at, radius, i.from(), i.to()))
          .toList();
    }
    if (shape.part() instanceof FrontPart front) {
      double radius = places.value(front.tube()) / 2;
      double y = places.value(front.y());
      List<PointMm> stem = List.of(places.pin(front.top()), places.pin(front.bottom()));
      List<PointMm> legs = Shapes.legs(front, places);
      List<Convex> rods = rods(stem, 0, radius, true);
      rods.addAll(rods(legs, y, radius, true));
      rods.addAll(rods(legs, -y, radius, true));
      return rods;
    }
    return blocks();
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

  private List<Convex> blocks() {
    List<Convex> blocks = new ArrayList<>();
    prisms.forEach(prism -> blocks.addAll(prism.convex()));
    return blocks;
  }

  /** Returns the room about an axis that it keeps to, or null if it is nowhere. */
  Around around(SteeringAxis axis) {
    return around.computeIfAbsent(axis, this::measured);
  }

  private Around measured(SteeringAxis axis) {
    Around all = null;
    for (Prism prism : prisms) {
      Envelope box = prism.outline().getEnvelopeInternal();
      if (!box.isNull()) {
        Around one = around(axis, box, prism.across());
        all = all == null ? one : all.with(one);
      }
    }
    return all;
  }

  private static Around around(SteeringAxis axis, Envelope box, Interval across) {
    double[] from = {Double.POSITIVE_INFINITY, across.from(), Double.POSITIVE_INFINITY};
    double[] to = {Double.NEGATIVE_INFINITY, across.to(), Double.NEGATIVE_INFINITY};
    for (int k = 0; k < 4; k++) {
      double x = (k & 1) == 0 ? box.getMinX() : box.getMaxX();
      double z = (k & 2) == 0 ? box.getMinY() : box.getMaxY();
      double ahead = axis.aheadMm(x, z);
      double along = axis.alongMm(x, z);
      from[0] = Math.min(from[0], ahead);
      to[0] = Math.max(to[0], ahead);
      from[2] = Math.min(from[2], along);
      to[2] = Math.max(to[2], along);
    }
    return Around.box(from, to);
  }

  /** Returns the rooms about an axis that its pieces keep to, in their order. */
  List<Around> aroundPieces(SteeringAxis axis) {
    return aroundPieces.computeIfAbsent(
        axis, a -> pieces().stream().map(piece -> around(a, piece)).toList());
  }

  /** Returns the middles of its pieces, in their order. */
  List<double[]> middles() {
    if (middles == null) {
      middles = pieces().stream().map(SpaceBody::middle).toList();
    }
    return middles;
  }

  private static double[] middle(Convex piece) {
    double[] middle = new double[3];
    double[] point = new double[3];
    for (int k = 0; k < 3; k++) {
      for (int side = -1; side <= 1; side += 2) {
        double[] way = new double[3];
        way[k] = side;
        piece.farthest(way, point);
        middle[k] += point[k] / 2;
      }
    }
    return middle;
  }

  private static Around around(SteeringAxis axis, Convex piece) {
    PointMm up = axis.up();
    double[][] ways = {{up.z(), 0, -up.x()}, {0, 1, 0}, {up.x(), 0, up.z()}};
    double[] from = new double[3];
    double[] to = new double[3];
    double[] point = new double[3];
    for (int k = 0; k < 3; k++) {
      for (int side = -1; side <= 1; side += 2) {
        double[] way = {side * ways[k][0], side * ways[k][1], side * ways[k][2]};
        piece.farthest(way, point);
        double most =
            k == 0
                ? axis.aheadMm(point[0], point[2])
                : k == 1 ? point[1] : axis.alongMm(point[0], point[2]);
        (side < 0 ? from : to)[k] = most;
      }
    }
    return Around.box(from, to);
  }
}
