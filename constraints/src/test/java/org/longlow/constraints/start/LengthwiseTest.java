package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.constraints.start.SeatKit.Spots;
import org.longlow.rider.geom.PointMm;

/** Where things lie along a machine on which nobody sits yet, measured again as they are drawn. */
class LengthwiseTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double SEAT_MM = 450;
  private static final double BACK_MM = 460;

  /** A stay ends 22.5 mm inside of its board, and is 18 thick; a boot reaches 9 in. */
  private static final double STAY_IN_MM = 22.5 + 9 - 9 + 6;

  private static final Spots SPOTS =
      new Spots(
          new PointMm(800, 100),
          35,
          new PointMm(500, 400),
          new PointMm(0, 600),
          new PointMm(0, 800));

  private static Answers.Builder say(Drive drive, Place place) {
    return new Answers.Builder().drive(drive).place(place);
  }

  private static Lengthwise room(Brief brief, Tuning tuning) {
    Rolling rolling = new Rolling(brief);
    return room(brief, rolling, Cargo.of(brief, rolling), tuning);
  }

  private static Lengthwise room(Brief brief, Rolling rolling, Cargo cargo, Tuning tuning) {
    SeatKit kit = new SeatKit(brief.on(Occupant.RIDER), brief.reclineDeg(), BACK_MM, 260, 225);
    Posed posed = new Posed(kit, SEAT_MM, 255, SPOTS, List.of(), 0, new PointMm(-400, 200));
    return new Lengthwise(brief, rolling, cargo, posed, Optional.empty(), tuning);
  }

  static Stream<Arguments> rooms() {
    List<Arguments> all = new ArrayList<>();
    for (Drive drive : Drive.values()) {
      for (Place place : Place.values()) {
        if (drive == Drive.ENGINE && place == Place.HUB) {
          continue;
        }
        for (double recline : new double[] {20, 55}) {
          Tuning tuning = recline == 20 ? Tuning.FIRST : Tuning.FIRST.withSeatAhead(70);
          all.add(Arguments.of(say(drive, place).reclineDeg(recline).answers(), tuning));
        }
      }
    }
    // as wide as the rails
    all.add(
        Arguments.of(
            say(Drive.ENGINE, Place.UNDER).box(new Box(420, 240, 420, 50)).answers(),
            Tuning.FIRST));
    all.add(
        Arguments.of(
            say(Drive.MOTOR, Place.UNDER).box(new Box(300, 220, 420, 30)).answers(), Tuning.FIRST));
    return all.stream();
  }

  /** The board of the back as it is drawn. */
  private static LineString back(Lengthwise room, double byMm) {
    double lean = Math.toRadians(room.brief.reclineDeg());
    PointMm low = new PointMm(room.seatXMm - 22 + byMm, SEAT_MM + 50);
    return FACTORY.createLineString(
        new Coordinate[] {
          new Coordinate(low.x(), low.z()),
          new Coordinate(low.x() - BACK_MM * Math.sin(lean), low.z() + BACK_MM * Math.cos(lean))
        });
  }

  private static double fromBackMm(Lengthwise room, double x, double z, double byMm) {
    return back(room, byMm).distance(FACTORY.createPoint(new Coordinate(x, z)));
  }

  /**
   * Behind the back are its board or stay, 8 mm of air, and the guard 32 mm off the tyre at 64 mm
   * of bump: with a seat that was not sent ahead, no less than that.
   */
  @ParameterizedTest
  @MethodSource("rooms")
  void theBackKeepsOffTheWheelAndWhatIsBehindIt(Answers answers, Tuning tuning) {
    Brief brief = Brief.of(answers);
    Lengthwise room = room(brief, tuning);
    double radius = room.rolling.rear.freeRadiusMm();
    double behind = brief.reclineDeg() >= 26 ? 34 + Rails.STAY_MM / 2 : 12;
    double least = radius + 32 + behind + 8;
    assertThat(fromBackMm(room, 0, radius + 64, 0)).isGreaterThanOrEqualTo(least - 1e-9);
    for (Cargo.Item item : room.cargo.behind()) {
      double top = 190 + 16 + item.heightMm();
      double rear = item.name().equals("engine") ? 0.4 * item.lengthMm() : 0;
      for (double x : new double[] {item.lengthMm(), rear}) {
        assertThat(fromBackMm(room, room.behindFromMm + x, top, 0))
            .isGreaterThanOrEqualTo(34 + 14 + 8 - 1e-9);
      }
    }
    // over the pivot, or what lies behind it
    assertThat(room.seatXMm).isGreaterThanOrEqualTo(room.rolling.pivot.x() + 60 - 1e-9);
    if (!room.cargo.behind().isEmpty()) {
      double to = room.behindFromMm + Cargo.lengthMm(room.cargo.behind());
      assertThat(room.backKnotMm - 14).isGreaterThanOrEqualTo(to + 4 - 1e-9);
      assertThat(room.behindFromMm).isCloseTo(room.rolling.pivot.x() + 16 + 30, within(1e-9));
    }
  }

  /** Two millimetres farther back something of that would not hold. */
  @ParameterizedTest
  @MethodSource("rooms")
  void theSeatIsAsFarBackAsItCanBe(Answers answers, Tuning tuning) {
    Brief brief = Brief.of(answers);
    Lengthwise room = room(brief, Tuning.FIRST);
    double radius = room.rolling.rear.freeRadiusMm();
    double behind = brief.reclineDeg() >= 26 ? 34 + Rails.STAY_MM / 2 : 12;
    boolean wheel = fromBackMm(room, 0, radius + 64, -2) < radius + 32 + behind + 8;
    boolean pivot = room.seatXMm - 2 < room.rolling.pivot.x() + 60;
    boolean cargo = false;
    for (Cargo.Item item : room.cargo.behind()) {
      pivot = false;
      double top = 190 + 16 + item.heightMm();
      double rear = item.name().equals("engine") ? 0.4 * item.lengthMm() : 0;
      cargo =
          fromBackMm(room, room.behindFromMm + item.lengthMm(), top, -2) < 56
              || fromBackMm(room, room.behindFromMm + rear, top, -2) < 56
              || room.backKnotMm - 2 - 14
                  < room.behindFromMm + Cargo.lengthMm(room.cargo.behind()) + 4;
    }
    assertThat(wheel || pivot || cargo).isTrue();
    // sent ahead, all goes with it
    Lengthwise ahead = room(brief, tuning);
    assertThat(ahead.seatXMm).isCloseTo(room.seatXMm + tuning.seatAheadMm(), within(1e-9));
    assertThat(ahead.backKnotMm - room.backKnotMm).isCloseTo(tuning.seatAheadMm(), within(1e-9));
  }

  /** In a row from the rear: what is under the pan, its rails, what is ahead, the front wheel. */
  @ParameterizedTest
  @MethodSource("rooms")
  void nothingLiesInWhatIsNextToIt(Answers answers, Tuning tuning) {
    Brief brief = Brief.of(answers);
    Lengthwise room = room(brief, tuning);
    double underTo = room.underFromMm + Cargo.lengthMm(room.cargo.under());
    // rails of 28 mm, and of 32 at the front
    assertThat(room.underFromMm)
        .isGreaterThanOrEqualTo(room.rolling.pivot.x() + (brief.electric() ? 48 : 75) - 1e-9);
    assertThat(room.floorKnotMm - 14).isGreaterThanOrEqualTo(underTo - 1e-9);
    assertThat(room.floorKnotMm).isGreaterThanOrEqualTo(room.seatXMm + 330 - 1e-9);
    assertThat(Math.min(room.floorKnotMm - 14 - underTo, room.floorKnotMm - room.seatXMm - 330))
        .isLessThanOrEqualTo(42 + 1e-9);
    assertThat(room.aheadFromMm - room.floorKnotMm).isCloseTo(14 + 12, within(1e-9));
    double aheadTo = room.aheadFromMm + Cargo.lengthMm(room.cargo.ahead());
    double tyre = room.wheelbaseMm - room.rolling.front.freeRadiusMm();
    double steer = SteerRoom.mm(room.rolling, brief.front());
    assertThat(tyre - steer).isCloseTo(room.floorFrontMm, within(1e-9));
    assertThat(room.floorFrontMm - 16).isGreaterThanOrEqualTo(aheadTo - 1e-9);
    assertThat(room.wheelbaseMm % 10).isZero();
    double needed = aheadTo + 16 + steer + room.rolling.front.freeRadiusMm();
    double least = room.leastWheelbaseMm;
    assertThat(least).isGreaterThanOrEqualTo(needed - 1e-9);
    // the turned tyre keeps 15 mm and three more off boards and their stays; 12 mm less, of which
    // corners taken as square are some, and either that or what lies before it would not be kept
    assertThat(tyreBesideFeetMm(room, least)).isGreaterThan(18 - 0.3);
    assertThat(least - 12 < needed || tyreBesideFeetMm(room, least - 12) < 18).isTrue();
    boolean hangs =
        !room.cargo.behind().isEmpty() || room.backKnotMm - room.rolling.pivot.x() > 170;
    assertThat(room.hangsOnFloor).isEqualTo(hangs);
  }

  /** From the turned tyre, point by point, to the boards from 9 mm inside on and to their stays. */
  private static double tyreBesideFeetMm(Lengthwise room, double wheelbase) {
    double[] rear = {room.seatXMm + 800 - wheelbase, SEAT_MM + 100};
    double rise = Math.toRadians(35);
    double[] front = {rear[0] + 300 * Math.cos(rise), rear[1] + 300 * Math.sin(rise)};
    double stay = rear[0] + 0.12 * 300 * Math.cos(rise);
    double up = rear[1] + 0.12 * 300 * Math.sin(rise);
    double least = Double.MAX_VALUE;
    for (int k = 0; k <= 40; k++) {
      double out = -(260 - 55 - 9 + 6 + 4 * k);
      double board =
          SteerRoomTest.gapMm(
              room.rolling,
              room.brief.front(),
              new double[] {rear[0], out, rear[1]},
              new double[] {front[0], out, front[1]},
              6);
      double leg =
          SteerRoomTest.gapMm(
              room.rolling,
              room.brief.front(),
              new double[] {stay, out + STAY_IN_MM, 190},
              new double[] {stay, out + STAY_IN_MM, up},
              9);
      least = Math.min(least, Math.min(board, leg));
    }
    return least;
  }

  /**
   * Something as wide as the rails begins ahead of the rail of the back; a motor ends before theirs
   * slope.
   */
  @Test
  void whatIsAsWideAsTheRailsLiesBetweenThem() {
    for (Drive drive : Drive.values()) {
      for (double breadth : new double[] {180, 420}) {
        Brief brief =
            Brief.of(say(drive, Place.UNDER).box(new Box(400, 240, breadth, 50)).answers());
        Lengthwise room = room(brief, Tuning.FIRST);
        boolean wide = breadth / 2 > room.rolling.railYMm - 14 - 4;
        assertThat(wide).isEqualTo(breadth == 420);
        if (wide) {
          assertThat(room.underFromMm).isGreaterThanOrEqualTo(room.backKnotMm + 14 + 12 - 1e-9);
        }
        double underTo = room.underFromMm + Cargo.lengthMm(room.cargo.under());
        double slope = wide && drive == Drive.MOTOR ? 42 : 0;
        assertThat(room.floorKnotMm)
            .isCloseTo(Math.max(room.seatXMm + 330, underTo + 14 + slope), within(1e-9));
      }
    }
  }

  @Test
  void theWheelbaseIsTheOneAskedForOrTheUsualOrWhatIsNeeded() {
    Brief asked = Brief.of(say(Drive.ENGINE, Place.BEFORE).wheelbaseMm(1712).answers());
    assertThat(room(asked, Tuning.FIRST).wheelbaseMm).isEqualTo(1712);
    assertThat(room(asked, Tuning.FIRST.withLonger(30)).wheelbaseMm).isEqualTo(1712);
    Brief free = Brief.of(say(Drive.MOTOR, Place.HUB).answers());
    Rolling rolling = new Rolling(free);
    Lengthwise small =
        room(free, rolling, new Cargo(List.of(), List.of(), List.of()), Tuning.FIRST);
    assertThat(small.leastWheelbaseMm).isLessThan(1500);
    assertThat(small.wheelbaseMm).isEqualTo(1500);
    // with nothing ahead the rails go on for 60
    double needed = small.floorKnotMm + 60 + rolling.front.freeRadiusMm() + 99;
    assertThat(small.leastWheelbaseMm).isGreaterThanOrEqualTo(needed);
    Brief large =
        Brief.of(say(Drive.ENGINE, Place.BEFORE).box(new Box(700, 310, 320, 70)).answers());
    Lengthwise needs = room(large, Tuning.FIRST.withLonger(40));
    assertThat(needs.leastWheelbaseMm).isGreaterThan(1500);
    assertThat(needs.wheelbaseMm).isEqualTo(Math.ceil(needs.leastWheelbaseMm / 10) * 10 + 40);
  }

  /**
   * The rail of the back lies 34 mm behind its board, and takes up its slope 45 over the pan's end.
   */
  @ParameterizedTest
  @MethodSource("rooms")
  void theRailOfTheBackIsParallelToIt(Answers answers, Tuning tuning) {
    Lengthwise room = room(Brief.of(answers), tuning);
    PointMm foot = room.backFoot();
    assertThat(foot.z()).isCloseTo(45, within(1e-9));
    PointMm at = room.of(foot);
    assertThat(at.x()).isCloseTo(room.backKnotMm, within(1e-9));
    assertThat(at.z()).isCloseTo(SEAT_MM + 45, within(1e-9));
    // square to the line of the board, behind it
    double lean = Math.toRadians(room.brief.reclineDeg());
    double off = (foot.x() + 22) * Math.cos(lean) + (foot.z() - 50) * Math.sin(lean);
    assertThat(off).isCloseTo(-34, within(1e-9));
    assertThat(room.pillionXMm).isCloseTo(room.seatXMm - 400, within(1e-9));
    assertThat(room.spots()).isEqualTo(SPOTS);
  }

  /**
   * Where all begins at the rail of the back, what is told of the rails under the pan beforehand.
   */
  @ParameterizedTest
  @MethodSource("rooms")
  void whereRailsBendIsKnownBeforehand(Answers answers, Tuning tuning) {
    Lengthwise room = room(Brief.of(answers), Tuning.FIRST);
    double bend = Rails.seatBendFromPanMm(room.brief, room.posed.kit(), room.rolling, room.cargo);
    assertThat(bend).isGreaterThanOrEqualTo(room.floorKnotMm - room.seatXMm - 42 - 1e-9);
    assertThat(bend).isGreaterThanOrEqualTo(330 - 42);
  }

  /** Narrow and long, nothing behind: the row begins at the pivot, 60 mm behind the seat. */
  @Test
  void railsBendAheadOfALongRow() {
    Lengthwise engine =
        room(
            Brief.of(say(Drive.ENGINE, Place.UNDER).box(new Box(560, 200, 320, 50)).answers()),
            Tuning.FIRST);
    assertThat(engine.cargo.behind()).isEmpty();
    double row = engine.cargo.under().stream().mapToDouble(i -> i.lengthMm()).sum();
    double bend =
        Rails.seatBendFromPanMm(engine.brief, engine.posed.kit(), engine.rolling, engine.cargo);
    assertThat(bend).isGreaterThanOrEqualTo(75 - 60 + row + 14 - 42).isGreaterThan(500);
    assertThat(bend).isGreaterThanOrEqualTo(engine.floorKnotMm - engine.seatXMm - 42 - 1e-9);
  }
}
