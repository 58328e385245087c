package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.text;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Draws the rider's seat, the boards for the feet, and the bars up to the grips. */
final class RiderPlace {

  /** The tube of the bars runs so far inside of the middle of the grips, mm. */
  static final double BAR_IN_MM = 40;

  private static final double BAR_WALL_MM = 2.1;

  private static final double BAR_BEND_MM = 70;

  /** About a grip there is a hand, mm. */
  private static final double HAND_MM = 90;

  private static final double HIGHEST_BAR_MM = 620;

  private static final double BAR_OVER_BOARDS_MM = 10;

  /** A stay ends so far under the middle of its board, clear of the sole, mm. */
  private static final double STAY_UNDER_MM = 16;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Lengthwise room;
  private final Draft draft;

  RiderPlace(Lengthwise room, Draft draft) {
    this.room = room;
    this.draft = draft;
  }

  void draw() {
    cushions();
    feet();
    hands();
  }

  private void cushions() {
    SeatKit kit = room.posed.kit();
    PointMm pan = room.of(PointMm.ORIGIN);
    draft.sliding(
        "seatPlace", pan.x(), pan.x() - 10, pan.x() + 60, "rear end of the pan ahead of the axle");
    draft.length("seatHeight", pan.z(), "rear end of the pan's board");
    draft.length("panLength", SeatKit.PAN_MM, "");
    draft.angle("panRise", kit.panRiseDeg(), "front end up, holds the rider back in the seat");
    draft.tipping(
        "recline",
        kit.reclineDeg,
        kit.reclineDeg - 3,
        kit.reclineDeg + 4,
        "of the back rest from the vertical; drag its top");
    var pins = kit.pins(room.spots());
    for (String name : new String[] {"panRear", "panFront", "backLow", "backTop"}) {
      draft.pin(name, room.of(pins.get(name)));
    }
    draft.tie("panAt", TieKind.AHEAD, "seatPlace", "rearAxle", "panRear");
    draft.tie("panUp", TieKind.HEIGHT, "seatHeight", "panRear");
    draft.tie("panSize", TieKind.DISTANCE, "panLength", "panRear", "panFront");
    draft.tie("panSlope", TieKind.ANGLE, "panRise", "panRear", "panFront");
    draft.tie("backBehind", TieKind.AHEAD, text(SeatKit.BACK_FROM_PAN.x()), "panRear", "backLow");
    draft.tie("backAbove", TieKind.ABOVE, text(SeatKit.BACK_FROM_PAN.z()), "panRear", "backLow");
    draft.tie("backSlope", TieKind.RAKE, "recline", "backLow", "backTop");
    draft.part(kit.pan);
    draft.part(kit.back);
    if (kit.head.isEmpty()) {
      draft.tie("backSize", TieKind.DISTANCE, text(kit.backMm), "backLow", "backTop");
      return;
    }
    draft.pin("headLow", room.of(room.spots().headLow()));
    draft.pin("headHigh", room.of(room.spots().headHigh()));
    draft.tie("backShape", TieKind.ONE_PIECE, "", "backLow", "backTop", "headLow", "headHigh");
    draft.part(kit.head.get());
    draft.part(
        Parts.tube(
            Base.of("headPost", "steel").touching(touchedByPost()),
            TubePart.Kind.RAIL,
            Rails.STAY_MM,
            2,
            80,
            60,
            true,
            "backHead",
            "headHigh"));
  }

  /** Whoever sits behind has a thigh on either side of it, which only a close look tells apart. */
  private String[] touchedByPost() {
    return room.pillion.isPresent()
        ? new String[] {"back", "headRest", "rider"}
        : new String[] {"back", "headRest"};
  }

  private void feet() {
    PointMm board = room.spots().board();
    PointMm front = room.spots().boardFront();
    draft.sliding(
        "reach", board.x(), board.x() - 60, board.x() + 60, "from the pan to the foot boards");
    double up = room.of(board).z();
    draft.sliding(
        "boardHeight",
        up,
        Math.min(up, room.posed.leastBoardMm()),
        up + 60,
        "rear end of the foot boards");
    draft.angle("boardRise", room.spots().boardDeg(), "front end up, square to the shanks");
    draft.pin("boardRear", room.of(board));
    draft.pin("boardFront", room.of(front));
    draft.tie("boardAt", TieKind.AHEAD, "reach", "panRear", "boardRear");
    draft.tie("boardUp", TieKind.HEIGHT, "boardHeight", "boardRear");
    draft.tie("boardSlope", TieKind.ANGLE, "boardRise", "boardRear", "boardFront");
    draft.part(room.posed.kit().boards);
    PointMm under = front.minus(board).left().times(-STAY_UNDER_MM / SeatKit.REST_MM);
    PointMm middle = room.of(board.towards(front, 0.4).plus(under));
    if (middle.x() + 20 > room.floorFrontMm - 40) {
      // the board is ahead of the rails: a stay from behind goes under the heel
      middle = room.of(board.towards(front, Rails.STAY_BACK).plus(under));
    }
    PointMm foot = stayFoot(middle);
    draft.pin("boardMiddle", middle);
    draft.pin("stayFoot", foot);
    draft.tie("boardShape", TieKind.ONE_PIECE, "", "boardRear", "boardFront", "boardMiddle");
    if (foot.z() > Rolling.FLOOR_MM) {
      draft.tie("stayOn", TieKind.IN_LINE, "", "stayFoot", "floorFront", "headBottom");
      draft.tie("stayUp", TieKind.HEIGHT, text(foot.z()), "stayFoot");
    } else {
      draft.tie("stayOn", TieKind.HEIGHT, "floorHeight", "stayFoot");
      draft.tie("stayUnder", TieKind.AHEAD, text(foot.x() - middle.x()), "boardMiddle", "stayFoot");
    }
    draft.part(
        Parts.tube(
            Base.of("boardStay", "steel").touching("boards", "floorRail"),
            TubePart.Kind.RAIL,
            Rails.STAY_MM,
            2,
            60,
            room.posed.kit().feetYMm
                - SeatKit.REST_WIDE_MM / 2
                - Rails.STAY_MM / 2
                - Rails.STAY_BESIDE_MM,
            true,
            "stayFoot",
            "boardMiddle"));
  }

