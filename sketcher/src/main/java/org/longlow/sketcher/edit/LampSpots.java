package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Where lamps have room on a machine, clear of everything and everybody in every stance. */
final class LampSpots {

  /** Kept from whatever is there: the most that a first machine's demands ask, and a little. */
  private static final double CLEAR_MM = 28;

  /** Rake of a fork that is not drawn yet; a usual one, judgement. */
  private static final double RAKE_RAD = Math.toRadians(27);

  /** Kept over a front wheel whose travel is not drawn yet; a usual one, judgement. */
  private static final double BUMP_MM = 100;

  /** Bodywork nearer than this is met by a lamp that turns, judgement. */
  private static final double TURN_ROOM_MM = 150;

  private static final double STEP_MM = 10;

  /** Beyond this a lamp hangs in the air. */
  private static final int MOST_STEPS = 120;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A box about a lamp: from its place to its corners in side view, and its half width. */
  record Room(Envelope about, double halfWidthMm) {}

  private final Places places;
  private final Optional<FrontPart> fork;
  private final List<Prism> bodies = new ArrayList<>();
  private final List<Prism> still = new ArrayList<>();
  final PointMm front;
  final PointMm rear;

  /**
   * @throws OutOfRange if a wheel is missing
   */
  LampSpots(Study study) {
    Layout layout = study.layout();
    places = study.placed().places();
    front = axle(layout, Part.End.FRONT);
    rear = axle(layout, Part.End.REAR);
    fork = layout.parts(FrontPart.class).findFirst();
    Stream.concat(
            study.shapes().values().stream(),
            study.standings().stream().flatMap(s -> s.moved().values().stream()))
        .map(PartShape::prisms)
        .forEach(bodies::addAll);
    study.shapes().values().stream()
        .filter(s -> s.part() instanceof ShellPart && !s.part().base().steered())
        .map(PartShape::prisms)
        .forEach(still::addAll);
    study.sittings().forEach(s -> bodies.addAll(s.prisms()));
  }

  private PointMm axle(Layout layout, Part.End end) {
    return LampColour.axle(layout, places, end)
        .orElseThrow(
            () -> new OutOfRange("lamps are placed by the wheels; add the missing wheel first"));
  }

  /** Returns the height over the road from which nothing meets the front wheel at full bump. */
  double overFrontWheelMm() {
    return 2 * front.z() + BUMP_MM;
  }

  /**
   * Returns whether lamps about a place may turn with the bars: bodywork ahead is not in the way,
   * and bars on a post of their own turn otherwise than the wheel.
   */
  boolean turns(PointMm at) {
    Envelope round = new Envelope(new Coordinate(at.x(), at.z()));
    round.expandBy(TURN_ROOM_MM);
    return fork.flatMap(FrontPart::postTop).isEmpty()
        && still.stream().noneMatch(b -> b.outline().getEnvelopeInternal().intersects(round));
  }

  /** Returns the place on the steering axis at a height. */
  PointMm onAxis(double z) {
    return fork.map(f -> through(places.pin(f.bottom()), places.pin(f.top()), z))
        .orElseGet(() -> new PointMm(front.x() - (z - front.z()) * Math.tan(RAKE_RAD), z));
  }

  private static PointMm through(PointMm low, PointMm high, double z) {
    double rise = high.z() - low.z();
    double share = Math.abs(rise) < 1 ? 0 : (z - low.z()) / rise;
    return new PointMm(low.x() + share * (high.x() - low.x()), z);
  }

  /**
   * Goes from a place by steps until there is room.
   *
   * @param yMm distance of its middle from the middle plane, mm
   * @param way of a step, of length 1
   * @param outwards how much it goes outwards with each step, mm
   * @return the place, and how far out it is then
   * @throws OutOfRange if there is none within reach
   */
  Spot free(PointMm from, double yMm, Room room, PointMm way, double outwards) {
    for (int step = 0; step <= MOST_STEPS; step++) {
      PointMm at = from.plus(way.times(step * STEP_MM));
      double y = yMm + step * outwards;
      if (isFree(at, y, room)) {
        return new Spot(new PointMm(Math.rint(at.x()), Math.rint(at.z())), Math.rint(y));
      }
    }
    throw new OutOfRange(
        String.format(
            "no room for lamps within %.0f mm of %.0f, %.0f mm; clear some, or put them by hand",
            MOST_STEPS * STEP_MM, from.x(), from.z()));
  }

  /** A place and its distance from the middle plane, mm. */
  record Spot(PointMm at, double yMm) {}

  private boolean isFree(PointMm at, double y, Room room) {
    Envelope box = new Envelope(room.about());
    box.translate(at.x(), at.z());
    Envelope wide = new Envelope(box);
    wide.expandBy(CLEAR_MM);
    Geometry lamp = FACTORY.toGeometry(box);
    Interval across = new Interval(y - room.halfWidthMm(), y + room.halfWidthMm());
    return bodies.stream()
        .filter(b -> b.across().gap(across) < CLEAR_MM)
        .filter(b -> b.outline().getEnvelopeInternal().intersects(wide))
        .noneMatch(b -> b.outline().distance(lamp) < CLEAR_MM);
  }
}
