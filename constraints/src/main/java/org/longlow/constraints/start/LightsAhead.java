package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.text;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.start.Fittings.Size;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Draws lamps, indicators and reflectors ahead, where they pass everybody at full lock. */
final class LightsAhead {

  private static final double LAMP_HALF_MM = 60;
  private static final double LAMP_DEPTH_MM = 80;

  private static final double SIGNAL_BESIDE_MM = 5;

  /** So far ahead of the bars, at full lock they keep off knees, mm. */
  private static final double SIGNAL_AHEAD_MM = 90;

  private static final double PAST_LAMP_MM = 66;
  private static final double STEP_MM = 8;

  private static final double SIGNAL_OVER_HEAD_MM = 45;
  private static final double MOST_SIGNAL_OVER_HEAD_MM = 330;

  private static final Size SIGNAL = new Size(32, 24, 50);
  private static final Size REFLECTOR = new Size(4, 18, 40);

  /** With its upper edge 900 mm over the road at most, and the springs lift it unladen, mm. */
  private static final double HIGHEST_REFLECTOR_MM = 825;

  /** With its middle 381 mm over the road at least, and its lower edge 300, mm. */
  private static final double LOWEST_REFLECTOR_MM = 400;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Lengthwise room;
  private final Rolling rolling;
  private final Draft draft;
  private final Passing passing;
  private final SteeringAxis axis;

  LightsAhead(Lengthwise room, Draft draft) {
    this.room = room;
    this.rolling = room.rolling;
    this.draft = draft;
    passing = new Passing(room.posed);
    PointMm pan = room.of(PointMm.ORIGIN);
    axis =
        SteeringAxis.through(
            rolling.headBottom(room.wheelbaseMm).minus(pan),
            rolling.headTop(room.wheelbaseMm).minus(pan));
  }

  void draw() {
    double z = lampUp();
    double x = rolling.axisAheadMm(z) + Rolling.FORK_TUBE_MM / 2 + 8 + LAMP_DEPTH_MM;
    nailed("headlampPin", x, z);
    lamp(
        Fittings.bought("headlamp", 1.2, "fork").steered(),
        LampPart.Kind.HEADLAMP,
        "headlampPin",
        0,
        new Size(75, LAMP_HALF_MM, LAMP_DEPTH_MM),
        LampPart.Colour.WHITE);
    lamp(
        Fittings.bought("positionLamp", 0.1, "headlamp").steered(),
        LampPart.Kind.FRONT_POSITION,
        "headlampPin",
        0,
        new Size(15, 8, 20),
        LampPart.Colour.WHITE);
    Optional<PointMm> reflecting = signals(x, true);
    PointMm signals = reflecting.or(() -> signals(x, false)).orElseGet(this::overHead);
    nailed("frontSignalPin", signals.x(), signals.z());
    lamp(
        Fittings.bought("frontSignals", 0.4).steered(),
        LampPart.Kind.FRONT_SIGNAL,
        "frontSignalPin",
        signalYMm(),
        SIGNAL,
        LampPart.Colour.AMBER);
    if (reflecting.isPresent()) {
      reflectors("frontSignals", atEnd(signals), endYMm(), true);
    } else {
      reflectors("floorRail", onRail(), railYMm(), false);
    }
  }

  private void reflectors(String on, PointMm at, double yMm, boolean steered) {
    Base base = Fittings.bought("frontReflectors", 0.1, on);
    nailed("frontReflectorPin", at.x(), at.z());
    lamp(
        steered ? base.steered() : base,
        LampPart.Kind.SIDE_REFLECTOR,
        "frontReflectorPin",
        yMm,
        REFLECTOR,
        LampPart.Colour.AMBER);
  }

  /** At the ends of the indicators, where nothing hides them from the side, or below those. */
  private static PointMm atEnd(PointMm signals) {
    return new PointMm(
        signals.x() - SIGNAL.depthMm() / 2, Math.min(signals.z(), HIGHEST_REFLECTOR_MM));
  }

  private double endYMm() {
    return signalYMm() + SIGNAL.halfWidthMm() + REFLECTOR.halfWidthMm();
  }

