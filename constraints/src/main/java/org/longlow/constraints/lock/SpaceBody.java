package org.longlow.constraints.lock;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;

/** A body in space, cut into convex pieces when asked for. For one thread. */
public final class SpaceBody {

  private final String name;
  private final List<Prism> prisms;
  private List<Lump> lumps;
  private Boolean symmetrical;
  private Box box;
  private final Map<SteeringAxis, Around> around = new IdentityHashMap<>();

  private SpaceBody(String name, List<Prism> prisms) {
    this.name = name;
    this.prisms = prisms;
  }

  /** Returns a body of outlines over breadths. */
  public static SpaceBody of(String name, List<Prism> prisms) {
    return new SpaceBody(name, prisms);
  }

  /** Returns the body of a part. */
  public static SpaceBody of(PartShape shape) {
    return new SpaceBody(shape.part().name(), shape.prisms());
  }

  /** Returns what it is made of; the same object of bodies made of the same. */
  public List<Prism> madeOf() {
    return prisms;
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
  public double apartMm(SpaceBody other) {
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
  List<Piece> pieces() {
    return lumps().stream().flatMap(lump -> lump.pieces().stream()).toList();
  }

  /** Returns what it is put together of. */
  List<Lump> lumps() {
    if (lumps == null) {
      lumps = prisms.stream().map(SpaceBody::lump).toList();
    }
    return lumps;
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

  private static Lump lump(Prism prism) {
    // what is round lies in the box of its outline but for less than a millimetre
    Coordinate[] corners = prism.isFull() ? prism.outline().getCoordinates() : box(prism.outline());
    return new Lump(
        List.of(new Lump.Room(corners, prism.across())), !prism.isFull(), prism::convex);
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
