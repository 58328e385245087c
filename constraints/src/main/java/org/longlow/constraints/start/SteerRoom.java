package org.longlow.constraints.start;

import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.rider.geom.PointMm;

/** The room that a front wheel takes behind it when it is turned to full lock at full bump. */
final class SteerRoom {

  /** From the tyre to the lower rails, mm; a tall narrow wheel asks for more. */
  private static final double USUAL_MM = 99;

  private static final double SPARE_MM = 3;
  private static final double STEP_MM = 1;
  private static final int PLACES = 72;

  /** A wheel that legs are beside is sent ahead by so much, and back again by single ones, mm. */
  private static final double WHEELBASE_STEP_MM = 8;

  private SteerRoom() {}

  /** Returns how far behind the tyre the rails that rise to the head must begin, mm. */
  static double mm(Rolling rolling, FrontPart.Kind kind) {
    double room = USUAL_MM;
    while (railGapMm(rolling, kind, room) < askedMm()) {
      room += STEP_MM;
    }
    return room;
  }

  /**
   * Returns how far ahead of something the front axle must be for the turned tyre to pass it, mm.
   *
   * @param beside its outline in side view, over the road
   * @param fromYMm it and what is farther out on either side
   * @param leastMm not nearer than this
   */
  static double axleAheadMm(
      Rolling rolling, FrontPart.Kind kind, Geometry beside, double fromYMm, double leastMm) {
    return axleAheadMm(
        leastMm, axle -> gapMm(rolling, kind, behind(beside, axle), fromYMm) >= askedMm());
  }

  /** Returns the least place of the front axle, in steps, from which on something passes, mm. */
  static double axleAheadMm(double leastMm, DoublePredicate passes) {
    double axle = leastMm;
    while (!passes.test(axle)) {
      axle += WHEELBASE_STEP_MM;
    }
    while (axle - STEP_MM >= leastMm && passes.test(axle - STEP_MM)) {
      axle -= STEP_MM;
    }
    return axle;
  }

  private static ToDoubleFunction<PointMm> behind(Geometry beside, double axleMm) {
    return at ->
        beside.distance(beside.getFactory().createPoint(new Coordinate(at.x() + axleMm, at.z())));
  }

  private static double askedMm() {
    return Draft.mmOf(Demands.Key.TYRE_GAP) + SPARE_MM;
  }

  /** To the rail on one side that rises from the floor to the head. */
  private static double railGapMm(Rolling rolling, FrontPart.Kind kind, double roomMm) {
    PointMm low = new PointMm(-rolling.front.freeRadiusMm() - roomMm, Rolling.FLOOR_MM);
    PointMm high = rolling.headBottom(0);
    PointMm way = high.minus(low);
    ToDoubleFunction<PointMm> away =
        at ->
            at.distance(
                low.towards(high, Math.max(0, Math.min(1, at.minus(low).dot(way) / way.dot(way)))));
    return gapMm(rolling, kind, away, rolling.railYMm) - Rolling.RAIL_MM / 2;
  }

  /**
   * From the turned tyre, a ring about its axle, to something on one side.
   *
   * @param away how far a place in side view is from it, counted from the axle as drawn, mm
   * @param fromYMm how far out it begins; nothing turned is taken to be beyond
   */
  private static double gapMm(
      Rolling rolling, FrontPart.Kind kind, ToDoubleFunction<PointMm> away, double fromYMm) {
    double round = rolling.front.widthMm() / 2;
    double ring = rolling.front.freeRadiusMm() - round;
    SteeringAxis axis = SteeringAxis.through(rolling.headBottom(0), rolling.headTop(0));
    PointMm wheel = rolling.bumped(kind);
    double lock = Draft.mmOf(Demands.Key.LOCK);
    double least = Double.MAX_VALUE;
    for (int k = 0; k < PLACES; k++) {
      PointMm at = wheel.plus(PointMm.unit(2 * Math.PI * k / PLACES).times(ring));
      double ahead = axis.aheadMm(at);
      PointMm turned = axis.point(ahead * Math.cos(lock), axis.alongMm(at));
      double across = Math.max(0, fromYMm - Math.abs(ahead) * Math.sin(lock));
      least = Math.min(least, Math.hypot(away.applyAsDouble(turned), across));
    }
    return least - round;
  }
}
