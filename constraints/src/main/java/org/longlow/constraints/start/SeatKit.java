package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/**
 * The rider's seat: its cushions, boards for the feet and grips, and where they are from the rear
 * end of the pan.
 *
 * <p>Foams are of the common catalogue of upholstery (trade sheets: HR seat foam of 38 to 55 kg/m³,
 * support layers of 45 to 60 kg/m³ with 220 to 350 N, backs of 28 to 35 kg/m³), as the shipped
 * machines use them.
 */
final class SeatKit {

  static final double PAN_MM = 380;
  static final double PAN_HALF_MM = 175;
  static final double BACK_HALF_MM = 150;
  static final double BOARD_MM = 12;

  /** Where boards are carried, from their rear or lower ends; overhangs bend less than spans. */
  private static final double[] PAN_BRACKETS_MM = {40, 190, 340};

  private static final double[] BACK_BRACKETS_MM = {60, 200, 340};

  /** The back rest's lower end from the pan's rear end. */
  static final PointMm BACK_FROM_PAN = new PointMm(-22, 50);

  static final double REST_MM = 300;
  static final double REST_THICK_MM = 12;
  static final double REST_WIDE_MM = 110;
  static final double GRIP_MM = 32;
  static final double GRIP_LONG_MM = 120;

  /** Foam of the head rest, mm. */
  static final double HEAD_FOAM_MM = 40;

  /** A back that leans more than this gets a head rest, deg; the findings ask from 30. */
  static final double HEAD_FROM_DEG = 26;

  static final List<FoamSpec> PAN_FOAM =
      List.of(
          Parts.foam("medium HR", 20, 45, 225, 2.7),
          Parts.foam("firm", 35, 48, 280, 2.76),
          Parts.foam("very firm", 40, 55, 345, 2.8));

  static final List<FoamSpec> BACK_FOAM =
      List.of(
          Parts.foam("soft HR", 20, 38, 130, 2.4),
          Parts.foam("medium HR", 20, 45, 200, 2.6),
          Parts.foam("firm", 20, 48, 280, 2.76));

  private static final List<FoamSpec> HEAD_FOAM =
      List.of(
          Parts.foam("soft HR", 10, 38, 130, 2.4),
          Parts.foam("medium HR", 15, 45, 200, 2.6),
          Parts.foam("firm", HEAD_FOAM_MM - 25, 48, 250, 2.76));

  private final Map<String, Body> bodies;
  final double reclineDeg;
  final double feetYMm;
  final double gripsYMm;
  final double backMm;
  final CushionPart pan;
  final CushionPart back;
  final Optional<CushionPart> head;
  final RestPart boards;
  final RestPart grips;

  SeatKit(List<Person> people, double reclineDeg, double backMm, double feetYMm, double gripsYMm) {
    bodies = bodies(people);
    this.reclineDeg = reclineDeg;
    this.backMm = backMm;
    this.feetYMm = feetYMm;
    this.gripsYMm = gripsYMm;
    String seat = Occupant.RIDER;
    pan =
        Parts.cushion(
            Base.of("pan", "").half(PAN_HALF_MM).mass(3.2).touching("back"),
            CushionPart.Role.PAN,
            seat,
            "panRear",
            "panFront",
            BOARD_MM,
            PAN_FOAM,
            PAN_BRACKETS_MM);
    back =
        Parts.cushion(
            Base.of("back", "").half(BACK_HALF_MM).mass(3.2),
            CushionPart.Role.BACK,
            seat,
            "backLow",
            "backTop",
            BOARD_MM,
            BACK_FOAM,
            BACK_BRACKETS_MM);
    head =
        reclineDeg < HEAD_FROM_DEG
            ? Optional.empty()
            : Optional.of(
                Parts.cushion(
                    Base.of("headRest", "").half(100).mass(0.6),
                    CushionPart.Role.HEAD,
                    seat,
                    "headLow",
                    "headHigh",
                    9,
                    HEAD_FOAM));
    boards =
        Parts.rest(
            Base.of("boards", "aluminium").mass(2),
            RestPart.Kind.FOOTBOARD,
            seat,
            "boardRear",
            Optional.of("boardFront"),
            REST_THICK_MM,
            feetYMm,
            REST_WIDE_MM);
    grips =
        Parts.rest(
            Base.of("grips", "rubber").mass(1).steered(),
            RestPart.Kind.GRIP,
            seat,
            "grip",
            Optional.empty(),
            GRIP_MM,
            gripsYMm,
            GRIP_LONG_MM);
  }

