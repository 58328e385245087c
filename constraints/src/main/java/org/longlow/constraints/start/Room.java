package org.longlow.constraints.start;

import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.start.SeatKit.Spots;
import org.longlow.rider.geom.PointMm;

/** Where everything is along the machine, mm ahead of the rear contact point. */
final class Room {

  static final double RAIL_THIN_MM = 28;

  /** Middle of the back's rail behind the face of its board, mm: board, bracket, half the tube. */
  static final double RAIL_BEHIND_MM = 34;

  /** Middle of the seat's rail under the face of the pan's board, mm. */
  static final double RAIL_UNDER_MM = 42;

  /** Room for the front wheel to turn to full lock, from its tyre to the rails behind it, mm. */
  static final double STEER_ROOM_MM = 90;

  /** Top of the lower rails, on which things stand, over the road, mm. */
  static final double DECK_MM = Rolling.FLOOR_MM + Rolling.RAIL_MM / 2;

  /** Where the rails under the pan come down ahead of it, from its rear end, mm. */
  private static final double PAN_ROOM_MM = 330;

  /** Where the room between the shanks begins, from the rear end of the pan, mm. */
  static final double AHEAD_FROM_PAN_MM = PAN_ROOM_MM + RAIL_THIN_MM / 2 + Cargo.APART_MM;

  /** The back's rail takes up the slope of the back so far over the pan's rear end, mm. */
  static final double BACK_FOOT_UP_MM = 45;

  /** What stands under the pan begins so far ahead of the rail of the back, mm. */
  private static final double BEFORE_RAIL_MM = RAIL_THIN_MM / 2 + Cargo.APART_MM;

  /** And of the swingarm's pivot: an exhaust rises there. */
  private static final double PIPE_FROM_PIVOT_MM = 75;

  private static final double PLAIN_FROM_PIVOT_MM = 48;

  /** The seat is at least so far ahead of the pivot, mm. */
  private static final double SEAT_FROM_PIVOT_MM = 60;

  /** Where the rails come down ahead of the pan, their lower end is so far ahead, mm. */
  static final double SEAT_RAIL_SLOPES_MM = 42;

  /** A rail from the pivot to the back that reaches farther ahead would lie too flat, mm. */
  private static final double FLATTEST_BACK_RAIL_MM = 170;

  /** Legs lower than this under the top of the head are in no way of the bars, mm. */
  private static final double BAR_BELOW_MM = 45;

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
  final double leastWheelbaseMm;
  final double wheelbaseMm;
  final double floorFrontMm;

  Room(
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
            ? behindTo + RAIL_THIN_MM / 2 + 4 - backFoot().x()
            : rolling.pivot.x() + SEAT_FROM_PIVOT_MM;
    seatXMm = Math.ceil(seatPlace(least) + tuning.seatAheadMm());
    pillionXMm = seatXMm + posed.pillionFromSeat().x();
    backKnotMm = seatXMm + backFoot().x();
    hangsOnFloor = full || backKnotMm - rolling.pivot.x() > FLATTEST_BACK_RAIL_MM;
    boolean packed = full || wide(rolling, cargo);
    double beforePivot = rolling.pivot.x() + fromPivotMm(brief);
    double beforeRail = backKnotMm + BEFORE_RAIL_MM;
    double row = Cargo.lengthMm(cargo.under());
    double underPan = seatXMm + PAN_ROOM_MM - RAIL_THIN_MM / 2 - row;
    underFromMm = Math.max(packed ? beforeRail : underPan, beforePivot);
    double underTo = underFromMm + row;
    double end = underTo + RAIL_THIN_MM / 2 + sloping(rolling, cargo);
    floorKnotMm = Math.max(seatXMm + PAN_ROOM_MM, end);
    aheadFromMm = floorKnotMm + RAIL_THIN_MM / 2 + Cargo.APART_MM;
    double aheadTo =
        cargo.ahead().isEmpty()
            ? floorKnotMm + 60
            : aheadFromMm + Cargo.lengthMm(cargo.ahead()) + Rolling.RAIL_MM / 2;
    double steer = rolling.front.freeRadiusMm() + STEER_ROOM_MM;
    leastWheelbaseMm = Math.ceil(Math.max(aheadTo + steer, beforeLegs()) / 10) * 10;
    wheelbaseMm =
        Double.isNaN(brief.wheelbaseMm())
            ? Math.max(USUAL_WHEELBASE_MM, leastWheelbaseMm) + tuning.longerMm()
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
        posed.kit().head.isPresent() ? RAIL_BEHIND_MM + Seating.STAY_MM / 2 : SeatKit.BOARD_MM;
    while (behindBackMm(x, wheel) < round + behind + 8 || !clears(x)) {
      x++;
    }
    return x;
  }

