package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.text;

import java.util.Map;
import java.util.stream.Stream;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Draws the seat behind the rider, and what holds its back, pegs and grips. */
final class PillionSeat {

  private static final double POST_MM = 22;
  private static final double POST_WALL_MM = 1.65;
  private static final double POST_BEHIND_MM = 26;
  private static final double POST_LENGTH_MM = 400;

  /** Between the thighs of whoever sits behind, and beside the rider's head rest. */
  private static final double GRIP_STAY_Y_MM = 122;

  private final Lengthwise room;
  private final Pillion pillion;
  private final Draft draft;

  PillionSeat(Lengthwise room, Draft draft) {
    this.room = room;
    this.pillion = room.pillion.orElseThrow();
    this.draft = draft;
  }

  void draw() {
    seat();
    post();
    stays();
  }

  private void seat() {
    double x = room.pillionXMm;
    draft.sliding("pillionPlace", x, x - 60, x, "rear end of its pan ahead of the rear axle");
    draft.length("pillionHeight", pillion.seatHeightMm, "over the rear wheel at full bump");
    Map<String, PointMm> pins = pillion.pins(pillion.peg, pillion.grip);
    PointMm origin = new PointMm(x, pillion.seatHeightMm);
    pins.forEach((name, at) -> draft.pin(name, at.plus(origin)));
    draft.tie("pillionAt", TieKind.AHEAD, "pillionPlace", "rearAxle", "pillionRear");
    draft.tie("pillionUp", TieKind.HEIGHT, "pillionHeight", "pillionRear");
    draft.tie("pillionSize", TieKind.DISTANCE, text(Pillion.PAN_MM), "pillionRear", "pillionFront");
    draft.tie(
        "pillionSlope",
        TieKind.ANGLE,
        Pillion.PAN_RISE_DEG + " deg",
        "pillionRear",
        "pillionFront");
    apart("pillionBackLow", "pillionRear", Pillion.BACK_FROM_PAN);
    draft.tie(
        "pillionBackSize",
        TieKind.DISTANCE,
        text(Pillion.BACK_MM),
        "pillionBackLow",
        "pillionBackTop");
    draft.tie(
        "pillionBackSlope",
        TieKind.RAKE,
        Pillion.BACK_LEAN_DEG + " deg",
        "pillionBackLow",
        "pillionBackTop");
    apart("pillionPeg", "pillionRear", pillion.peg);
    apart("pillionGrip", "pillionRear", pillion.grip);
    draft.part(pillion.pan);
    draft.part(pillion.back);
    draft.part(pillion.pegs);
    draft.part(pillion.grips);
  }

  private void apart(String pin, String from, PointMm by) {
    draft.tie(pin + "At", TieKind.AHEAD, text(by.x()), from, pin);
    draft.tie(pin + "Up", TieKind.ABOVE, text(by.z()), from, pin);
  }

  private void post() {
    PointMm low = draft.at("pillionBackLow");
    PointMm top = draft.at("pillionBackTop");
    PointMm up = top.minus(low).times(1 / Pillion.BACK_MM);
    PointMm line = low.plus(up.left().times(POST_BEHIND_MM));
    PointMm foot = line.plus(up.times((draft.at("tailEnd").z() - line.z()) / up.z()));
    draft.pin("postFoot", foot);
    draft.pin("postHead", foot.plus(up.times(POST_LENGTH_MM)));
    draft.tie("postOnRail", TieKind.IN_LINE, "", "postFoot", "tailKnot", "tailEnd");
    draft.tie(
        "postAlongBack",
        TieKind.PARALLEL,
        "",
        "postFoot",
        "postHead",
        "pillionBackLow",
        "pillionBackTop");
    draft.tie(
        "postBehindBack",
        TieKind.BESIDE,
        text(POST_BEHIND_MM),
        "postFoot",
        "pillionBackLow",
        "pillionBackTop");
    draft.tie("postSize", TieKind.DISTANCE, text(POST_LENGTH_MM), "postFoot", "postHead");
    tube(
        "pillionPost",
        110,
        new String[] {"tailRail", "pillionPan", "strut"},
        "postFoot",
        "postHead");
  }

  /** Pegs hang on the swingarm's pivot, grips on the upper end of the rider's back. */
  private void stays() {
    double wide =
        Stream.concat(room.cargo.under().stream(), room.cargo.behind().stream())
            .mapToDouble(Cargo.Item::halfMm)
            .max()
            .orElse(0);
    double rails = Math.max(room.rolling.railYMm + Rolling.RAIL_MM / 2, SeatKit.PAN_HALF_MM);
    double y = Math.max(rails, wide) + POST_MM / 2 + 4;
    tube(
        "pegStay",
        y,
        new String[] {"floorRail", "backRail", "strut", "swingarm"},
        "swingPivot",
        "pillionPeg");
    tube("gripStay", GRIP_STAY_Y_MM, onBack(), "backHead", "pillionGrip");
  }

  private String[] onBack() {
    return room.posed.kit().head.isPresent()
        ? new String[] {"backRail", "back", "headRest", "headPost", "rider"}
        : new String[] {"backRail", "back", "rider"};
  }

  private void tube(String name, double yMm, String[] touches, String... path) {
    draft.part(
        Parts.tube(
            Base.of(name, "steel").touching(touches),
            TubePart.Kind.RAIL,
            POST_MM,
            POST_WALL_MM,
            80,
            yMm,
            true,
            path));
  }
}
