package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

/** Slopes by one step beside differences of whole settlings. */
class SettledNearbyTest {

  private static final double SMALL_MM = 1e-3;
  private static final double LARGE_MM = 0.05;

  /** mm per mm, and rad per m: differences over 0.05 mm leave some 1e-6 of curvature. */
  private static final double SLOPE = 2e-5;

  private static SeatGeometry shifted(SeatGeometry s, int which, double by) {
    PointMm d = which % 2 == 0 ? new PointMm(by, 0) : new PointMm(0, by);
    return switch (which / 2) {
      case 0 ->
          with(
              s,
              new Cushion(s.pan().from().plus(d), s.pan().to(), s.pan().foam(), s.pan().widthMm()),
              null,
              null);
      case 1 ->
          with(
              s,
              new Cushion(s.pan().from(), s.pan().to().plus(d), s.pan().foam(), s.pan().widthMm()),
              null,
              null);
      case 2 ->
          with(
              s,
              null,
              new Cushion(
                  s.back().from().plus(d), s.back().to(), s.back().foam(), s.back().widthMm()),
              null);
      case 3 ->
          with(
              s,
              null,
              new Cushion(
                  s.back().from(), s.back().to().plus(d), s.back().foam(), s.back().widthMm()),
              null);
      case 4 ->
          with(
              s,
              null,
              null,
              new Cushion(
                  s.headRest().from().plus(d),
                  s.headRest().to(),
                  s.headRest().foam(),
                  s.headRest().widthMm()));
      default ->
          with(
              s,
              null,
              null,
              new Cushion(
                  s.headRest().from(),
                  s.headRest().to().plus(d),
                  s.headRest().foam(),
                  s.headRest().widthMm()));
    };
  }

  private static SeatGeometry with(SeatGeometry s, Cushion pan, Cushion back, Cushion head) {
    return new SeatGeometry(
        pan == null ? s.pan() : pan,
        back == null ? s.back() : back,
        head == null ? s.headRest() : head,
        s.foot(),
        s.hand(),
        s.width());
  }

  private static TrunkPose whole(Body body, SeatGeometry seat) {
    SeatOutcome.Seated s = (SeatOutcome.Seated) Settle.settle(body, seat);
    return new TrunkPose(s.hip(), s.reclineRad(), s.pose().posture().angles().headPitch());
  }

