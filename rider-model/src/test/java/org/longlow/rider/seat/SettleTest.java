package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Population;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.RiderWidth;
import org.longlow.rider.words.Units;

class SettleTest {

  static final FoamStack BACK_FOAM = FoamStack.of(new FoamLayer(50, Foam.openCell(32, 85, 2.0)));

  /** A long, low seat: pan 15 deg up at the front, back 35 deg reclined, rest 25 deg. */
  static SeatGeometry seat() {
    return seat(15, 35, 25);
  }

  static SeatGeometry seat(double panDeg, double backDeg, double restDeg) {
    PointMm corner = new PointMm(300, 300);
    PointMm pan = PointMm.unit(Math.toRadians(panDeg));
    PointMm back = PointMm.unit(Math.toRadians(90 + backDeg));
    PointMm rest = PointMm.unit(Math.toRadians(90 + restDeg));
    PointMm top = corner.plus(back.times(560));
    PointMm restFrom = top.plus(back.times(95)).plus(new PointMm(45, 0));
    return new SeatGeometry(
        new Cushion(corner, corner.plus(pan.times(420)), FoamStackTest.TWO, 380),
        new Cushion(corner, top, BACK_FOAM, 360),
        new Cushion(restFrom, restFrom.plus(rest.times(220)), BACK_FOAM, 250),
        new FootContact.BallOnPeg(new PointMm(1380, 400)),
        new HandContact.Grip(new PointMm(680, 760)),
        RiderWidth.DEFAULT);
  }

  private static SeatOutcome.Seated seated(Body body, SeatGeometry seat) {
    SeatOutcome outcome = Settle.settle(body, seat);
    assertThat(outcome).isInstanceOf(SeatOutcome.Seated.class);
    return (SeatOutcome.Seated) outcome;
  }

  private static Body man() {
    return Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
  }

  @Test
  void hipLiesOffTheCompressedSurfaces() {
    SeatGeometry seat = seat();
    SeatOutcome.Seated s = seated(man(), seat);
    assertThat(s.converged()).isTrue();
    PointMm normal = seat.pan().to().minus(seat.pan().from()).left();
    double off = normal.dot(s.hip().minus(seat.pan().from())) / normal.length();
    assertThat(off).isCloseTo(95 - s.pan().sinkMm() + 95, within(1e-9));
    PointMm back = seat.back().to().minus(seat.back().from());
    double ahead = -back.left().dot(s.hip().minus(seat.back().from())) / back.length();
    // The back carries the same pressure all along its contact, so the torso stays parallel to it.
    assertThat(ahead).isCloseTo(50 - s.back().sinkMm() + 137, within(1e-9));
    assertThat(Math.toDegrees(s.reclineRad())).isCloseTo(35, within(1e-9));
  }

  @Test
  void loadsAreThoseOfTheFoundPosture() {
    SeatOutcome.Seated s = seated(man(), seat());
    double weight = 87.8 * SeatLoad.GRAVITY; // 80 kg in 7.8 kg of gear
    double sin = Math.sin(s.reclineRad());
    double sinRest = Math.sin(Math.toRadians(25));
    assertThat(s.headOnRest()).isTrue();
    double up =
        s.load().panVerticalN()
            + s.load().pegsN()
            + s.load().handsN()
            + s.load().backN() * sin
            + s.load().headRestN() * sinRest;
    assertThat(up).isCloseTo(weight, within(1e-8));
    assertThat(s.pan().normalN()).isEqualTo(s.load().panNormalN());
    assertThat(s.held()).isTrue();
    FoamContact again =
        FoamContact.press(FoamStackTest.TWO, Underside.seatOf(man(), 380), s.load().panNormalN());
    // The pan board clips the outline only where it ends.
    assertThat(s.pan().safeSinkMm()).isBetween(again.sinkMm() - 1e-6, again.sinkMm() + 4);
  }

  private static SettleOptions options(double backCentreShare, double brakingG) {
    SettleOptions usual = SettleOptions.DEFAULT;
    return new SettleOptions(
        usual.handsShare(), backCentreShare, usual.edgeShare(), brakingG, usual.bracingN());
  }

  private static Cushion moved(Cushion cushion, PointMm by) {
    return new Cushion(
        cushion.from().plus(by), cushion.to().plus(by), cushion.foam(), cushion.widthMm());
  }

