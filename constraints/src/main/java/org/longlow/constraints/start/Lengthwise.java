package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.start.SeatKit.Spots;
import org.longlow.rider.geom.PointMm;

/** Where everything is along the machine, mm ahead of the rear contact point. */
final class Lengthwise {

  /** A rail from the pivot to the back that reaches farther ahead would lie too flat, mm. */
  private static final double FLATTEST_BACK_RAIL_MM = 170;

  /** Legs lower than this under the top of the head are in no way of the bars, mm. */
  private static final double BAR_BELOW_MM = 60;

  /** The widest boot reaches so far in from the edge of its board, mm. */
  private static final double BOOT_IN_MM = 9;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static final double USUAL_WHEELBASE_MM = 1500;

  final Brief brief;
  final Rolling rolling;
  final Cargo cargo;
  final Posed posed;
  final Tuning tuning;
  final Optional<Pillion> pillion;

  final double behindFromMm;
  final double backKnotMm;

  /** Whether the rail of the back stands on the lower rails, else on the swingarm's pivot. */
  final boolean hangsOnFloor;

  final double seatXMm;

  /** Rear end of the second seat's pan; NaN without one. */
  final double pillionXMm;

  final double underFromMm;
  final double floorKnotMm;
  final double aheadFromMm;

  /** The shortest wheelbase that may be asked for. */
  final double leastWheelbaseMm;

  final double wheelbaseMm;
  final double floorFrontMm;

  Lengthwise(
      Brief brief,
      Rolling rolling,
      Cargo cargo,
      Posed posed,
      Optional<Pillion> pillion,
      Tuning tuning) {
    this.brief = brief;
    this.rolling = rolling;
    this.cargo = cargo;
    this.posed = posed;
    this.pillion = pillion;
    this.tuning = tuning;
    behindFromMm = rolling.pivot.x() + Rolling.RAIL_MM / 2 + 30;
    boolean full = !cargo.behind().isEmpty();
    double behindTo = behindFromMm + Cargo.lengthMm(cargo.behind());
    double least =
        full
            ? behindTo + Rails.THIN_MM / 2 + 4 - backFoot().x()
            : rolling.pivot.x() + Rails.SEAT_FROM_PIVOT_MM;
    seatXMm = Math.ceil(seatPlace(least) + tuning.seatAheadMm());
    pillionXMm = seatXMm + posed.pillionFromSeat().x();
    backKnotMm = seatXMm + backFoot().x();
    hangsOnFloor = full || backKnotMm - rolling.pivot.x() > FLATTEST_BACK_RAIL_MM;
    boolean packed = full || Rails.wide(rolling, cargo);
    double beforePivot = rolling.pivot.x() + Rails.fromPivotMm(brief);
    double beforeRail = backKnotMm + Rails.BEFORE_MM;
    double row = Cargo.lengthMm(cargo.under());
    double underPan = seatXMm + Rails.PAN_ROOM_MM - Rails.THIN_MM / 2 - row;
    underFromMm = Math.max(packed ? beforeRail : underPan, beforePivot);
    double underTo = underFromMm + row;
    double end = underTo + Rails.THIN_MM / 2 + Rails.sloping(rolling, cargo);
    floorKnotMm = Math.max(seatXMm + Rails.PAN_ROOM_MM, end);
    aheadFromMm = floorKnotMm + Rails.THIN_MM / 2 + Cargo.APART_MM;
    double aheadTo =
        cargo.ahead().isEmpty()
            ? floorKnotMm + 60
            : aheadFromMm + Cargo.lengthMm(cargo.ahead()) + Rolling.RAIL_MM / 2;
    double steer = rolling.front.freeRadiusMm() + SteerRoom.mm(rolling, brief.front());
    double farEnough = pastForkLegs(Math.max(aheadTo + steer, beforeLegs()));
    leastWheelbaseMm = Math.ceil(besideFeet(farEnough));
    wheelbaseMm =
        Double.isNaN(brief.wheelbaseMm())
            ? Math.max(USUAL_WHEELBASE_MM, Math.ceil(leastWheelbaseMm / 10) * 10)
                + tuning.longerMm()
            : brief.wheelbaseMm();
    floorFrontMm = wheelbaseMm - steer;
  }

  /**
   * The farthest back that the seat can be: its back keeps off the rear wheel's guard at full bump
   * and off what is behind it.
   *
   * @param leastMm not farther back than this
   */
  private double seatPlace(double leastMm) {
    PointMm wheel = new PointMm(0, rolling.rear.freeRadiusMm() + Rolling.BUMP_MM);
    double round = rolling.rear.freeRadiusMm() + Rolling.GUARD_OFF_MM + 4;
    double x = leastMm;
    double behind =
        posed.kit().head.isPresent() ? Rails.BEHIND_MM + Rails.STAY_MM / 2 : SeatKit.BOARD_MM;
    while (behindBackMm(x, wheel) < round + behind + 8 || !clears(x)) {
      x++;
    }
    return x;
  }

