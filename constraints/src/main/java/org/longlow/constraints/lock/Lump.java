package org.longlow.constraints.lock;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.space.Block;
import org.longlow.constraints.space.Piece;
import org.longlow.rider.geom.PointMm;

/**
 * Some of a body, with the room that it keeps to about an axis: it is cut into convex pieces only
 * once something comes near that room. For one thread.
 */
final class Lump {

  private final List<Room> rooms;
  private final Supplier<List<Piece>> cut;
  private final Map<SteeringAxis, Around> around = new IdentityHashMap<>(2);
  private final Map<SteeringAxis, List<Roomed>> about = new IdentityHashMap<>(2);
  private final Map<SteeringAxis, List<Roomed>> hulls = new IdentityHashMap<>(2);
  private boolean isCut;
  private List<Piece> pieces;

  /** A piece, the middle of the box round it, and the room about an axis that it keeps to. */
  record Roomed(Piece body, double[] middle, Around room) {

    static Roomed of(Piece body, SteeringAxis axis) {
      Piece.Box box = body.box();
      double[] middle = {box.middle(0), box.middle(1), box.middle(2)};
      return new Roomed(body, middle, Lump.around(axis, body));
    }
  }

  /** The hull of points of the elevation over a breadth. */
  record Room(Coordinate[] corners, Interval across) {}

  /**
   * @param rooms what holds it
   * @param isCut whether it takes no work to make its pieces
   * @param cut makes its pieces
   */
  Lump(List<Room> rooms, boolean isCut, Supplier<List<Piece>> cut) {
    this.rooms = rooms;
    this.isCut = isCut;
    this.cut = cut;
  }

  List<Piece> pieces() {
    if (pieces == null) {
      pieces = cut.get();
      isCut = true;
    }
    return pieces;
  }

  /** Returns its pieces. */
  List<Roomed> pieces(SteeringAxis axis) {
    return about.computeIfAbsent(
        axis, a -> pieces().stream().map(body -> Roomed.of(body, a)).toList());
  }

  /** Returns whether it is in pieces already. */
  boolean isCut() {
    return isCut;
  }

  /** Returns fewer pieces that hold it, or its own where it is cut already. */
  List<Roomed> hulls(SteeringAxis axis) {
    return isCut
        ? pieces(axis)
        : hulls.computeIfAbsent(
            axis,
            a ->
                rooms.stream()
                    .filter(room -> room.corners.length > 0)
                    .map(room -> Roomed.of(hull(room), a))
                    .toList());
  }

  private static Piece hull(Room room) {
    double[] corners = new double[2 * room.corners.length];
    for (int i = 0; i < room.corners.length; i++) {
      corners[2 * i] = room.corners[i].x;
      corners[2 * i + 1] = room.corners[i].y;
    }
    return new Block(
        corners,
        room.across.from(),
        room.across.to()); // how far a hull reaches, its corners tell in any order
  }

  /** Returns the room about an axis that it keeps to, or null if it is nowhere. */
  Around around(SteeringAxis axis) {
    return around.computeIfAbsent(axis, this::measured);
  }

  private Around measured(SteeringAxis axis) {
    Around all = null;
    for (Room room : rooms) {
      if (room.corners.length > 0) {
        Around one = around(axis, room);
        all = all == null ? one : all.with(one);
      }
    }
    return all;
  }

  private static Around around(SteeringAxis axis, Room room) {
    double[] from = {Double.POSITIVE_INFINITY, room.across.from(), Double.POSITIVE_INFINITY};
    double[] to = {Double.NEGATIVE_INFINITY, room.across.to(), Double.NEGATIVE_INFINITY};
    for (Coordinate corner : room.corners) {
      double ahead = axis.aheadMm(corner.x, corner.y);
      double along = axis.alongMm(corner.x, corner.y);
      from[0] = Math.min(from[0], ahead);
      to[0] = Math.max(to[0], ahead);
      from[2] = Math.min(from[2], along);
      to[2] = Math.max(to[2], along);
    }
    return Around.box(from, to);
  }

  private static Around around(SteeringAxis axis, Piece piece) {
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