  private static SeatGeometry moved(SeatGeometry seat, PointMm by) {
    FootContact.BallOnPeg peg = (FootContact.BallOnPeg) seat.foot();
    HandContact.Grip grip = (HandContact.Grip) seat.hand();
    return new SeatGeometry(
        moved(seat.pan(), by),
        moved(seat.back(), by),
        moved(seat.headRest(), by),
        new FootContact.BallOnPeg(peg.contact().plus(by)),
        new HandContact.Grip(grip.centre().plus(by)),
        seat.width());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void movingTheSeatMovesThePerson(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    PointMm by = new PointMm(random.nextDouble(-500, 500), random.nextDouble(-100, 500));
    SeatOutcome.Seated a = seated(man(), seat());
    SeatOutcome.Seated b = seated(man(), moved(seat(), by));
    assertThat(b.hip().distance(a.hip().plus(by))).isLessThan(1e-8);
    assertThat(b.pose().posture().eye().distance(a.pose().posture().eye().plus(by)))
        .isLessThan(1e-8);
    assertThat(b.pose().posture().knee().distance(a.pose().posture().knee().plus(by)))
        .isLessThan(1e-6);
    assertThat(b.pan().sinkMm()).isCloseTo(a.pan().sinkMm(), within(1e-9));
  }

  @Test
  void theHeavierSinkDeeper() {
    double before = 0;
    for (double kg = 50; kg <= 130; kg += 5) {
      SeatOutcome.Seated s = seated(Body.of(Sex.MALE, 1756, kg, Gear.RIDING), seat());
      // beyond this the head comes off its rest and its weight moves from rest to back
      assertThat(s.headOnRest()).isTrue();
      assertThat(s.pan().sinkMm()).isGreaterThan(before);
      before = s.pan().sinkMm();
    }
  }

  @Test
  void solvingTwiceGivesTheSame() {
    assertThat(Settle.settle(man(), seat())).isEqualTo(Settle.settle(man(), seat()));
  }

  @Test
  void aWholePopulationSettles() {
    Population people = Population.usAdults(99, 0.5);
    int worst = 0;
    for (int i = 0; i < 2000; i++) {
      Body body = Body.of(people.person(i), Gear.RIDING);
      SeatOutcome outcome = Settle.settle(body, seat());
      assertThat(outcome).isInstanceOf(SeatOutcome.Seated.class);
      SeatOutcome.Seated s = (SeatOutcome.Seated) outcome;
      assertThat(s.converged()).isTrue();
      assertThat(s.iterations()).isPositive();
      worst = Math.max(worst, s.iterations());
    }
    assertThat(worst).isLessThan(25);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {5, 6, 7, 8})
  void oddGeometryIsAnAnswer(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 500; n++) {
      SeatGeometry seat =
          new SeatGeometry(
              cushion(random),
              cushion(random),
              random.nextBoolean() ? cushion(random) : null,
              foot(random),
              random.nextBoolean()
                  ? new HandContact.OnThighs()
                  : new HandContact.Grip(point(random)),
              new RiderWidth(
                  random.nextDouble(0, 600), random.nextDouble(0, 800), random.nextDouble(0, 800)));
      SeatOutcome outcome = Settle.settle(man(), seat);
      if (outcome instanceof SeatOutcome.Seated s) {
        assertThat(Double.isFinite(s.pan().peakKPa())).isTrue();
        assertThat(Double.isFinite(s.back().peakKPa())).isTrue();
        assertThat(Double.isFinite(s.pose().posture().angles().knee())).isTrue();
      } else {
        assertThat(((SeatOutcome.Unseatable) outcome).reason()).isNotBlank();
      }
    }
  }

  private static FootContact foot(SplittableRandom random) {
    return random.nextInt(3) == 0
        ? new FootContact.BallOnPeg(point(random))
        : new FootContact.Footboard(point(random), point(random));
  }

  private static Cushion cushion(SplittableRandom random) {
    PointMm from = point(random);
    PointMm to =
        random.nextInt(20) == 0
            ? from
            : from.plus(
                PointMm.unit(random.nextDouble(-0.5, 2.6)).times(random.nextDouble(0, 900)));
    return new Cushion(from, to, FoamStackTest.TWO, random.nextDouble(1, 500));
  }

  private static PointMm point(SplittableRandom random) {
    return new PointMm(random.nextDouble(-300, 900), random.nextDouble(-200, 900));
  }