  private static double[] slope(TrunkPose a, TrunkPose b, double over) {
    return new double[] {
      (b.hip().x() - a.hip().x()) / over,
      (b.hip().z() - a.hip().z()) / over,
      1000 * (b.reclineRad() - a.reclineRad()) / over,
      1000 * (b.headPitchRad() - a.headPitchRad()) / over
    };
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void slopesAreThoseOfSettlingAnew(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Sex sex = random.nextBoolean() ? Sex.FEMALE : Sex.MALE;
    Body body =
        Body.of(sex, random.nextDouble(1550, 1900), random.nextDouble(55, 100), Gear.RIDING);
    SeatGeometry seat =
        SettleTest.seat(
            random.nextDouble(5, 20), random.nextDouble(20, 45), random.nextDouble(10, 35));
    SeatOutcome.Seated seated = (SeatOutcome.Seated) Settle.settle(body, seat);
    SettledNearby nearby = new Reseat(body, seat).on(seat).orElseThrow();
    TrunkPose here = nearby.here();
    assertThat(here.hip().distance(seated.hip())).isLessThan(1e-7);
    assertThat(here.headPitchRad())
        .isCloseTo(seated.pose().posture().angles().headPitch(), within(1e-9));
    for (int which = 0; which < 12; which++) {
      double[] is =
          slope(
              nearby.on(shifted(seat, which, -SMALL_MM)),
              nearby.on(shifted(seat, which, SMALL_MM)),
              2 * SMALL_MM);
      double[] should =
          slope(
              whole(body, shifted(seat, which, -LARGE_MM)),
              whole(body, shifted(seat, which, LARGE_MM)),
              2 * LARGE_MM);
      for (int i = 0; i < is.length; i++) {
        assertThat(is[i]).as("end " + which + ", answer " + i).isCloseTo(should[i], within(SLOPE));
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14})
  void reseatingIsSettling(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Body body =
        Body.of(Sex.MALE, random.nextDouble(1600, 1900), random.nextDouble(60, 110), Gear.RIDING);
    Reseat reseat = new Reseat(body, SettleTest.seat());
    int leaning = 0;
    for (int i = 0; i < 200; i++) {
      SeatGeometry seat =
          SettleTest.seat(
              random.nextDouble(-20, 40), random.nextDouble(-10, 70), random.nextDouble(-5, 60));
      for (int which = 0; which < 12; which++) {
        seat = shifted(seat, which, random.nextDouble(-80, 80));
      }
      leaning += sameAnew(reseat, body, seat, "seat " + i) ? 1 : 0;
    }
    assertThat(leaning).isBetween(10, 190);
  }

  /** Compares with settling anew; whether the head leans. */
  private static boolean sameAnew(Reseat reseat, Body body, SeatGeometry seat, String as) {
    TrunkPose is = reseat.on(seat).map(SettledNearby::here).orElse(null);
    if (!(Settle.settle(body, seat) instanceof SeatOutcome.Seated should)) {
      assertThat(is).as(as).isNull();
      return false;
    }
    assertThat(is).as(as).isNotNull();
    if (should.converged()) {
      assertThat(is.hip().distance(should.hip())).as(as).isLessThan(1e-7);
      assertThat(is.headPitchRad())
          .as(as)
          .isCloseTo(should.pose().posture().angles().headPitch(), within(1e-9));
    }
    return should.headOnRest();
  }

  /**
   * Half off a pan there can be two answers; Reseat gives the one that settling anew does. Of these
   * seeds at least one seat each has two.
   */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {3, 45, 311})
  void reseatingIsSettlingAlsoAtTheEndsOfAPan(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Body body =
        Body.of(Sex.MALE, random.nextDouble(1600, 1900), random.nextDouble(60, 110), Gear.RIDING);
    Reseat reseat = new Reseat(body, SettleTest.seat());
    for (int i = 0; i < 60; i++) {
      SeatGeometry seat =
          SettleTest.seat(random.nextDouble(-20, 40), random.nextDouble(-10, 70), 25);
      for (int which = 0; which < 12; which++) {
        seat = shifted(seat, which, random.nextDouble(-80, 80));
      }
      Cushion pan = seat.pan();
      PointMm from = pan.from().plus(pan.along().times(random.nextDouble(-250, 250)));
      double length = pan.lengthMm() - random.nextDouble(0, 300);
      PointMm to = from.plus(pan.along().times(length));
      SeatGeometry shortPan =
          with(seat, new Cushion(from, to, pan.foam(), pan.widthMm()), null, null);
      sameAnew(reseat, body, shortPan, "seat " + i);
    }
  }

  private static SeatGeometry bare(SeatGeometry s) {
    return new SeatGeometry(s.pan(), s.back(), null, s.foot(), s.hand(), s.width());
  }

  /** Where the first seat holds nobody, or has no rest, later ones are settled from nothing. */
  @Test
  void aFirstSeatThatSeatsNobodyIsNoHindrance() {
    Body body = OnSeat.man();
    for (SeatGeometry first :
        new SeatGeometry[] {
          SettleTest.seat(70, 35, 25), SettleTest.seat(15, 88, 25), bare(SettleTest.seat())
        }) {
      Reseat reseat = new Reseat(body, first);
      assertThat(sameAnew(reseat, body, SettleTest.seat(), "leaning")).isTrue();
      assertThat(sameAnew(reseat, body, bare(SettleTest.seat()), "free")).isFalse();
      assertThat(reseat.on(SettleTest.seat(70, 35, 25))).isEmpty();
    }
  }

  /** From a seat near by the same is found in fewer rounds, as little is left to find. */
  @Test
  void fromNearByTheSameIsFoundInFewerRounds() {
    SplittableRandom random = new SplittableRandom(31);
    for (boolean leaning : new boolean[] {true, false}) {
      Settling first = Settle.run(OnSeat.man(), SettleTest.seat(), SettleOptions.DEFAULT, leaning);
      SettledNearby nearby = new SettledNearby(first);
      for (int i = 0; i < 50; i++) {
        SeatGeometry seat = SettleTest.seat();
        for (int which = 0; which < 12; which++) {
          seat = shifted(seat, which, random.nextDouble(-1, 1));
        }
        Settling anew = Settle.run(OnSeat.man(), seat, SettleOptions.DEFAULT, leaning);
        Settling near = nearby.settle(seat);
        assertThat(near).as("seat " + i).isNotNull();
        assertThat(near.settled()).isTrue();
        assertThat(near.rounds()).isBetween(1, anew.rounds() - 2);
        assertThat(near.at().hip().distance(anew.at().hip())).isLessThan(1e-8);
      }
    }
  }

  /** Somebody whose head leans is not seated without a rest. */
  @Test
  void aHeadThatLeansNeedsARestNearByToo() {
    SettledNearby leaning =
        new SettledNearby(Settle.run(OnSeat.man(), SettleTest.seat(), SettleOptions.DEFAULT, true));
    assertThat(leaning.settle(SettleTest.seat())).isNotNull();
    assertThat(leaning.settle(bare(SettleTest.seat()))).isNull();
  }

  /**
   * Who sits 30 mm or more from both ends of a pan is well on it: where the hip's foot on the board
   * lies, settled, or with nothing pressed in, where two lines meet off the covers.
   */
  @Test
  void whoIsWellOverAPanIsKnown() {
    SeatGeometry full = bare(SettleTest.seat());
    PointMm along = full.pan().along();
    int well = 0;
    for (int mm = -420; mm <= 250; mm += 10) {
      PointMm from = full.pan().from().plus(along.times(mm));
      for (double length : new double[] {420, 70}) {
        Cushion pan =
            new Cushion(
                from, from.plus(along.times(length)), full.pan().foam(), full.pan().widthMm());
        SeatGeometry seat = OnSeat.with(full, pan, full.back(), null);
        Settling settling = Settle.run(OnSeat.man(), seat, SettleOptions.DEFAULT, false);
        double at = OnSeat.along(pan, settling.at().hip());
        boolean over = settling.carried() && at > 30 && at < length - 30;
        assertThat(settling.isOverPan()).as("%d of %s", mm, length).isEqualTo(over);
        well += over ? 1 : 0;
        double bare = OnSeat.along(pan, whereLinesMeet(seat));
        assertThat(new Settling(settling, seat).wouldBeOverPan())
            .as("%d of %s, bare", mm, length)
            .isEqualTo(bare > 30 && bare < length - 30);
      }
    }
    assertThat(well).isBetween(10, 100);
  }

  /** 95 mm off the cover of the pan and 137 mm off that of the back. */
  private static PointMm whereLinesMeet(SeatGeometry seat) {
    PointMm pan = seat.pan().along();
    PointMm back = seat.back().along();
    PointMm low = seat.pan().from().plus(pan.left().times(seat.pan().foam().thicknessMm() + 95));
    PointMm off =
        seat.back().from().plus(back.left().times(-seat.back().foam().thicknessMm() - 137));
    double t = off.minus(low).cross(back) / pan.cross(back);
    return low.plus(pan.times(t));
  }
}
