package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.mm;
import static org.longlow.constraints.start.Draft.text;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Shock;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.start.Parts.At;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Draws wheels, front, arm, guards and rails. */
final class Chassis {

  private static final double TAIL_UP_MM = 640;

  /** The strut meets the tail's rails at this share of their length from the back. */
  private static final double STRUT = 0.6;

  /** Thighs hang beside the second pan, so the rails under it keep off, mm. */
  private static final double UNDER_PILLION_MM = 19;

  private final Lengthwise room;
  private final Rolling rolling;
  private final Draft draft;

  Chassis(Lengthwise room, Draft draft) {
    this.room = room;
    this.rolling = room.rolling;
    this.draft = draft;
  }

  void draw() {
    measures();
    front();
    arm();
    rails();
    guards();
  }

  private void measures() {
    new TwoWheels(room.brief, draft)
        .draw(room.wheelbaseMm, ChainDrive.atFrontWheel(rolling), ChainDrive.atRearWheel(rolling));
    draft.angle("rake", Rolling.RAKE_DEG, "steering axis from the vertical");
    draft.length("trail", Rolling.TRAIL_MM, "on the ground");
    draft.length(
        "headHeight", rolling.headHeightMm, "lower steering bearing, over the tyre at full bump");
    draft.length("headLength", Rolling.HEAD_LENGTH_MM, "");
    draft.length("armLength", rolling.armMm, "swingarm, pivot to axle");
    draft.length("pivotHeight", rolling.pivot.z(), "swingarm pivot");
    draft.length("floorHeight", Rolling.FLOOR_MM, "middle of the lower rails above the road");
    draft.length("tailHeight", tailUp(), "rails behind the seat");
    draft.length("tailReach", -tailEnd(), "their end behind the rear axle; lamps and plate follow");
  }

  private double tailUp() {
    if (room.pillion.isPresent()) {
      return room.pillion.get().seatHeightMm
          - SeatKit.BOARD_MM
          - Rails.THIN_MM / 2
          - UNDER_PILLION_MM;
    }
    return Math.min(
        TAIL_UP_MM,
        room.posed.seatHeightMm() + 45 + 400 * Math.cos(Math.toRadians(room.brief.reclineDeg())));
  }

  private void front() {
    double base = room.wheelbaseMm;
    draft.nailed(
        "trailPoint",
        "wheelbase + trail",
        "0 mm",
        Pin.FRAME,
        "where the steering axis meets the ground");
    draft.pin("headBottom", rolling.headBottom(base));
    draft.pin("headTop", rolling.headTop(base));
    draft.tie("axisAngle", TieKind.RAKE, "rake", "headBottom", "headTop");
    draft.tie("axisTrail", TieKind.IN_LINE, "", "trailPoint", "headBottom", "headTop");
    draft.tie("headAt", TieKind.HEIGHT, "headHeight", "headBottom");
    draft.tie("headSize", TieKind.DISTANCE, "headLength", "headBottom", "headTop");
    FrontPart.Kind kind = room.brief.front();
    if (kind != FrontPart.Kind.TELESCOPIC) {
      link(kind);
    }
    Tuning.Spring spring = room.tuning.front();
    draft.part(
        new FrontPart(
            Base.of("fork", "").mass(15).made(),
            kind,
            "headTop",
            "headBottom",
            kind == FrontPart.Kind.TELESCOPIC ? Optional.empty() : Optional.of("linkPivot"),
            "frontAxle",
            mm(Rolling.FORK_TUBE_MM),
            mm(rolling.forkYMm),
            mm(Rolling.BUMP_MM),
            mm(Rolling.DROOP_MM),
            Optional.of(rate(spring)),
            Optional.of(preload(spring)),
            Optional.empty(),
            Optional.empty(),
            kind != FrontPart.Kind.TELESCOPIC,
            FrontPart.Links.NONE));
  }

  private void link(FrontPart.Kind kind) {
    boolean leads = kind == FrontPart.Kind.LEADING_LINK;
    draft.length("linkLength", Rolling.LINK_MM, "pivot to axle");
    draft.angle("linkFall", Rolling.LINK_FALL_DEG, "the axle is lower than the pivot");
    draft.pin("linkPivot", rolling.linkPivot(kind, room.wheelbaseMm));
    draft.tie("linkSize", TieKind.DISTANCE, "linkLength", "linkPivot", "frontAxle");
    draft.tie(
        "linkSlope",
        TieKind.ANGLE,
        leads ? "-linkFall" : "180 deg + linkFall",
        "linkPivot",
        "frontAxle");
  }