  @Test
  void withoutARestTheHeadIsHeldFree() {
    SeatGeometry full = seat();
    SeatGeometry bare =
        new SeatGeometry(full.pan(), full.back(), null, full.foot(), full.hand(), full.width());
    SeatOutcome.Seated s = seated(man(), bare);
    assertThat(s.headOnRest()).isFalse();
    assertThat(s.headGapMm()).isNaN();
    assertThat(s.load().headRestN()).isZero();
    assertThat(s.load().headBracketN()).isPositive();
    SeatGeometry far =
        new SeatGeometry(
            full.pan(),
            full.back(),
            moved(full.headRest(), new PointMm(-200, 0)),
            full.foot(),
            full.hand(),
            full.width());
    SeatOutcome.Seated off = seated(man(), far);
    assertThat(off.headOnRest()).isFalse();
    assertThat(off.headGapMm()).isGreaterThan(55);
    assertThat(off.notes()).anyMatch(note -> note.text().in(Units.MM).contains("head rest"));
  }

  @Test
  void aRiderTooShortForThePegsIsTold() {
    Body small = Body.of(Sex.FEMALE, 1450, 50, Gear.RIDING);
    SeatGeometry full = seat();
    SeatGeometry far =
        new SeatGeometry(
            full.pan(),
            full.back(),
            full.headRest(),
            new FootContact.BallOnPeg(new PointMm(1600, 420)),
            full.hand(),
            full.width());
    PoseResult pose = seated(small, far).pose();
    assertThat(pose.shortfalls())
        .anyMatch(s -> s.limb() == PoseResult.Limb.LEG && s.side() == PoseResult.Side.TOO_FAR);
  }

  @Test
  void aMemoryFoamPanBottomsAndSaysWhy() {
    SeatGeometry full = seat();
    FoamStack memory = FoamStack.of(new FoamLayer(60, Foam.memory(60, 60, 2)));
    Cushion pan = new Cushion(full.pan().from(), full.pan().to(), memory, 380);
    SeatOutcome.Seated s =
        seated(
            man(),
            new SeatGeometry(
                pan, full.back(), full.headRest(), full.foot(), full.hand(), full.width()));
    assertThat(s.converged()).isTrue();
    assertThat(s.pan().verdict()).isEqualTo(Compression.Verdict.BOTTOMS);
    assertThat(s.notes()).anyMatch(note -> note.text().in(Units.MM).contains("memory foam"));
  }

  @Test
  void aSteepLongPanPressesIntoTheThighs() {
    SeatGeometry steep = seat(30, 40, 30);
    SeatGeometry low =
        new SeatGeometry(
            steep.pan(),
            steep.back(),
            steep.headRest(),
            new FootContact.BallOnPeg(new PointMm(1380, 250)),
            steep.hand(),
            steep.width());
    assertThat(seated(man(), low).notes())
        .anyMatch(note -> note.text().in(Units.MM).contains("front edge of the pan"));
  }

  @Test
  void anExplicitBackResultantTiltsTheTrunk() {
    SettleOptions high = options(0.75, 0);
    SeatGeometry full = seat();
    SeatGeometry bare =
        new SeatGeometry(full.pan(), full.back(), null, full.foot(), full.hand(), full.width());
    SeatOutcome.Seated s = (SeatOutcome.Seated) Settle.settle(man(), bare, high);
    assertThat(s.converged()).isTrue();
    // The pressure acts higher, so the shoulders sink deeper and the trunk lies further back.
    assertThat(Math.toDegrees(s.reclineRad())).isBetween(35.2, 42.0);
    assertThat(s.load().backN()).isLessThan(seated(man(), bare).load().backN());
  }

