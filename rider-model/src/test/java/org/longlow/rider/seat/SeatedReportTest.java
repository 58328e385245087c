package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.rider.seat.OnSeat.BACK_MM;
import static org.longlow.rider.seat.OnSeat.above;
import static org.longlow.rider.seat.OnSeat.along;
import static org.longlow.rider.seat.OnSeat.notes;
import static org.longlow.rider.seat.OnSeat.seated;
import static org.longlow.rider.seat.OnSeat.with;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;

/**
 * What cushions carry under somebody seated, worked out again from where their joints came to be.
 */
class SeatedReportTest {

  /** Seats and people from a seed, with and without a head rest. */
  private static void each(
      long seed, int count, java.util.function.BiConsumer<Body, SeatGeometry> c) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < count; i++) {
      Body body =
          Body.of(
              random.nextBoolean() ? Sex.MALE : Sex.FEMALE,
              random.nextDouble(1550, 1900),
              random.nextDouble(50, 110),
              Gear.RIDING);
      SeatGeometry seat =
          SettleTest.seat(
              random.nextDouble(-5, 30), random.nextDouble(5, 55), random.nextDouble(0, 50));
      c.accept(body, random.nextInt(4) == 0 ? with(seat, seat.pan(), seat.back(), null) : seat);
    }
  }

  /** The pan carries what presses square to it where the outline under the hip is pressed in. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void thePanCarriesItsLoadUnderTheHip(long seed) {
    each(
        seed,
        15,
        (body, seat) -> {
          SeatOutcome.Seated s = seated(body, seat);
          assertThat(s.converged()).isTrue();
          assertThat(notes(s, "did not agree")).isFalse();
          CushionLoad pan = s.pan();
          double station = along(seat.pan(), s.hip());
          Underside under =
              Underside.seatOf(body, seat.pan().widthMm())
                  .clipped(-station, seat.pan().lengthMm() - station);
          FoamContact safe = FoamContact.press(FoamStackTest.TWO, under, s.load().panNormalN());
          assertThat(pan.normalN()).isEqualTo(s.load().panNormalN());
          assertThat(pan.shearN()).isEqualTo(s.load().panShearN());
          assertThat(pan.safeSinkMm()).isCloseTo(safe.sinkMm(), within(1e-6));
          assertThat(pan.remainingMm()).isCloseTo(95 - safe.sinkMm(), within(1e-6));
          // the hip is 95 mm above the foam where half of the rim helps
          assertThat(above(seat.pan(), s.hip())).isCloseTo(95 + 95 - pan.sinkMm(), within(1e-6));
          double k = FoamContact.edgeFactor(0.5, 95, safe.areaCm2());
          FoamContact best = FoamContact.press(FoamStackTest.TWO, under, pan.normalN(), k);
          assertThat(pan.sinkMm()).isCloseTo(best.sinkMm(), within(1e-6));
          assertThat(pan.peakKPa()).isCloseTo(best.peakKPa(), within(1e-6));
          assertThat(pan.areaCm2()).isCloseTo(best.areaCm2(), within(1e-6));
          assertThat(pan.meanKPa()).isCloseTo(10 * pan.normalN() / pan.areaCm2(), within(1e-9));
          assertThat(along(seat.pan(), pan.centre()))
              .isCloseTo(station + best.centreMm(), within(1e-6));
          assertThat(above(seat.pan(), pan.centre())).isCloseTo(0, within(1e-9));
          assertThat(pan.layers().sinkMm())
              .isCloseTo(FoamStackTest.TWO.compress(safe.peakKPa()).sinkMm(), within(1e-6));
          assertThat(pan.holdsBump()).isEqualTo(FoamStackTest.TWO.holdsBump(safe.peakKPa()));
          FoamContact old =
              FoamContact.press(FoamStackTest.TWO.worn(), under, s.load().panNormalN());
          assertThat(pan.worn().safeSinkMm()).isCloseTo(old.sinkMm(), within(1e-6));
          assertThat(pan.worn().verdict()).isEqualTo(old.stack().verdict());
          assertThat(pan.worn().holdsBump())
              .isEqualTo(FoamStackTest.TWO.worn().holdsBump(old.peakKPa()));
        });
  }

  /**
   * The torso touches from a fifth of its length above the hip to the shoulder or the board's end.
   */
  @ParameterizedTest
  @ValueSource(longs = {3, 4})
  void theBackCarriesItsLoadAllAlong(long seed) {
    each(
        seed,
        15,
        (body, seat) -> {
          SeatOutcome.Seated s = seated(body, seat);
          CushionLoad back = s.back();
          double hip = along(seat.back(), s.hip());
          double low = Math.max(0.2 * body.hipToShoulderMm(), -hip);
          double high = Math.min(body.hipToShoulderMm(), BACK_MM - hip);
          double width = Math.min(body.measures().get("chestbreadth"), 360);
          double area = (high - low) * width / 100;
          assertThat(back.areaCm2()).isCloseTo(area, within(1e-6));
          assertThat(back.normalN()).isEqualTo(s.load().backN());
          assertThat(back.shearN()).isZero();
          assertThat(back.meanKPa()).isCloseTo(10 * back.normalN() / area, within(1e-9));
          assertThat(back.peakKPa()).isCloseTo(back.meanKPa(), within(1e-6));
          Compression foam = SettleTest.BACK_FOAM.compress(back.meanKPa());
          assertThat(back.sinkMm()).isCloseTo(foam.sinkMm(), within(1e-6));
          assertThat(back.safeSinkMm()).isEqualTo(back.sinkMm());
          assertThat(back.remainingMm()).isCloseTo(50 - foam.sinkMm(), within(1e-6));
          assertThat(back.verdict()).isEqualTo(foam.verdict());
          assertThat(back.holdsBump()).isEqualTo(SettleTest.BACK_FOAM.holdsBump(back.meanKPa()));
          FoamStack old = SettleTest.BACK_FOAM.worn();
          assertThat(back.worn().safeSinkMm())
              .isCloseTo(old.compress(back.meanKPa()).sinkMm(), within(1e-6));
          assertThat(back.worn().verdict()).isEqualTo(old.compress(back.meanKPa()).verdict());
          assertThat(back.worn().holdsBump()).isEqualTo(old.holdsBump(back.meanKPa()));
          assertThat(along(seat.back(), back.centre()))
              .isCloseTo(hip + (low + high) / 2, within(1e-6));
          assertThat(above(seat.back(), back.centre())).isCloseTo(0, within(1e-9));
          // the back of the trunk lies on the foam
          double off = -above(seat.back(), s.hip());
          assertThat(off).isCloseTo(50 - back.sinkMm() + body.hipToBackMm(), within(1e-6));
        });
  }

  /** A head on its rest: the helmet's ball is pressed in as far as the foam gives. */
  @Test
  void aHeadOnItsRestIsPressedIn() {
    List<Double> seen = new ArrayList<>();
    each(
        5,
        40,
        (body, seat) -> {
          SeatOutcome.Seated s = seated(body, seat);
          assertThat(s.headRest().isPresent()).isEqualTo(s.headOnRest());
          if (!s.headOnRest()) {
            assertThat(s.load().headRestN()).isZero();
            return;
          }
          CushionLoad rest = s.headRest().orElseThrow();
          seen.add(rest.sinkMm());
          assertThat(s.headGapMm()).isZero();
          Posture p = s.pose().posture();
          double r = body.head().radiusMm();
          PointMm skull = p.headCentre();
          assertThat(-above(seat.headRest(), skull))
              .isCloseTo(r + 50 - rest.sinkMm(), within(1e-6));
          assertThat(along(seat.headRest(), rest.centre()))
              .isCloseTo(along(seat.headRest(), skull), within(1e-6));
          assertThat(above(seat.headRest(), rest.centre())).isCloseTo(0, within(1e-9));
          FoamContact c =
              FoamContact.press(
                  SettleTest.BACK_FOAM, new Underside(r, r, -r, r, 0.1), s.load().headRestN());
          assertThat(rest.normalN()).isEqualTo(s.load().headRestN()).isPositive();
          assertThat(rest.sinkMm()).isCloseTo(c.sinkMm(), within(1e-6));
          assertThat(rest.safeSinkMm()).isEqualTo(rest.sinkMm());
          assertThat(rest.remainingMm()).isCloseTo(50 - c.sinkMm(), within(1e-6));
          assertThat(rest.areaCm2()).isCloseTo(c.areaCm2(), within(1e-6));
          assertThat(rest.peakKPa()).isCloseTo(c.peakKPa(), within(1e-6));
          assertThat(rest.holdsBump()).isEqualTo(SettleTest.BACK_FOAM.holdsBump(c.peakKPa()));
          FoamContact old =
              FoamContact.press(
                  SettleTest.BACK_FOAM.worn(),
                  new Underside(r, r, -r, r, 0.1),
                  s.load().headRestN());
          assertThat(rest.worn().safeSinkMm()).isCloseTo(old.sinkMm(), within(1e-6));
        });
    assertThat(seen).hasSizeGreaterThan(5);
  }
}
