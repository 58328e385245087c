package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.rider.seat.OnSeat.above;
import static org.longlow.rider.seat.OnSeat.along;
import static org.longlow.rider.seat.OnSeat.man;
import static org.longlow.rider.seat.OnSeat.notes;
import static org.longlow.rider.seat.OnSeat.seated;
import static org.longlow.rider.seat.OnSeat.with;

import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;

/** Where a head leans on its rest, how far it is off, and what is said of that. */
class HeadOnRestTest {

  /** Cars allow 55 mm behind the head (FMVSS 202a). */
  @Test
  void aRestThatIsFarOrInTheHelmetIsToldOf() {
    int far = 0;
    int near = 0;
    int in = 0;
    for (int forward = -220; forward <= 320; forward += 6) {
      SeatGeometry seat = SettleTest.seat(5, 55, 35);
      PointMm by = new PointMm(forward, 0);
      Cushion rest =
          new Cushion(
              seat.headRest().from().plus(by),
              seat.headRest().to().plus(by),
              SettleTest.BACK_FOAM,
              250);
      SeatOutcome.Seated s = seated(man(), with(seat, seat.pan(), seat.back(), rest));
      double gap = s.headGapMm();
      if (!s.headOnRest() && !Double.isNaN(gap)) {
        Posture p = s.pose().posture();
        PointMm skull = p.headCentre();
        assertThat(gap).isCloseTo(-above(rest, skull) - 50 - man().head().radiusMm(), within(1e-6));
        near += gap > 0 && gap < 55 ? 1 : 0;
      }
      boolean isFar = gap > 55;
      boolean isIn = gap < -1;
      assertThat(notes(s, "mm behind the helmet; cars allow 55 mm.")).isEqualTo(isFar);
      assertThat(notes(s, String.format("The head rest stands %.0f mm into the helmet", -gap)))
          .isEqualTo(isIn);
      far += isFar ? 1 : 0;
      in += isIn ? 1 : 0;
    }
    assertThat(far).as("far").isPositive();
    assertThat(in).as("in").isPositive();
    assertThat(near).as("near").isNotNegative();
  }

  /** The full seat with its rest slid along itself, and back. */
  private static SeatGeometry slid(double alongMm, double backMm) {
    SeatGeometry seat = SettleTest.seat();
    PointMm d = seat.headRest().to().minus(seat.headRest().from()).times(1 / 220.0);
    PointMm by = d.times(alongMm).plus(d.left().times(backMm));
    return with(
        seat,
        seat.pan(),
        seat.back(),
        new Cushion(
            seat.headRest().from().plus(by),
            seat.headRest().to().plus(by),
            SettleTest.BACK_FOAM,
            250));
  }

  private static double skullAlong(SeatGeometry seat, SeatOutcome.Seated s) {
    Posture p = s.pose().posture();
    return along(seat.headRest(), p.headCentre());
  }

  /** A head leans where the middle of the skull lies between the ends of its rest. */
  @Test
  void aHeadLeansBetweenTheEndsOfItsRest() {
    double low = Double.NaN;
    double high = Double.NaN;
    for (int slide = -300; slide <= 300; slide += 2) {
      SeatGeometry seat = slid(slide, 0);
      SeatOutcome.Seated s = seated(man(), seat);
      if (s.headOnRest()) {
        double at = skullAlong(seat, s);
        assertThat(at).isBetween(0.0, 220.0);
        low = Double.isNaN(low) || at < low ? at : low;
        high = Double.isNaN(high) || at > high ? at : high;
      }
    }
    // in steps of 2 mm
    assertThat(low).isLessThan(2.1);
    assertThat(high).isGreaterThan(217.9);
  }

  /** Half a head beyond an end there is nothing that a gap could be measured to. */
  @Test
  void aGapIsMeasuredWhereHeadAndRestFaceEachOther() {
    double half = man().head().radiusMm() / 2;
    int none = 0;
    int some = 0;
    for (int slide = -400; slide <= 400; slide += 5) {
      SeatGeometry seat = slid(slide, 150);
      SeatOutcome.Seated s = seated(man(), seat);
      assertThat(s.headOnRest()).isFalse();
      double at = skullAlong(seat, s);
      boolean faces = at >= -half && at <= 220 + half;
      assertThat(Double.isNaN(s.headGapMm())).as("at " + at).isEqualTo(!faces);
      some += faces ? 1 : 0;
      none += faces ? 0 : 1;
    }
    assertThat(some).isPositive();
    assertThat(none).isPositive();
  }

  /** A rest of 20 mm is none. */
  @Test
  void aStubIsNoHeadRest() {
    SeatGeometry seat = SettleTest.seat();
    PointMm d = seat.headRest().to().minus(seat.headRest().from()).times(1 / 220.0);
    SeatOutcome.Seated full = seated(man(), seat);
    double at = skullAlong(seat, full);
    for (double length : new double[] {19.9, 30}) {
      PointMm from = seat.headRest().from().plus(d.times(at - length / 2));
      Cushion rest = new Cushion(from, from.plus(d.times(length)), SettleTest.BACK_FOAM, 250);
      SeatOutcome.Seated s = seated(man(), with(seat, seat.pan(), seat.back(), rest));
      assertThat(s.headOnRest()).isEqualTo(length > 20);
      assertThat(Double.isNaN(s.headGapMm())).isEqualTo(length < 20);
    }
  }
}
