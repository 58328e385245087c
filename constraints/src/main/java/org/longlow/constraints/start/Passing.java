package org.longlow.constraints.start;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.lock.LockWay;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Rod;
import org.longlow.rider.geom.PointMm;

/**
 * Whether something keeps off the legs of everybody on the rider's seat, as it stands or on the way
 * to full lock. Places are counted from the rear end of the pan.
 */
final class Passing {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static final double GAP_MM = Draft.mmOf(Demands.Key.PERSON_GAP);

  private final List<SpaceBody> legs;
  private final LockWay still = new LockWay(0);
  private final LockWay way = new LockWay(Draft.mmOf(Demands.Key.LOCK));

  Passing(Posed posed) {
    legs =
        posed.sittings().stream()
            .flatMap(s -> s.fineLimbs().entrySet().stream())
            .filter(limb -> Posed.LEGS.contains(limb.getKey()))
            .map(limb -> SpaceBody.of(limb.getKey(), limb.getValue()))
            .toList();
  }

  /** A pair of blocks, one on each side. */
  static SpaceBody blocks(Envelope side, double fromYMm, double toYMm) {
    return pair(new Prism(FACTORY.toGeometry(side), new Interval(fromYMm, toYMm)));
  }

  /** A pair of round bars, one on each side. */
  static SpaceBody bars(PointMm from, PointMm to, double yMm, double wideMm) {
    double r = wideMm / 2;
    Rod rod = new Rod(from, to, yMm, r, true, true);
    return pair(
        new Prism(Curves.bar(from, to, wideMm), new Interval(yMm - r, yMm + r), List.of(rod)));
  }

  private static SpaceBody pair(Prism left) {
    List<Piece> right = left.pieces().stream().map(Piece::mirrored).toList();
    return SpaceBody.of(
        "pair", List.of(left, new Prism(left.outline(), left.across().mirrored(), right)));
  }

  /** Whether it does as it stands. */
  boolean stands(SpaceBody thing, SteeringAxis axis) {
    return legs.stream().allMatch(leg -> still.past(axis, thing, leg, GAP_MM).isEmpty());
  }

  /** Whether it does when it turns about an axis. */
  boolean turns(SpaceBody thing, SteeringAxis axis) {
    return legs.stream().allMatch(leg -> way.past(axis, thing, leg, GAP_MM).isEmpty());
  }
}
