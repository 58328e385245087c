package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.text;

import java.util.Optional;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.start.Parts.At;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Draws what gives light behind, the plate and the stand. */
final class Fittings {

  static final double STAND_Y_MM = 258;
  static final double STAND_LEAN_DEG = 13.5;
  private static final double STAND_MM = 20;

  private final Lengthwise room;
  private final Rolling rolling;
  private final Draft draft;

  Fittings(Lengthwise room, Draft draft) {
    this.room = room;
    this.rolling = room.rolling;
    this.draft = draft;
  }

  void draw() {
    behind();
    stand();
  }

  /** The lit area of a lamp and what is behind it, mm. */
  record Size(double halfWidthMm, double halfHeightMm, double depthMm) {}

  private void lamp(
      Base base, LampPart.Kind kind, String pin, double yMm, Size size, LampPart.Colour colour) {
    lamp(draft, base, kind, pin, yMm, size, colour);
  }

  static void lamp(
      Draft draft,
      Base base,
      LampPart.Kind kind,
      String pin,
      double yMm,
      Size size,
      LampPart.Colour colour) {
    draft.part(
        Parts.lamp(
            base, kind, pin, yMm, size.halfWidthMm(), size.halfHeightMm(), size.depthMm(), colour));
  }

  static Base bought(String name, double kg, String... touches) {
    return Base.of(name, "").mass(kg).touching(touches);
  }

  private void behind() {
    holders();
    tailLamps();
  }

  private void holders() {
    tail("tailFoot", -5, -22);
    draft.part(
        Parts.solid(
            Base.of("tailHolder", "steel")
                .half(rolling.railYMm + 16)
                .mass(1.1)
                .touching("tailRail", "tailLamp", "stopLamp", "rearSignals", "sideReflectors"),
            SolidPart.Kind.BRACKET,
            "tailFoot",
            At.corner(0, 0),
            At.corner(0, 122),
            At.corner(-12, 122),
            At.corner(-12, 0)));
    draft.part(
        Parts.solid(
            Base.of("plateHolder", "steel")
                .half(60)
                .mass(0.6)
                .touching("tailHolder", "plate", "plateLamp", "rearReflector"),
            SolidPart.Kind.BRACKET,
            "tailFoot",
            At.corner(0, 2),
            At.corner(-52, -18),
            At.corner(-72, -58),
            At.corner(-72, -213),
            At.corner(-66, -213),
            At.corner(-62, -68),
            At.corner(-30, -28),
            At.corner(0, -10)));
  }

  private void tailLamps() {
    tail("tailPin", -55, 25);
    tail("stopPin", -55, 70);
    tail("rearSignalPin", -55, 46);
    tail("sideReflectorPin", 30, 46);
    tail("plateLampPin", -62, -52);
    tail("platePin", -84, -140);
    tail("rearReflectorPin", -82, -213);
    lamp(
        bought("tailLamp", 0.2),
        LampPart.Kind.TAIL,
        "tailPin",
        0,
        new Size(50, 18, 38),
        LampPart.Colour.RED);
    lamp(
        bought("stopLamp", 0.2),
        LampPart.Kind.STOP,
        "stopPin",
        0,
        new Size(60, 22, 38),
        LampPart.Colour.RED);
    lamp(
        bought("rearSignals", 0.4),
        LampPart.Kind.REAR_SIGNAL,
        "rearSignalPin",
        140,
        new Size(28, 22, 38),
        LampPart.Colour.AMBER);
    lamp(
        bought("sideReflectors", 0.1, "tailRail"),
        LampPart.Kind.SIDE_REFLECTOR,
        "sideReflectorPin",
        rolling.railYMm + 20,
        new Size(4, 20, 40),
        LampPart.Colour.RED);
    lamp(
        bought("plateLamp", 0.1),
        LampPart.Kind.PLATE_LAMP,
        "plateLampPin",
        0,
        new Size(30, 10, 20),
        LampPart.Colour.WHITE);
    lamp(
        bought("plate", 0.3),
        LampPart.Kind.PLATE,
        "platePin",
        0,
        new Size(90, 55, 5),
        LampPart.Colour.WHITE);
    lamp(
        bought("rearReflector", 0.1),
        LampPart.Kind.REAR_REFLECTOR,
        "rearReflectorPin",
        0,
        new Size(35, 15, 5),
        LampPart.Colour.RED);
  }

  /** A pin on the tail, from the end of its rails. */
  private void tail(String pin, double ahead, double above) {
    draft.nailed(pin, text(ahead) + " - tailReach", "tailHeight + " + text(above));
  }

  private void stand() {
    double x = room.tuning.standXMm();
    double z = room.tuning.standZMm();
    PointMm pivot = new PointMm(x + 30, Rolling.FLOOR_MM + 22);
    double leg = pivot.distance(new PointMm(x, z));
    draft.nailed("standPivot", text(pivot.x()), "floorHeight + 22 mm");
    draft.nailed("standFoot", text(x), text(z));
    draft.nailed("standStowed", text(pivot.x() - leg), "floorHeight + 26 mm");
    draft.part(
        new StandPart(
            Base.of("sideStand", "steel").mass(1.3).touching("floorRail").made(),
            StandPart.Kind.SIDE,
            "standPivot",
            "standFoot",
            "standStowed",
            Draft.mm(STAND_Y_MM),
            Draft.mm(STAND_MM),
            Draft.deg(STAND_LEAN_DEG),
            Optional.empty()));
  }
}