  /**
   * Outside on the rails that rise to the head, from the front axle: no lock moves them there, and
   * they are as far ahead and up as legs and feet let them be.
   */
  private PointMm onRail() {
    PointMm head = rolling.headBottom(0);
    PointMm low = new PointMm(room.floorFrontMm - room.wheelbaseMm, Rolling.FLOOR_MM);
    double most = Math.min(head.z() - Rolling.RAIL_MM, HIGHEST_REFLECTOR_MM);
    for (double z = most; z > LOWEST_REFLECTOR_MM; z -= STEP_MM) {
      PointMm at = onRail(low, head, z);
      if (passing.stands(body(at, REFLECTOR, railYMm()), axis)) {
        return at;
      }
    }
    return onRail(low, head, most);
  }

  private static PointMm onRail(PointMm low, PointMm head, double z) {
    double x = low.towards(head, (z - low.z()) / (head.z() - low.z())).x();
    return new PointMm(Math.rint(x + REFLECTOR.depthMm() / 2), Math.rint(z));
  }

  private double railYMm() {
    return rolling.railYMm + Rolling.RAIL_MM / 2 + REFLECTOR.halfWidthMm();
  }

  /**
   * On the riser of the bars, from the front axle: as low as feet and shanks let them be, nobody in
   * their way to full lock.
   *
   * @param reflecting whether there are reflectors at their ends
   */
  private Optional<PointMm> signals(double lampAheadMm, boolean reflecting) {
    PointMm top = rolling.headTop(0);
    PointMm rise = draft.at("barRise").minus(new PointMm(room.wheelbaseMm, 0));
    for (double up = SIGNAL_OVER_HEAD_MM; up < MOST_SIGNAL_OVER_HEAD_MM; up += 5) {
      PointMm bar = top.towards(rise, Math.min(1, up / (rise.z() - top.z())));
      PointMm straight = new PointMm(bar.x() + SIGNAL.depthMm(), top.z() + up);
      if (awayFromLegs(straight) <= Draft.mmOf(Demands.Key.PERSON_GAP) + 4) {
        continue;
      }
      double least = straight.x() + SIGNAL_AHEAD_MM;
      // farther ahead they would hide the lamps from the side
      double most = Math.max(least + 1, lampAheadMm + PAST_LAMP_MM);
      for (double x = least; x < most; x += STEP_MM) {
        PointMm at = new PointMm(Math.rint(x), Math.rint(straight.z()));
        if (passing.turns(body(at, SIGNAL, signalYMm()), axis)
            && (!reflecting || passing.turns(body(atEnd(at), REFLECTOR, endYMm()), axis))) {
          return Optional.of(at);
        }
      }
    }
    return Optional.empty();
  }

  private PointMm overHead() {
    PointMm top = rolling.headTop(0);
    return new PointMm(Math.rint(top.x() + SIGNAL_AHEAD_MM), Math.rint(top.z()));
  }

  /** A lamp on each side, from the pan's rear end. */
  private SpaceBody body(PointMm at, Size size, double yMm) {
    return Passing.blocks(box(at, size), yMm - size.halfWidthMm(), yMm + size.halfWidthMm());
  }

  /**
   * A lamp in side view, from the pan's rear end.
   *
   * @param at middle of its face, from the front axle
   */
  private Envelope box(PointMm at, Size size) {
    PointMm face = at.plus(new PointMm(room.wheelbaseMm, 0)).minus(room.of(PointMm.ORIGIN));
    return new Envelope(
        face.x() - size.depthMm(),
        face.x(),
        face.z() - size.halfHeightMm(),
        face.z() + size.halfHeightMm());
  }

  /** Outside of the bars. */
  private double signalYMm() {
    double bars = room.posed.kit().gripsYMm - RiderPlace.BAR_IN_MM + Rails.BAR_MM / 2;
    return bars + SIGNAL_BESIDE_MM + SIGNAL.halfWidthMm();
  }

  private double awayFromLegs(PointMm at) {
    Geometry lamp = FACTORY.toGeometry(box(at, SIGNAL));
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

  private void lamp(
      Base base, LampPart.Kind kind, String pin, double yMm, Size size, LampPart.Colour colour) {
    Fittings.lamp(draft, base, kind, pin, yMm, size, colour);
  }
}
