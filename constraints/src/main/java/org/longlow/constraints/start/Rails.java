package org.longlow.constraints.start;

import org.longlow.constraints.layout.SolidPart;
import org.longlow.rider.geom.PointMm;

/**
 * How thick the tubes about the seat are, and how they run to it whoever sits there: what must be
 * known before anybody is seated.
 */
final class Rails {

  static final double THIN_MM = 28;

  /** Middle of the back's rail behind the face of its board, mm: board, bracket, half the tube. */
  static final double BEHIND_MM = 34;

  /** Middle of the seat's rail under the face of the pan's board, mm. */
  static final double UNDER_MM = 42;

  /** Top of the lower rails, on which things stand, over the road, mm. */
  static final double DECK_MM = Rolling.FLOOR_MM + Rolling.RAIL_MM / 2;

  /** Where the rails under the pan come down ahead of it, from its rear end, mm. */
  static final double PAN_ROOM_MM = 330;

  /** Where the room between the shanks begins, from the rear end of the pan, mm. */
  static final double AHEAD_FROM_PAN_MM = PAN_ROOM_MM + THIN_MM / 2 + Cargo.APART_MM;

  /** The back's rail takes up the slope of the back so far over the pan's rear end, mm. */
  static final double BACK_FOOT_UP_MM = 45;

  /** What stands under the pan begins so far ahead of the rail of the back, mm. */
  static final double BEFORE_MM = THIN_MM / 2 + Cargo.APART_MM;

  /** And of the swingarm's pivot: an exhaust rises there. */
  private static final double PIPE_FROM_PIVOT_MM = 75;

  private static final double PLAIN_FROM_PIVOT_MM = 48;

  /** The seat is at least so far ahead of the pivot, mm. */
  static final double SEAT_FROM_PIVOT_MM = 60;

  /** Where the rails come down ahead of the pan, their lower end is so far ahead, mm. */
  static final double SLOPES_MM = 42;

  /** Tube of the bars up to the grips, mm. */
  static final double BAR_MM = 22;

  /** Turned to full lock one side of the bars comes down and back over a knee, mm. */
  static final double BAR_OVER_KNEES_MM = 95;

  /** Legs as high as the bars keep so far behind the head, mm. */
  static final double BAR_ROOM_MM = BAR_MM / 2 + BAR_OVER_KNEES_MM + 3;

  /** Tube of the stays that hold boards and head rest, mm. */
  static final double STAY_MM = 18;

  /** A stay of a board ends so far inside of it, clear of the widest boot, mm. */
  static final double STAY_BESIDE_MM = 22.5;

  /** Where ahead of the rails, it holds the board under the heel: so far from its rear end. */
  static final double STAY_BACK = 0.12;

  private Rails() {}

  /** Where the back's rail takes up the slope of the back, from the pan's rear end. */
  static PointMm backFoot(SeatKit kit) {
    double lean = Math.toRadians(kit.reclineDeg);
    PointMm up = new PointMm(-Math.sin(lean), Math.cos(lean));
    PointMm line = SeatKit.BACK_FROM_PAN.plus(up.left().times(BEHIND_MM));
    return line.plus(up.times((BACK_FOOT_UP_MM - line.z()) / up.z()));
  }

  /** Whether something under the pan is as wide as the rails beside it. */
  static boolean wide(Rolling rolling, Cargo cargo) {
    double rails = rolling.railYMm - THIN_MM / 2 - 4;
    return cargo.under().stream().anyMatch(i -> i.halfMm() > rails);
  }

  /** What is as wide as the rails must end where these still come down from under the pan. */
  static double sloping(Rolling rolling, Cargo cargo) {
    boolean engine = cargo.under().stream().anyMatch(i -> i.kind() == SolidPart.Kind.ENGINE);
    return wide(rolling, cargo) && !engine ? SLOPES_MM : 0;
  }

  /** How far ahead of the pivot what stands under the pan may begin, mm. */
  static double fromPivotMm(Brief brief) {
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
      from = Math.max(from, backFoot(kit).x() + BEFORE_MM);
    }
    double to = from + Cargo.lengthMm(cargo.under()) + THIN_MM / 2 + sloping(rolling, cargo);
    return Math.max(PAN_ROOM_MM, to) - SLOPES_MM;
  }
}