  private boolean clears(double seatX) {
    double off = RAIL_BEHIND_MM + RAIL_THIN_MM / 2 + 8;
    return cargo.behind().stream()
        .allMatch(
            item -> {
              double top = DECK_MM + item.heightMm();
              // of an engine the cylinder stands high, the gearbox behind it does not
              double rear =
                  item.kind() == SolidPart.Kind.ENGINE ? Cargo.LOW_SHARE * item.lengthMm() : 0;
              return behindBackMm(seatX, new PointMm(behindFromMm + item.lengthMm(), top)) >= off
                  && behindBackMm(seatX, new PointMm(behindFromMm + rear, top)) >= off;
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
    double legs = posed.aheadMm(Posed.LEGS, top.z() - BAR_BELOW_MM) + Seating.BAR_ROOM_MM;
    double ahead = Math.max(knees, legs);
    return Double.isInfinite(ahead) ? 0 : seatXMm + ahead - top.x();
  }

  /** Where the back's rail takes up the slope of the back, from the pan's rear end. */
  PointMm backFoot() {
    return backFoot(posed.kit());
  }

  private static PointMm backFoot(SeatKit kit) {
    double lean = Math.toRadians(kit.reclineDeg);
    PointMm up = new PointMm(-Math.sin(lean), Math.cos(lean));
    PointMm line = SeatKit.BACK_FROM_PAN.plus(up.left().times(RAIL_BEHIND_MM));
    return line.plus(up.times((BACK_FOOT_UP_MM - line.z()) / up.z()));
  }

  /** Whether something under the pan is as wide as the rails beside it. */
  private static boolean wide(Rolling rolling, Cargo cargo) {
    double rails = rolling.railYMm - RAIL_THIN_MM / 2 - 4;
    return cargo.under().stream().anyMatch(i -> i.halfMm() > rails);
  }

  /** What is as wide as the rails must end where these still come down from under the pan. */
  private static double sloping(Rolling rolling, Cargo cargo) {
    boolean engine = cargo.under().stream().anyMatch(i -> i.kind() == SolidPart.Kind.ENGINE);
    return wide(rolling, cargo) && !engine ? SEAT_RAIL_SLOPES_MM : 0;
  }

  /** How far ahead of the pivot what stands under the pan may begin, mm. */
  private static double fromPivotMm(Brief brief) {
    return brief.electric() ? PLAIN_FROM_PIVOT_MM : PIPE_FROM_PIVOT_MM;
  }

  /**
   * The farthest ahead of the pan's rear end that the rails under it bend down, with the seat as
   * far back as it goes, mm. What is under the pan begins at the pivot then, or at the rail of the
   * back where it is packed.
   */
  static double seatBendFromPanMm(Brief brief, SeatKit kit, Rolling rolling, Cargo cargo) {
    double from = fromPivotMm(brief) - SEAT_FROM_PIVOT_MM;
    if (wide(rolling, cargo) || !cargo.behind().isEmpty()) {
      from = Math.max(from, backFoot(kit).x() + BEFORE_RAIL_MM);
    }
    double to = from + Cargo.lengthMm(cargo.under()) + RAIL_THIN_MM / 2 + sloping(rolling, cargo);
    return Math.max(PAN_ROOM_MM, to) - SEAT_RAIL_SLOPES_MM;
  }

  /** Returns a place counted from the pan's rear end as one of the machine. */
  PointMm of(PointMm fromPan) {
    return fromPan.plus(new PointMm(seatXMm, posed.seatHeightMm()));
  }

  Spots spots() {
    return posed.spots();
  }
}