  private static Formula rate(Tuning.Spring spring) {
    return Formula.parse(spring.rateNPerMm() + " N/mm");
  }

  private static Formula preload(Tuning.Spring spring) {
    return Formula.parse(spring.preloadN() + " N");
  }

  private void arm() {
    draft.pin("swingPivot", rolling.pivot);
    draft.tie("armSize", TieKind.DISTANCE, "armLength", "swingPivot", "rearAxle");
    draft.tie("pivotUp", TieKind.HEIGHT, "pivotHeight", "swingPivot");
    Tuning.Spring spring = room.tuning.rear();
    draft.part(
        new SwingarmPart(
            Base.of("swingarm", "steel").half(rolling.armHalfMm).mass(7).made(),
            "swingPivot",
            "rearAxle",
            mm(Rolling.ARM_DEPTH_MM),
            mm(Rolling.BUMP_MM),
            mm(Rolling.DROOP_MM),
            Optional.of(rate(spring)),
            Optional.of(preload(spring)),
            Shock.NOT_SAID));
  }

  private void rails() {
    floor();
    backAndTail();
    seat();
  }

  private void floor() {
    PointMm head = rolling.headBottom(room.wheelbaseMm);
    draft.pin("floorFront", new PointMm(room.floorFrontMm, Rolling.FLOOR_MM));
    draft.pin("floorRear", new PointMm(rolling.pivot.x() + 15, Rolling.FLOOR_MM));
    draft.tie("floorFrontUp", TieKind.HEIGHT, "floorHeight", "floorFront");
    draft.tie(
        "floorFrontAt",
        TieKind.AHEAD,
        text(head.x() - room.floorFrontMm),
        "floorFront",
        "headBottom");
    draft.tie("floorRearUp", TieKind.HEIGHT, "floorHeight", "floorRear");
    draft.tie("floorRearAt", TieKind.AHEAD, "15 mm", "swingPivot", "floorRear");
    draft.part(
        Parts.tube(
            Base.of("floorRail", "steel"),
            TubePart.Kind.RAIL,
            Rolling.RAIL_MM,
            Rolling.RAIL_WALL_MM,
            70,
            rolling.railYMm,
            true,
            "headBottom",
            "floorFront",
            "floorRear",
            "swingPivot"));
  }

  private void backAndTail() {
    double lean = Math.toRadians(room.brief.reclineDeg());
    PointMm up = new PointMm(-Math.sin(lean), Math.cos(lean));
    PointMm foot = room.of(room.backFoot());
    double length = room.posed.kit().backMm - 60;
    PointMm head = foot.plus(up.times(length));
    draft.pin("backFoot", foot);
    draft.pin("backHead", head);
    draft.tie("railAlongBack", TieKind.PARALLEL, "", "backFoot", "backHead", "backLow", "backTop");
    draft.tie(
        "railBehindBack", TieKind.BESIDE, text(Rails.BEHIND_MM), "backFoot", "backLow", "backTop");
    draft.tie(
        "railFootUp", TieKind.HEIGHT, "seatHeight + " + text(Rails.BACK_FOOT_UP_MM), "backFoot");
    draft.tie("railSize", TieKind.DISTANCE, text(length), "backFoot", "backHead");
    String from = "swingPivot";
    if (room.hangsOnFloor) {
      from = "backKnot";
      draft.pin("backKnot", new PointMm(room.backKnotMm, Rolling.FLOOR_MM));
      draft.tie("backKnotUp", TieKind.HEIGHT, "floorHeight", "backKnot");
      draft.tie(
          "backKnotAt", TieKind.AHEAD, text(room.backKnotMm - room.seatXMm), "panRear", "backKnot");
    }
    thin("backRail", 100, from, "backFoot", "backHead");
    double tailUp = tailUp();
    PointMm knot = foot.plus(up.times((tailUp - foot.z()) / up.z()));
    double end = tailEnd();
    draft.pin("tailKnot", knot);
    draft.pin("tailEnd", new PointMm(end, tailUp));
    draft.tie("tailKnotOn", TieKind.IN_LINE, "", "tailKnot", "backFoot", "backHead");
    draft.tie("tailLevel", TieKind.ABOVE, "0 mm", "tailKnot", "tailEnd");
    draft.tie("tailUp", TieKind.HEIGHT, "tailHeight", "tailEnd");
    draft.tie("tailAt", TieKind.AHEAD, "-tailReach", "rearAxle", "tailEnd");
    thin("tailRail", 80, "tailKnot", "tailEnd");
    draft.pin("strutTop", knot.towards(new PointMm(end, tailUp), STRUT));
    draft.tie(
        "strutOn", TieKind.PART_WAY, String.valueOf(STRUT), "strutTop", "tailKnot", "tailEnd");
    thin("strut", 80, "swingPivot", "strutTop");
  }