  /**
   * A trunk that lies further back than its board: from the hip square to the trunk to the flat of
   * the back, and from there to the upper end of the contact, where the foam is pressed deepest.
   */
  @Test
  void aTiltedTrunkLiesOnTheFoamWhereItIsDeepest() {
    SeatGeometry full = seat();
    SeatGeometry bare =
        new SeatGeometry(full.pan(), full.back(), null, full.foot(), full.hand(), full.width());
    for (double share : new double[] {0.65, 0.7, 0.75}) {
      SeatOutcome.Seated s = (SeatOutcome.Seated) Settle.settle(man(), bare, options(share, 0));
      PointMm along = bare.back().to().minus(bare.back().from()).times(1 / 560.0);
      PointMm hip = s.hip().minus(bare.back().from());
      double tilt = s.reclineRad() - Math.toRadians(35);
      assertThat(Math.toDegrees(tilt)).isGreaterThan(1);
      PointMm trunk = PointMm.unit(Math.PI / 2 + s.reclineRad());
      // a point of the flat of the back: 137 mm behind the hip, square to the trunk
      PointMm behind = hip.plus(trunk.left().times(137));
      double upper = Math.min(man().hipToShoulderMm(), 560 - hip.dot(along));
      PointMm at =
          behind.plus(trunk.times((hip.dot(along) + upper - behind.dot(along)) / trunk.dot(along)));
      assertThat(-along.left().dot(at))
          .as("share " + share)
          .isCloseTo(50 - s.back().sinkMm(), within(1e-6));
    }
  }

  /** The pitch of a head, from eye and ear as they are drawn and as they are with a level head. */
  private static double pitchDeg(Body body, SeatOutcome.Seated s) {
    PointMm seen = s.pose().posture().eye().minus(s.pose().posture().tragion());
    PointMm level = body.head().eye().minus(body.head().tragion());
    return Math.toDegrees(seen.angleRad() - level.angleRad());
  }

  private static SeatGeometry restMoved(SeatGeometry seat, double forwardMm) {
    return new SeatGeometry(
        seat.pan(),
        seat.back(),
        moved(seat.headRest(), new PointMm(forwardMm, 0)),
        seat.foot(),
        seat.hand(),
        seat.width());
  }

  /** A rest is pushed forward: the head follows it until the neck bends by 60 degrees. */
  @Test
  void aRestThatBendsTheNeckTooFarIsNotLeantOn() {
    Body body = man();
    double most = 0;
    double leantTo = Double.NaN;
    double freeFrom = Double.NaN;
    for (int forward = -60; forward <= 300; forward += 2) {
      SeatOutcome.Seated s = seated(body, restMoved(seat(5, 55, 35), forward));
      double flexion = Math.toDegrees(s.reclineRad()) - pitchDeg(body, s);
      if (s.headOnRest()) {
        most = Math.max(most, flexion);
        leantTo = forward;
      } else if (!Double.isNaN(leantTo) && Double.isNaN(freeFrom)) {
        freeFrom = forward;
        // free again, it looks at the road: as far bent as that takes, no further
        assertThat(flexion).isCloseTo(45, within(0.01));
      }
    }
    assertThat(most).isGreaterThan(57).isLessThanOrEqualTo(60);
    assertThat(freeFrom).isEqualTo(leantTo + 2);
  }

  @Test
  void brakingAddsForwardPush() {
    SeatOutcome.Seated braking =
        (SeatOutcome.Seated)
            Settle.settle(man(), seat(5, 25, 20), options(SettleOptions.CONTACT_CENTRE, 0.6));
    assertThat(braking.held()).isFalse();
    assertThat(braking.load().frictionNeeded()).isGreaterThan(SeatLoad.DESIGN_FRICTION);
  }

  private static Cushion board(Cushion cushion, PointMm way) {
    return new Cushion(cushion.from(), cushion.from().plus(way), cushion.foam(), cushion.widthMm());
  }

  /** Boards of 50 mm are taken, shorter ones are not. */
  @Test
  void boardsMayBeShortButNotShorterThan50Mm() {
    SeatGeometry seat = seat(0, 0, 25);
    for (double length : new double[] {50, 49.999}) {
      boolean taken = length == 50;
      String pan =
          Settle.fault(
              OnSeat.with(
                  seat, board(seat.pan(), new PointMm(length, 0)), seat.back(), seat.headRest()));
      String back =
          Settle.fault(
              OnSeat.with(
                  seat, seat.pan(), board(seat.back(), new PointMm(0, length)), seat.headRest()));
      if (taken) {
        assertThat(pan).isNull();
        assertThat(back).isNull();
      } else {
        assertThat(pan).startsWith("The pan board is shorter than 50 mm");
        assertThat(back).startsWith("The back board is shorter than 50 mm");
      }
    }
  }

