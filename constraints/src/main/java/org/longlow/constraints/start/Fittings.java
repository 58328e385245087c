package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.text;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.start.Parts.At;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Draws lamps, reflectors, plate and stand. */
final class Fittings {

  private static final double LAMP_HALF_MM = 60;
  private static final double LAMP_DEPTH_MM = 80;

  /** Clear of feet and shanks, and apart as far as the rules ask. */
  private static final double SIGNAL_HALF_MM = 32;

  private static final double SIGNAL_BESIDE_MM = 5;

  /** So far ahead of the bars, at full lock they keep off knees, mm. */
  private static final double SIGNAL_AHEAD_MM = 90;

  private static final double PAST_LAMP_MM = 66;
  private static final double SIGNAL_STEP_MM = 8;

  private static final double REFLECTOR_LONG_MM = 40;

  /** A reflector is no larger than a ball of this radius, mm. */
  private static final double REFLECTOR_MM = 28;

  private static final double SIGNAL_OVER_HEAD_MM = 45;
  private static final double MOST_SIGNAL_OVER_HEAD_MM = 330;
  private static final double SIGNAL_HALF_HEIGHT_MM = 24;
  private static final double SIGNAL_DEPTH_MM = 50;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** With its upper edge 900 mm over the road at most, and the springs lift it unladen, mm. */
  private static final double HIGHEST_REFLECTOR_MM = 825;

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
    ahead();
    behind();
    stand();
  }

  /** All that gives light ahead turns with the fork. */
  private void ahead() {
    double z = lampUp();
    double x = rolling.axisAheadMm(z) + Rolling.FORK_TUBE_MM / 2 + 8 + LAMP_DEPTH_MM;
    nailed("headlampPin", x, z);
    lamp(
        bought("headlamp", 1.2, "fork").steered(),
        LampPart.Kind.HEADLAMP,
        "headlampPin",
        0,
        new Size(75, LAMP_HALF_MM, LAMP_DEPTH_MM),
        LampPart.Colour.WHITE);
    lamp(
        bought("positionLamp", 0.1, "headlamp").steered(),
        LampPart.Kind.FRONT_POSITION,
        "headlampPin",
        0,
        new Size(15, 8, 20),
        LampPart.Colour.WHITE);
    PointMm signals = signals(x);
    nailed("frontSignalPin", signals.x(), signals.z());
    lamp(
        bought("frontSignals", 0.4).steered(),
        LampPart.Kind.FRONT_SIGNAL,
        "frontSignalPin",
        signalYMm(),
        new Size(SIGNAL_HALF_MM, SIGNAL_HALF_HEIGHT_MM, SIGNAL_DEPTH_MM),
        LampPart.Colour.AMBER);
    reflectors(signals);
  }

  /** At the ends of the indicators, where nothing hides them from the side, or below those. */
  private void reflectors(PointMm signals) {
    PointMm at = reflectorAt(signals);
    nailed("frontReflectorPin", at.x(), at.z());
    lamp(
        bought("frontReflectors", 0.1, "frontSignals").steered(),
        LampPart.Kind.SIDE_REFLECTOR,
        "frontReflectorPin",
        signalYMm() + SIGNAL_HALF_MM + 4,
        new Size(4, 18, REFLECTOR_LONG_MM),
        LampPart.Colour.AMBER);
  }

  private static PointMm reflectorAt(PointMm signals) {
    return new PointMm(
        signals.x() - SIGNAL_DEPTH_MM / 2, Math.min(signals.z(), HIGHEST_REFLECTOR_MM));
  }

  /** On the riser of the bars, from the front axle: as low as feet and shanks let them be. */
  private PointMm signals(double lampAheadMm) {
    PointMm top = rolling.headTop(room.wheelbaseMm);
    PointMm rise = draft.at("barRise");
    PointMm low = null;
    for (double up = SIGNAL_OVER_HEAD_MM; up < MOST_SIGNAL_OVER_HEAD_MM; up += 5) {
      PointMm bar = top.towards(rise, Math.min(1, up / (rise.z() - top.z())));
      PointMm at = new PointMm(bar.x() + SIGNAL_DEPTH_MM + SIGNAL_AHEAD_MM, top.z() + up);
      PointMm straight = new PointMm(bar.x() + SIGNAL_DEPTH_MM, at.z());
      if (awayFromLegs(straight) <= Draft.mmOf(Demands.Key.PERSON_GAP) + 4) {
        continue;
      }
      low = low == null ? at : low;
      // farther ahead they would hide the lamps from the side
      double most = Math.max(at.x() + 1, lampAheadMm + room.wheelbaseMm + PAST_LAMP_MM);
      for (double x = at.x(); x < most; x += SIGNAL_STEP_MM) {
        if (turnsPastLegs(new PointMm(x, at.z()))) {
          return rounded(new PointMm(x, at.z()));
        }
      }
    }
    return rounded(low == null ? top.plus(new PointMm(SIGNAL_AHEAD_MM, 0)) : low);
  }

  /** From the front axle. */
  private PointMm rounded(PointMm at) {
    return new PointMm(Math.rint(at.x() - room.wheelbaseMm), Math.rint(at.z()));
  }

  /** Whether the reflectors at the ends of the indicators keep off all legs at full lock. */
  private boolean turnsPastLegs(PointMm at) {
    SteeringAxis axis =
        SteeringAxis.through(
            rolling.headBottom(room.wheelbaseMm), rolling.headTop(room.wheelbaseMm));
    double lock = Draft.mmOf(Demands.Key.LOCK);
    double out = signalYMm() + SIGNAL_HALF_MM + REFLECTOR_MM / 2;
    PointMm middle = reflectorAt(at).minus(new PointMm(REFLECTOR_LONG_MM / 2, 0));
    double ahead = axis.aheadMm(middle);
    PointMm turned =
        axis.point(ahead * Math.cos(lock) - out * Math.sin(lock), axis.alongMm(middle));
    PointMm pan = room.of(PointMm.ORIGIN);
    Prism reflector =
        Prism.ball(turned.minus(pan), out * Math.cos(lock) + ahead * Math.sin(lock), REFLECTOR_MM);
    double gap = Draft.mmOf(Demands.Key.PERSON_GAP);
    return room.posed.sittings().stream()
        .allMatch(
            s ->
                new Solid("reflector", List.of(reflector))
                        .to(new Solid("person", s.finePrisms()), gap)
                    == null);
  }

  /** Outside of the bars. */
  private double signalYMm() {
    double bars = room.posed.kit().gripsYMm - RiderPlace.BAR_IN_MM + Rails.BAR_MM / 2;
    return bars + SIGNAL_BESIDE_MM + SIGNAL_HALF_MM;
  }

  private double awayFromLegs(PointMm at) {
    Envelope box =
        new Envelope(
            at.x() - SIGNAL_DEPTH_MM,
            at.x(),
            at.z() - SIGNAL_HALF_HEIGHT_MM,
            at.z() + SIGNAL_HALF_HEIGHT_MM);
    PointMm pan = room.of(PointMm.ORIGIN);
    box.translate(-pan.x(), -pan.z());
    Geometry lamp = FACTORY.toGeometry(box);
    double legs = room.posed.awayFromLegsMm(lamp);
    PointMm rear = room.spots().board();
    PointMm front = room.spots().boardFront();
    Geometry board =
        FACTORY.createLineString(
            new Coordinate[] {
              new Coordinate(rear.x(), rear.z()), new Coordinate(front.x(), front.z())
            });
    return Math.min(legs, board.distance(lamp) - SeatKit.REST_THICK_MM);
  }

  /** As low as the front guard lets it be at full bump, and not over the head. */
  private double lampUp() {
    double round = rolling.front.freeRadiusMm() + Rolling.GUARD_OFF_MM + 14;
    double tan = Math.tan(Math.toRadians(Rolling.RAKE_DEG));
    boolean slides = room.brief.front() == FrontPart.Kind.TELESCOPIC;
    PointMm wheel =
        new PointMm(
            slides ? -Rolling.BUMP_MM * tan : 12, rolling.front.freeRadiusMm() + Rolling.BUMP_MM);
    double z = 575;
    while (!clears(z, wheel, round)) {
      z++;
    }
    return Math.ceil(z / 5) * 5;
  }

  private boolean clears(double z, PointMm wheel, double round) {
    double x = rolling.axisAheadMm(z) + Rolling.FORK_TUBE_MM / 2 + 8 + LAMP_DEPTH_MM;
    double low = z - LAMP_HALF_MM;
    return low > wheel.z()
        && wheel.distance(new PointMm(x, low)) > round
        && wheel.distance(new PointMm(x - LAMP_DEPTH_MM, low)) > round;
  }

  private void nailed(String name, double aheadOfAxle, double z) {
    draft.nailed(name, "wheelbase + " + text(aheadOfAxle), text(z));
  }

  /** The lit area of a lamp and what is behind it, mm. */
  private record Size(double halfWidthMm, double halfHeightMm, double depthMm) {}

  private void lamp(
      Base base, LampPart.Kind kind, String pin, double yMm, Size size, LampPart.Colour colour) {
    draft.part(
        Parts.lamp(
            base, kind, pin, yMm, size.halfWidthMm(), size.halfHeightMm(), size.depthMm(), colour));
  }

  private static Base bought(String name, double kg, String... touches) {
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