  private boolean clears(double seatX) {
    double off = Rails.BEHIND_MM + Rails.THIN_MM / 2 + 8;
    return cargo.behind().stream()
        .allMatch(
            item -> {
              double top = Rails.DECK_MM + item.heightMm();
              return behindBackMm(seatX, new PointMm(behindFromMm + item.lengthMm(), top)) >= off
                  && behindBackMm(seatX, new PointMm(behindFromMm + item.lowMm(), top)) >= off;
            });
  }

  /** How far a place is behind the face of the back's board, mm. */
  private double behindBackMm(double seatX, PointMm at) {
    double lean = Math.toRadians(brief.reclineDeg());
    PointMm low = new PointMm(seatX, posed.seatHeightMm()).plus(SeatKit.BACK_FROM_PAN);
    PointMm up = new PointMm(-Math.sin(lean), Math.cos(lean));
    PointMm from = at.minus(low);
    double along = Math.max(0, Math.min(posed.kit().backMm, from.dot(up)));
    double away = at.distance(low.plus(up.times(along)));
    return from.dot(up.left()) > 0 ? away : -away;
  }

  /** The shortest wheelbase with which the head, and the bars on it, stand before all legs. */
  private double beforeLegs() {
    PointMm top = rolling.headTop(0);
    double stem = 14 + Rolling.FORK_TUBE_MM / 2;
    // knees meet in the middle; shanks and feet pass beside the head, but not beside the bars
    double knees = posed.aheadMm(Set.of("thigh"), rolling.headHeightMm - 10) + stem;
    double legs = posed.aheadMm(Posed.LEGS, top.z() - BAR_BELOW_MM) + Rails.BAR_ROOM_MM;
    double ahead = Math.max(knees, legs);
    return Double.isInfinite(ahead) ? 0 : seatXMm + ahead - top.x();
  }

  /** The shortest wheelbase with which the legs of a fork that carries links pass legs. */
  private double pastForkLegs(double leastMm) {
    if (brief.front() == FrontPart.Kind.TELESCOPIC) {
      return leastMm;
    }
    Passing passing = new Passing(posed);
    PointMm pan = of(PointMm.ORIGIN);
    return SteerRoom.axleAheadMm(
        leastMm,
        axle -> {
          PointMm low = rolling.linkPivot(brief.front(), axle).minus(pan);
          PointMm high = rolling.headBottom(axle).minus(pan);
          return passing.turns(
              Passing.bars(low, high, rolling.forkYMm, Rolling.FORK_TUBE_MM),
              SteeringAxis.through(high, rolling.headTop(axle).minus(pan)));
        });
  }

  /** The shortest wheelbase with which the turned wheel passes feet, and the boards they are on. */
  private double besideFeet(double leastMm) {
    Coordinate[] board = new Coordinate[] {at(of(spots().board())), at(of(spots().boardFront()))};
    List<Geometry> feet = new ArrayList<>(posed.outlines(Set.of("foot")));
    feet.replaceAll(
        g -> AffineTransformation.translationInstance(seatXMm, posed.seatHeightMm()).transform(g));
    feet.add(FACTORY.createLineString(board).buffer(SeatKit.REST_THICK_MM / 2));
    double boards = posed.kit().feetYMm - SeatKit.REST_WIDE_MM / 2;
    double pastFeet = pastTurned(FACTORY.buildGeometry(feet), boards - BOOT_IN_MM, leastMm);
    PointMm stay = of(spots().board().towards(spots().boardFront(), Rails.STAY_BACK));
    Coordinate[] down = new Coordinate[] {at(stay), new Coordinate(stay.x(), Rolling.FLOOR_MM)};
    return pastTurned(
        FACTORY.createLineString(down).buffer(Rails.STAY_MM / 2),
        boards - Rails.STAY_BESIDE_MM - Rails.STAY_MM,
        pastFeet);
  }

  private double pastTurned(Geometry beside, double fromYMm, double leastMm) {
    return SteerRoom.axleAheadMm(rolling, brief.front(), beside, fromYMm, leastMm);
  }

  private static Coordinate at(PointMm p) {
    return new Coordinate(p.x(), p.z());
  }

  /** Where the back's rail takes up the slope of the back, from the pan's rear end. */
  PointMm backFoot() {
    return Rails.backFoot(posed.kit());
  }

  /** Returns a place counted from the pan's rear end as one of the machine. */
  PointMm of(PointMm fromPan) {
    return fromPan.plus(new PointMm(seatXMm, posed.seatHeightMm()));
  }

  Spots spots() {
    return posed.spots();
  }
}
