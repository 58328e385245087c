package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.start.SeatKit.Spots;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/**
 * The rider's seat with everybody on it who rides.
 *
 * @param kit its parts
 * @param seatHeightMm rear end of the pan's board over the road
 * @param leastBoardMm lowest place of the foot boards that leaning over allows
 * @param spots where its loose pieces are, from the rear end of the pan
 * @param sittings how everybody sits, likewise
 * @param lacksMm how much higher it must be for thighs to clear what is before it
 * @param pillionFromSeat rear end of the second seat's pan, likewise; the origin without one
 */
record Posed(
    SeatKit kit,
    double seatHeightMm,
    double leastBoardMm,
    Spots spots,
    List<Sitting> sittings,
    double lacksMm,
    PointMm pillionFromSeat) {

  /** No lower than this, so that shanks have room before the seat. */
  private static final double LOWEST_SEAT_MM = 430;

  /** Rests are this far inside of where leaning over would set them down, mm. */
  private static final double LEAN_SPARE_MM = 34;

  /** From what stands under the pan to the rails over it, mm. */
  private static final double UNDER_RAIL_MM = 10;

  private static final double LOWEST_BOARD_MM = 255;
  private static final double NARROWEST_FEET_MM = 250;

  /** Over the knees, not beside them: the farther out, the sooner a grip leaves its hand. */
  private static final double GRIPS_MM = 225;

  /** Feet stand this much farther out than knees, as in a seat at ease; see RiderWidth. */
  private static final double FEET_OVER_KNEES = 230.0 / 190;

  private static final double HIP_OVER_BACK_MM = 60;
  private static final double SHORTEST_BACK_MM = 380;
  private static final double LONGEST_BACK_MM = 500;

  static final Set<String> LEGS = Set.of("thigh", "shank", "foot");

  /**
   * Seats everybody.
   *
   * @param seatUpMm how much higher than it must be
   */
  static Posed of(Brief brief, Rolling rolling, Cargo cargo, double seatUpMm) {
    double tall = Cargo.heightMm(cargo.under());
    double over = Rails.UNDER_MM + Rails.THIN_MM / 2 + UNDER_RAIL_MM;
    double height = Math.ceil(Math.max(LOWEST_SEAT_MM, Rails.DECK_MM + tall + over) + seatUpMm);
    double gap = Draft.mmOf(Demands.Key.PERSON_GAP);
    double knees = rolling.straddledMm(brief) + gap + 3 + kneeMm(brief);
    double feetY = Math.ceil(Math.max(NARROWEST_FEET_MM, knees * FEET_OVER_KNEES) / 5) * 5;
    double outer = feetY + SeatKit.REST_WIDE_MM / 2;
    double lean = Draft.mmOf(Demands.Key.LEAN);
    double least = Math.ceil(Math.max(LOWEST_BOARD_MM, outer * Math.tan(lean) + LEAN_SPARE_MM));
    SeatKit kit =
        new SeatKit(brief.on(Occupant.RIDER), brief.reclineDeg(), backMm(brief), feetY, GRIPS_MM);
    List<Sitter.Top> tops = new ArrayList<>();
    if (!cargo.ahead().isEmpty()) {
      tops.add(
          new Sitter.Top(
              Rails.AHEAD_FROM_PAN_MM + cargo.lowRearMm(),
              Rails.DECK_MM + Cargo.heightMm(cargo.ahead()) - height));
    }
    railsAhead(brief, kit, rolling, cargo).ifPresent(tops::add);
    Sitter sitter = new Sitter(kit, height, least, rolling, tops);
    Spots spots = sitter.settle();
    List<Sitting> sittings = kit.sit(spots, kit.head.isPresent());
    return new Posed(kit, height, least, spots, sittings, sitter.lacksMm(sittings), PointMm.ORIGIN);
  }

  /** The rails under the pan, where something long under it makes them reach out ahead of it. */
  private static Optional<Sitter.Top> railsAhead(
      Brief brief, SeatKit kit, Rolling rolling, Cargo cargo) {
    double bend = Rails.seatBendFromPanMm(brief, kit, rolling, cargo);
    double up = bend * Math.tan(Math.toRadians(kit.panRiseDeg())) - Rails.UNDER_MM;
    double front = SeatKit.PAN_MM * Math.cos(Math.toRadians(kit.panRiseDeg()));
    return bend < front - Rails.THIN_MM
        ? Optional.empty()
        : Optional.of(new Sitter.Top(front, up + Rails.THIN_MM / 2));
  }

  Posed withPillion(PointMm fromSeat) {
    return new Posed(kit, seatHeightMm, leastBoardMm, spots, sittings, lacksMm, fromSeat);
  }

  /**
   * As far up as the shoulders of the shortest: a hip is some 60 mm above the lower end of the
   * back.
   */
  private static double backMm(Brief brief) {
    double shoulder =
        bodies(brief).mapToDouble(Body::hipToShoulderMm).min().orElseThrow() + HIP_OVER_BACK_MM;
    return Math.rint(Math.max(SHORTEST_BACK_MM, Math.min(LONGEST_BACK_MM, shoulder - 25)) / 5) * 5;
  }

  /** The thickest knee of the crew, as its flesh is drawn. */
  private static double kneeMm(Brief brief) {
    return bodies(brief)
        .mapToDouble(b -> b.measures().get("lowerthighcircumference") / (2 * Math.PI))
        .max()
        .orElseThrow();
  }

  private static Stream<Body> bodies(Brief brief) {
    return SeatKit.bodies(brief.on(Occupant.RIDER)).values().stream();
  }

  /**
   * Returns how far the foremost of some limbs that is higher than this is ahead of the pan, mm;
   * negative infinity where nothing is.
   */
  double aheadMm(Set<String> limbs, double aboveMm) {
    return sittings.stream()
        .flatMap(s -> s.flesh().stream())
        .filter(f -> limbs.contains(f.name()))
        .mapToDouble(
            f -> Extents.foremostAbove(f.outline().getCoordinates(), aboveMm - seatHeightMm))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** Returns some limbs of everybody, seen from the side. */
  List<Geometry> outlines(Set<String> limbs) {
    return sittings.stream()
        .flatMap(s -> s.flesh().stream())
        .filter(f -> limbs.contains(f.name()))
        .map(f -> (Geometry) f.outline())
        .toList();
  }

  /** Returns how far something is from everybody's legs, seen from the side, mm. */
  double awayFromLegsMm(Geometry thing) {
    return outlines(LEGS).stream()
        .mapToDouble(limb -> limb.distance(thing))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Returns where the eyes of those who ride are, from the pan's rear end. */
  List<PointMm> eyes() {
    return sittings.stream().flatMap(s -> s.posture().stream()).map(p -> p.eye()).toList();
  }
}