  /** On the lower rails under the board, or on what rises from them to the head behind it. */
  private PointMm stayFoot(PointMm middle) {
    double under = middle.x() + 20;
    if (under <= room.floorFrontMm - 40) {
      return new PointMm(under, Rolling.FLOOR_MM);
    }
    PointMm head = room.rolling.headBottom(room.wheelbaseMm);
    PointMm low = new PointMm(room.floorFrontMm, Rolling.FLOOR_MM);
    double z = Rolling.FLOOR_MM + 15;
    return low.towards(head, (z - low.z()) / (head.z() - low.z()));
  }

  private void hands() {
    PointMm grip = room.of(room.spots().grip());
    double fromPan = room.spots().grip().x();
    draft.sliding("gripReach", fromPan, fromPan - 60, fromPan + 60, "from the pan to the grips");
    draft.sliding("gripHeight", grip.z(), grip.z() - 60, grip.z() + 60, "middle of the grips");
    double overPan = room.spots().grip().z();
    draft.limit(
        "gripOverSeat",
        Limit.Kind.ABOVE,
        overPan - 60,
        Math.max(overPan, Sitter.MOST_GRIP_MM),
        "many states let grips be at most 15 in over the seat as it is pressed down",
        "panRear",
        "grip");
    draft.pin("grip", grip);
    draft.tie("gripAt", TieKind.AHEAD, "gripReach", "panRear", "grip");
    draft.tie("gripUp", TieKind.HEIGHT, "gripHeight", "grip");
    draft.part(room.posed.kit().grips);
    PointMm top = room.rolling.headTop(room.wheelbaseMm);
    PointMm rise = barRise(top, grip);
    draft.pin("barRise", rise);
    draft.tie("barRiseAt", TieKind.AHEAD, text(rise.x() - top.x()), "headTop", "barRise");
    draft.tie("barRiseUp", TieKind.ABOVE, text(rise.z() - top.z()), "headTop", "barRise");
    draft.part(
        Parts.tube(
            Base.of("bars", "steel").steered(),
            TubePart.Kind.RAIL,
            Rails.BAR_MM,
            BAR_WALL_MM,
            BAR_BEND_MM,
            room.posed.kit().gripsYMm - BAR_IN_MM,
            true,
            "headTop",
            "barRise",
            "grip"));
  }

  /** The bars go up from the head, and back as they can, as far as passes over all legs. */
  private PointMm barRise(PointMm top, PointMm grip) {
    double most = Math.min(70, Math.max(30, (top.x() - grip.x()) / 4));
    for (double back : new double[] {most, most / 2, 0}) {
      for (double up = Math.max(50, grip.z() - top.z()); up < HIGHEST_BAR_MM; up += 5) {
        PointMm rise = new PointMm(Math.rint(top.x() - back), Math.rint(top.z() + up));
        if (overKnees(rise, top, grip)) {
          return rise;
        }
      }
    }
    return new PointMm(Math.rint(top.x()), Math.rint(top.z() + HIGHEST_BAR_MM));
  }

  private boolean overKnees(PointMm rise, PointMm top, PointMm grip) {
    Coordinate[] bent =
        Curves.bent(List.of(top, rise, grip), BAR_BEND_MM).stream()
            .map(this::at)
            .toArray(Coordinate[]::new);
    LineString line = FACTORY.createLineString(bent);
    LineString board =
        FACTORY.createLineString(
            new Coordinate[] {at(draft.at("boardRear")), at(draft.at("boardFront"))});
    // about the grips, which keep off legs by themselves, there are hands
    Geometry away = line.difference(FACTORY.createPoint(at(grip)).buffer(HAND_MM));
    return line.distance(board) >= Rails.BAR_MM / 2 + SeatKit.REST_THICK_MM / 2 + BAR_OVER_BOARDS_MM
        && room.posed.awayFromLegsMm(away) >= Rails.BAR_MM / 2 + Rails.BAR_OVER_KNEES_MM;
  }

  private Coordinate at(PointMm p) {
    return new Coordinate(p.x() - room.seatXMm, p.z() - room.posed.seatHeightMm());
  }
}