  /** Returns the bodies of people in their gear, by name; none of their measures is a formula. */
  static Map<String, Body> bodies(List<Person> people) {
    Places nowhere = new Places(Map.of(), Map.of());
    Map<String, Body> bodies = new LinkedHashMap<>();
    people.forEach(person -> bodies.put(person.name(), Seats.body(person, nowhere)));
    return bodies;
  }

  /**
   * How much the pan rises to the front, deg: some 10 below the slope at which nothing pulls the
   * rider forward, which keeps inside the friction of clothes on covers, and inside what people
   * choose (Wang, Grébonval and Beillas, Ergonomics 2023: 11 to 39 degrees over backs of 20 to 60).
   */
  double panRiseDeg() {
    return Math.rint(10 + 0.3 * Math.max(0, reclineDeg - 20));
  }

  /**
   * Where the loose pieces are, from the rear end of the pan.
   *
   * @param board rear end of the foot board
   * @param boardDeg its rise to the front
   * @param grip middle of the grips
   * @param headLow lower end of the head rest's board
   * @param headHigh upper end
   */
  record Spots(PointMm board, double boardDeg, PointMm grip, PointMm headLow, PointMm headHigh) {

    Spots withFeet(PointMm at, double deg) {
      return new Spots(at, deg, grip, headLow, headHigh);
    }

    Spots withGrip(PointMm at) {
      return new Spots(board, boardDeg, at, headLow, headHigh);
    }

    Spots withHead(PointMm low, PointMm high) {
      return new Spots(board, boardDeg, grip, low, high);
    }

    PointMm boardFront() {
      return board.plus(PointMm.unit(Math.toRadians(boardDeg)).times(REST_MM));
    }
  }

  /** Returns the pins of the seat, the rear end of its pan at 0. */
  Map<String, PointMm> pins(Spots spots) {
    Map<String, PointMm> pins = new LinkedHashMap<>();
    double lean = Math.toRadians(reclineDeg);
    pins.put("panRear", new PointMm(0, 0));
    pins.put("panFront", PointMm.unit(Math.toRadians(panRiseDeg())).times(PAN_MM));
    pins.put("backLow", BACK_FROM_PAN);
    pins.put(
        "backTop", BACK_FROM_PAN.plus(new PointMm(-Math.sin(lean), Math.cos(lean)).times(backMm)));
    if (head.isPresent()) {
      pins.put("headLow", spots.headLow());
      pins.put("headHigh", spots.headHigh());
    }
    pins.put("boardRear", spots.board());
    pins.put("boardFront", spots.boardFront());
    pins.put("grip", spots.grip());
    return pins;
  }

  /** Returns the shortest of what {@code of} says of those who sit here, mm. */
  double shortest(ToDoubleFunction<Body> of) {
    return bodies.values().stream().mapToDouble(of).min().orElseThrow();
  }

  /** Returns how everybody sits, the rear end of the pan at 0. */
  List<Sitting> sit(Spots spots, boolean headRest) {
    Places places = new Places(pins(spots), Map.of());
    SeatParts parts =
        new SeatParts(
            Occupant.RIDER,
            pan,
            Optional.of(back),
            headRest ? head : Optional.empty(),
            Optional.of(boards),
            Optional.of(grips));
    List<Sitting> sittings = new ArrayList<>();
    bodies.forEach((name, body) -> sittings.add(Seats.sit(name, body, parts, places)));
    return sittings;
  }
}