  /** What is said to be allowed is allowed to its ends: a back that leans forward one in one. */
  @Test
  void aBackMayLeanForwardBy45Degrees() {
    SeatGeometry seat = seat(-20, 0, 25);
    Cushion back = board(seat.back(), new PointMm(400, 400));
    assertThat(Settle.fault(OnSeat.with(seat, seat.pan(), back, seat.headRest()))).isNull();
    Cushion farther = board(seat.back(), new PointMm(400.1, 400));
    assertThat(Settle.fault(OnSeat.with(seat, seat.pan(), farther, seat.headRest())))
        .startsWith("The back leans -45.0 deg");
  }

  /** Slope of the pan, lean of the back and the corner between them, at both ends. */
  @ParameterizedTest(name = "pan {0}, back {1}")
  @CsvSource({
    "-58.99, -31, ''",
    "-59.01, -31, The pan slopes -59.0 deg",
    "58.99, 20, ''",
    "59.01, 20, The pan slopes 59.0 deg",
    "-20, -44.99, ''",
    "-20, -45.01, The back leans -45.0 deg",
    "0, 84.99, ''",
    "10, 85.01, The back leans 85.0 deg",
    "20, -39.99, ''",
    "20, -40.01, Pan and back meet at 30.0 deg; the hip needs 30 to 175 deg",
    "-20, 64.99, ''",
    "-20, 65.01, Pan and back meet at 175.0 deg; the hip needs 30 to 175 deg"
  })
  void whatASeatMayBe(double panDeg, double backDeg, String fault) {
    String said = Settle.fault(seat(panDeg, backDeg, 25));
    if (fault.isEmpty()) {
      assertThat(said).isNull();
    } else {
      assertThat(said).startsWith(fault);
    }
  }

  /**
   * A back that leans by 85 degrees to the last bit is taken, and one that meets its pan at 175;
   * the last bit more is not. Slopes of 59 degrees and corners of 30 come out of no two ends.
   */
  @ParameterizedTest(name = "pan {0}, back {1}")
  @CsvSource({"10, 85, The back leans 85.0", "-20, 65, Pan and back meet at 175.0"})
  void whatIsAllowedIsAllowedToItsLastBit(double panDeg, double backDeg, String fault) {
    SeatGeometry seat = seat(panDeg, backDeg, 25);
    PointMm pan = seat.pan().along();
    int taken = 0;
    int refused = 0;
    for (int bit = -20; bit <= 20; bit++) {
      double rad = Math.toRadians(90 + backDeg);
      PointMm way = PointMm.unit(rad + bit * Math.ulp(rad)).times(400);
      Cushion back = new Cushion(PointMm.ORIGIN, way, BACK_FOAM, 360);
      PointMm on = back.along();
      double lean = Math.toDegrees(Math.atan2(-on.x(), on.z()));
      double corner = Math.toDegrees(Math.atan2(pan.cross(on), pan.dot(on)));
      String said = Settle.fault(OnSeat.with(seat, seat.pan(), back, seat.headRest()));
      if (lean > 85 || corner > 175) {
        refused++;
        assertThat(said).startsWith(fault);
      } else {
        taken += lean == 85 || corner == 175 ? 1 : 0;
        assertThat(said).isNull();
      }
    }
    assertThat(taken).isPositive();
    assertThat(refused).isPositive();
  }

  /** Where sinks never agree with loads, it is said: another round of work then changes them. */
  @Test
  void whatDoesNotSettleSaysSo() {
    SplittableRandom random = new SplittableRandom(41);
    int not = 0;
    for (int i = 0; i < 150; i++) {
      SeatGeometry seat = seat(random.nextDouble(-20, 40), random.nextDouble(-10, 70), 25);
      PointMm along = seat.pan().along();
      PointMm from = seat.pan().from().plus(along.times(random.nextDouble(-350, 250)));
      Cushion pan =
          new Cushion(
              from, from.plus(along.times(random.nextDouble(60, 420))), FoamStackTest.TWO, 380);
      Settling free =
          Settle.run(
              man(), OnSeat.with(seat, pan, seat.back(), null), SettleOptions.DEFAULT, false);
      double off = 0;
      for (double change : free.changeAt(free.state())) {
        off = Math.max(off, Math.abs(change));
      }
      assertThat(free.settled()).as("seat %d is off by %s mm", i, off).isEqualTo(off < 1e-6);
      assertThat(free.rounds()).isLessThanOrEqualTo(60);
      not += free.settled() ? 0 : 1;
    }
    assertThat(not).isBetween(1, 149);
  }
}
