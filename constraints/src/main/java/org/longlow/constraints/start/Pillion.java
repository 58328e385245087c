package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Comfort;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;

/**
 * The seat behind the rider, over the rear wheel: whoever sits there has a leg on either side of
 * the rider's back. Everything is counted from the rear end of its pan.
 */
final class Pillion {

  static final double PAN_MM = 340;
  static final double PAN_RISE_DEG = 3;
  static final double PAN_HALF_MM = 160;
  static final double BACK_MM = 380;

  private static final double[] PAN_BRACKETS_MM = {35, 170, 305};

  static final double BACK_LEAN_DEG = 15;
  static final PointMm BACK_FROM_PAN = new PointMm(-8, 100);
  static final double BACK_BOARD_MM = 9;
  static final double PEG_Y_MM = 385;
  static final double PEG_LONG_MM = 95;
  static final double PEG_MM = 25;
  static final double GRIP_Y_MM = 270;
  static final double GRIP_MM = 28;

  /** Firmer than the rider's: whoever sits upright carries nearly all of their weight on it. */
  private static final List<FoamSpec> PAN_FOAM =
      List.of(
          Parts.foam("medium HR", 20, 45, 250, 2.7),
          Parts.foam("firm", 35, 50, 310, 2.8),
          Parts.foam("very firm", 45, 58, 370, 2.8));

  /** Rails, their gap and the pan's board lie between the guard and the pan's face, mm. */
  private static final double OVER_GUARD_MM = 67;

  /** People keep so far off each other, mm; the findings want 10. */
  private static final double APART_MM = 14;

  private static final double LEAN_SPARE_MM = 80;

  /** Grips near the chest are far from the rider's back: the cost of a millimetre. */
  private static final double NEARER = 2e-4;

  /** Hands at rest stay so far off legs and chest, mm. */
  private static final double EASY_GAP_MM = 24;

  private static final double STEP_MM = 10;
  private static final double FARTHEST_BACK_MM = 1000;

  private final Map<String, Body> bodies;
  final CushionPart pan;
  final CushionPart back;
  final RestPart pegs;
  final RestPart grips;
  final double seatHeightMm;
  final PointMm peg;
  final PointMm grip;
  private final List<Sitting> sittings;

  Pillion(Brief brief, Rolling rolling) {
    bodies = SeatKit.bodies(brief.on(Brief.PILLION));
    pan =
        Parts.cushion(
            Base.of("pillionPan", "").half(PAN_HALF_MM).mass(2.6).touching("tailRail"),
            CushionPart.Role.PAN,
            Brief.PILLION,
            "pillionRear",
            "pillionFront",
            SeatKit.BOARD_MM,
            PAN_FOAM,
            PAN_BRACKETS_MM);
    back =
        Parts.cushion(
            Base.of("pillionBack", "").half(150).mass(2).touching("pillionPost"),
            CushionPart.Role.BACK,
            Brief.PILLION,
            "pillionBackLow",
            "pillionBackTop",
            BACK_BOARD_MM,
            SeatKit.BACK_FOAM);
    pegs =
        Parts.rest(
            Base.of("pillionPegs", "aluminium").mass(0.8).touching("pegStay"),
            RestPart.Kind.PEG,
            Brief.PILLION,
            "pillionPeg",
            Optional.empty(),
            PEG_MM,
            PEG_Y_MM,
            PEG_LONG_MM);
    grips =
        Parts.rest(
            Base.of("pillionGrips", "rubber").mass(0.6).touching("gripStay"),
            RestPart.Kind.GRIP,
            Brief.PILLION,
            "pillionGrip",
            Optional.empty(),
            GRIP_MM,
            GRIP_Y_MM,
            110);
    double guard = 2 * rolling.rear.freeRadiusMm() + Rolling.BUMP_MM + Rolling.GUARD_OFF_MM + 4;
    seatHeightMm = Math.ceil(guard + OVER_GUARD_MM);
    double outer = PEG_Y_MM + PEG_LONG_MM / 2;
    double least = outer * Math.tan(Draft.mmOf(Demands.Key.LEAN)) + LEAN_SPARE_MM + PEG_MM / 2;
    PointMm atEase = new PointMm(430, 290);
    double[] feet =
        Seek.least(
            new double[] {690, -390},
            new double[] {40, 40},
            new double[] {5, 5},
            x -> feetCost(new PointMm(x[0], x[1]), atEase, least - seatHeightMm));
    peg = new PointMm(Math.rint(feet[0]), Math.rint(feet[1]));
    double[] hands =
        Seek.least(
            new double[] {atEase.x(), atEase.z()},
            new double[] {40, 40},
            new double[] {5, 5},
            x -> handCost(new PointMm(x[0], x[1])));
    grip = new PointMm(Math.rint(hands[0]), Math.rint(hands[1]));
    sittings = sit(peg, grip);
  }