  /** The tail ends a little before the rearmost of the tyre: lamps and plate hang behind both. */
  private double tailEnd() {
    double behindSeat = room.pillion.isPresent() ? room.pillionXMm - 80 : 0;
    return Math.min(behindSeat, -Math.rint(rolling.rear.freeRadiusMm() - 14));
  }

  private void seat() {
    double rise = Math.toRadians(room.posed.kit().panRiseDeg());
    PointMm along = PointMm.unit(rise);
    PointMm pan = room.of(PointMm.ORIGIN);
    PointMm under = pan.minus(along.left().times(Rails.UNDER_MM));
    double bendX = room.floorKnotMm - Rails.SLOPES_MM;
    PointMm bend = under.plus(along.times((bendX - under.x()) / along.x()));
    String from = room.hangsOnFloor ? "backKnot" : "swingPivot";
    PointMm foot = draft.at("backFoot");
    PointMm rear = draft.at(from);
    // where the line under the pan meets the back's rail
    PointMm way = foot.minus(rear);
    double share = under.minus(rear).cross(along) / way.cross(along);
    draft.pin("seatKnot", rear.plus(way.times(share)));
    draft.pin("seatBend", bend);
    draft.pin("floorKnot", new PointMm(room.floorKnotMm, Rolling.FLOOR_MM));
    draft.tie("seatKnotOn", TieKind.IN_LINE, "", "seatKnot", from, "backFoot");
    draft.tie("seatAlongPan", TieKind.PARALLEL, "", "seatKnot", "seatBend", "panRear", "panFront");
    draft.tie(
        "seatUnderPan", TieKind.BESIDE, text(-Rails.UNDER_MM), "seatBend", "panRear", "panFront");
    draft.tie("seatBendAt", TieKind.AHEAD, text(bendX - pan.x()), "panRear", "seatBend");
    draft.tie("floorKnotUp", TieKind.HEIGHT, "floorHeight", "floorKnot");
    draft.tie("floorKnotAt", TieKind.AHEAD, text(Rails.SLOPES_MM), "seatBend", "floorKnot");
    thin("seatRail", 80, "seatKnot", "seatBend", "floorKnot");
  }

  private void thin(String name, double bendMm, String... path) {
    draft.part(
        Parts.tube(
            Base.of(name, "steel").touching(touched(name)),
            TubePart.Kind.RAIL,
            Rails.THIN_MM,
            Rolling.RAIL_WALL_MM,
            bendMm,
            rolling.railYMm,
            true,
            path));
  }

  private String[] touched(String rail) {
    return switch (rail) {
      // whoever sits behind has a knee on either side of it
      case "backRail" ->
          room.pillion.isPresent()
              ? new String[] {"floorRail", "rider"}
              : new String[] {"floorRail"};
      case "tailRail" -> new String[] {"backRail"};
      case "strut" -> new String[] {"tailRail", "backRail", "seatRail"};
      default -> new String[] {"backRail", "floorRail"};
    };
  }

  /** Of the front one what reaches down behind the tyre would meet rails and feet at full lock. */
  private void guards() {
    guard(
        "frontGuard", "frontAxle", rolling.front.freeRadiusMm(), rolling.front.widthMm(), 62, 120);
    guard("rearGuard", "rearAxle", rolling.rear.freeRadiusMm(), rolling.rear.widthMm(), 82, 184);
  }

  /** A strip round the tyre that moves with its wheel, from one angle to another, deg. */
  private void guard(
      String name, String axle, double radiusMm, double wideMm, double fromDeg, double toDeg) {
    double r = radiusMm + Rolling.GUARD_OFF_MM;
    int steps = 6;
    At[] corners = new At[steps + 1];
    for (int k = 0; k <= steps; k++) {
      PointMm at = PointMm.unit(Math.toRadians(fromDeg + (toDeg - fromDeg) * k / steps)).times(r);
      boolean end = k == 0 || k == steps;
      corners[k] =
          end
              ? At.corner(Math.rint(at.x()), Math.rint(at.z()))
              : At.round(Math.rint(at.x()), Math.rint(at.z()));
    }
    draft.part(
        Parts.strip(
            Base.of(name, "abs").half(Math.ceil(wideMm / 2) + 8).mass(0.7), axle, 2, corners));
  }
}
