package org.longlow.constraints.start;

import org.longlow.constraints.check.road.RunFindings;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.rider.geom.PointMm;

/**
 * Wheels and what carries them, before anything is known of who sits between: mm, the rear contact
 * point at 0, the front wheel's place counted from its own axle.
 */
final class Rolling {

  // Rake, trail, travels and tubes are those of middling road machines: common practice, from
  // memory.
  static final double RAKE_DEG = 26;
  static final double TRAIL_MM = 90;
  static final double HEAD_LENGTH_MM = 150;
  static final double FORK_TUBE_MM = 36;
  static final double ARM_DEPTH_MM = 45;

  /** Wheels are drawn where the heaviest load presses them: a third of their travel from droop. */
  static final double BUMP_MM = 64;

  static final double DROOP_MM = 32;

  static final double LINK_MM = 120;
  static final double LINK_FALL_DEG = 8;
  static final double RAIL_MM = 32;
  static final double RAIL_WALL_MM = 2;

  /** Middle of the lower rails above the road; the header hangs lowest and keeps the belly. */
  static final double FLOOR_MM = 190;

  /**
   * Chains 428 to 520 over their pins, mm, from memory; a broader one needs the legs farther out.
   */
  static final double CHAIN_MM = 18;

  /** Discs of brakes are so thick, mm; common practice, from memory. */
  static final double DISC_WIDE_MM = 5;

  /** A leg of the swingarm beside the tyre, mm; as the findings ask. */
  private static final double ARM_LEG_MM = 18;

  /** Guards stand so far off their tyre, mm, beyond the gap that tyres ask for. */
  static final double GUARD_OFF_MM = 28;

  private static final double SLACK_MM = 3;

  final Tyre front;
  final Tyre rear;
  final double forkYMm;
  final double railYMm;
  final double armHalfMm;

  /** Middle of the chain on the left, between tyre and leg of the arm; 0 where there is none. */
  final double chainYMm;

  /** Middle of the disc beside a motor in the hub. */
  final double hubDiscYMm;

  final PointMm pivot;
  final double armMm;
  final double headHeightMm;

  Rolling(Brief brief) {
    front = brief.tyreAhead();
    rear = brief.tyreBehind();
    double gap = Draft.mmOf(Demands.Key.TYRE_GAP);
    forkYMm = Math.ceil(front.widthMm() / 2 + gap + SLACK_MM + FORK_TUBE_MM / 2);
    chainYMm =
        brief.place() == Answers.Place.HUB
            ? 0
            : Math.ceil(rear.widthMm() / 2 + RunFindings.BESIDE_TYRE_MM + CHAIN_MM / 2);
    double free = Draft.mmOf(Demands.Key.GAP);
    double chain = chainYMm + CHAIN_MM / 2 + free;
    double motor = brief.place() == Answers.Place.HUB ? brief.box().breadthMm() / 2 : 0;
    hubDiscYMm = motor + free + DISC_WIDE_MM / 2;
    double hub = motor == 0 ? 0 : hubDiscYMm + DISC_WIDE_MM / 2 + free;
    armHalfMm =
        Math.ceil(
            Math.max(Math.max(rear.widthMm() / 2 + gap + SLACK_MM, chain), hub + SLACK_MM)
                + ARM_LEG_MM);
    railYMm =
        Math.ceil(
            Math.max(
                forkYMm + FORK_TUBE_MM / 2 + SLACK_MM * 2 + RAIL_MM / 2,
                armHalfMm + SLACK_MM * 2 + RAIL_MM / 2));
    armMm = Math.ceil(rear.freeRadiusMm() + gap + ARM_DEPTH_MM / 2 + 24);
    double pivotUp = Math.rint(rear.freeRadiusMm() + 8);
    double rise = pivotUp - rear.freeRadiusMm();
    pivot = new PointMm(Math.sqrt(armMm * armMm - rise * rise), pivotUp);
    headHeightMm = headHeight(brief);
  }

  /** The lowest that the head can be over the wheel and its guard at full bump. */
  private double headHeight(Brief brief) {
    double clear = front.freeRadiusMm() + GUARD_OFF_MM + 4 + FORK_TUBE_MM / 2 + 10;
    PointMm wheel = bumped(brief.front());
    double z = front.freeRadiusMm();
    while (wheel.distance(new PointMm(axisAheadMm(z), z)) < clear || z < wheel.z()) {
      z++;
    }
    return Math.ceil(z / 5) * 5;
  }

  /** Returns about where the front axle is at full bump, from where it is drawn over the road. */
  PointMm bumped(FrontPart.Kind kind) {
    boolean slides = kind == FrontPart.Kind.TELESCOPIC;
    double back = slides ? BUMP_MM * Math.tan(Math.toRadians(RAKE_DEG)) : 12;
    return new PointMm(-back, front.freeRadiusMm() + BUMP_MM);
  }

  /** Returns how far ahead of the front axle the steering axis is at a height, mm. */
  double axisAheadMm(double zMm) {
    return TRAIL_MM - zMm * Math.tan(Math.toRadians(RAKE_DEG));
  }

  PointMm headBottom(double wheelbaseMm) {
    return new PointMm(wheelbaseMm + axisAheadMm(headHeightMm), headHeightMm);
  }

  PointMm headTop(double wheelbaseMm) {
    double up = headHeightMm + HEAD_LENGTH_MM * Math.cos(Math.toRadians(RAKE_DEG));
    return new PointMm(wheelbaseMm + axisAheadMm(up), up);
  }

  /** The pivot of a link, a little over the axle: behind it on a leading link. */
  PointMm linkPivot(FrontPart.Kind kind, double wheelbaseMm) {
    double ahead = kind == FrontPart.Kind.LEADING_LINK ? -LINK_MM : LINK_MM;
    double fall = Math.toRadians(LINK_FALL_DEG);
    return new PointMm(wheelbaseMm, front.freeRadiusMm())
        .plus(new PointMm(ahead * Math.cos(fall), LINK_MM * Math.sin(fall)));
  }

  /** Half the breadth that legs straddle: rails, and the drive if it is between them. */
  double straddledMm(Brief brief) {
    double rails = railYMm + RAIL_MM / 2;
    boolean between = brief.place() == Answers.Place.BEFORE;
    return between ? Math.max(rails, brief.box().breadthMm() / 2) : rails;
  }
}