  /** Returns the pins of the seat, the rear end of its pan at 0. */
  Map<String, PointMm> pins(PointMm pegAt, PointMm gripAt) {
    double lean = Math.toRadians(BACK_LEAN_DEG);
    PointMm up = new PointMm(-Math.sin(lean), Math.cos(lean));
    Map<String, PointMm> pins = new LinkedHashMap<>();
    pins.put("pillionRear", PointMm.ORIGIN);
    pins.put("pillionFront", PointMm.unit(Math.toRadians(PAN_RISE_DEG)).times(PAN_MM));
    pins.put("pillionBackLow", BACK_FROM_PAN);
    pins.put("pillionBackTop", BACK_FROM_PAN.plus(up.times(BACK_MM)));
    pins.put("pillionPeg", pegAt);
    pins.put("pillionGrip", gripAt);
    return pins;
  }

  private List<Sitting> sit(PointMm pegAt, PointMm gripAt) {
    Places places = new Places(pins(pegAt, gripAt), Map.of());
    SeatParts parts =
        new SeatParts(
            Brief.PILLION,
            pan,
            Optional.of(back),
            Optional.empty(),
            Optional.of(pegs),
            Optional.of(grips));
    List<Sitting> all = new ArrayList<>();
    bodies.forEach((name, body) -> all.add(Seats.sit(name, body, parts, places)));
    return all;
  }

  private double feetCost(PointMm pegAt, PointMm gripAt, double leastZ) {
    double cost = Costs.must(pegAt.z(), leastZ);
    for (Sitting s : sit(pegAt, gripAt)) {
      if (s.posture().isEmpty()) {
        return Double.MAX_VALUE;
      }
      Posture posture = s.posture().get();
      double[] strays = Comfort.strays(posture.angles(), s.body().sex());
      cost += Costs.legs(strays) + Costs.shortfall(s, PoseResult.Limb.LEG);
    }
    return cost;
  }

  private double handCost(PointMm gripAt) {
    double cost = 0;
    for (Sitting s : sit(peg, gripAt)) {
      if (s.posture().isEmpty()) {
        return Double.MAX_VALUE;
      }
      double[] strays = Comfort.strays(s.posture().get().angles(), s.body().sex());
      cost += Costs.arms(strays) + Costs.shortfall(s, PoseResult.Limb.ARM) + NEARER * gripAt.x();
      for (String limb : List.of("thigh", "shank", "chest", "pelvis")) {
        cost += Costs.clear(Costs.away(s, limb, gripAt) - GRIP_MM / 2, EASY_GAP_MM);
      }
    }
    return cost;
  }

  /**
   * Returns the foremost place of its pan at which everybody has room, from the rear end of the
   * rider's.
   *
   * @param rails how far out the rails behind the rider's back are
   */
  PointMm place(Posed posed, double railsMm) {
    List<Prism> riding = new ArrayList<>();
    posed.sittings().forEach(s -> riding.addAll(s.finePrisms()));
    Solid rider = new Solid("rider", riding);
    Map<String, PointMm> pins = posed.kit().pins(posed.spots());
    Places seat = new Places(pins, Map.of());
    List<Prism> backing = new ArrayList<>(Shapes.body(posed.kit().back, seat));
    posed.kit().head.ifPresent(h -> backing.addAll(Shapes.body(h, seat)));
    PointMm low = pins.get("backLow");
    PointMm top = pins.get("backTop");
    PointMm off = top.minus(low).left().times(Rails.BEHIND_MM / low.distance(top));
    Interval left = new Interval(railsMm - Rails.THIN_MM / 2, railsMm + Rails.THIN_MM / 2);
    Geometry rail = Curves.bar(low.plus(off), top.plus(off), Rails.THIN_MM);
    backing.add(new Prism(rail, left));
    backing.add(new Prism(rail, left.mirrored()));
    Solid backs = new Solid("back", backing);
    Places own = new Places(pins(peg, grip), Map.of());
    List<Prism> behind = new ArrayList<>();
    sittings.forEach(s -> behind.addAll(s.finePrisms()));
    List<Prism> held = new ArrayList<>(Shapes.body(pegs, own));
    held.addAll(Shapes.body(grips, own));
    held.addAll(Shapes.body(pan, own));
    Solid person = new Solid("behind", behind);
    Solid things = new Solid("things", held);
    double up = seatHeightMm - posed.seatHeightMm();
    // from behind, where all are far apart and gaps are told quickly
    double x = -FARTHEST_BACK_MM;
    while (x < -PAN_MM) {
      RigidMotion nearer = Solid.by(new PointMm(x + STEP_MM, up));
      Solid sits = person.moved(nearer);
      Solid stand = things.moved(nearer);
      if (sits.to(rider, APART_MM) != null
          || sits.to(backs, APART_MM) != null
          || stand.to(rider, APART_MM) != null
          || stand.to(backs, APART_MM) != null) {
        break;
      }
      x += STEP_MM;
    }
    return new PointMm(x, up);
  }
}
