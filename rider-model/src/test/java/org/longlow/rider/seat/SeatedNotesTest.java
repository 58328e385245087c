package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.rider.seat.OnSeat.BACK_MM;
import static org.longlow.rider.seat.OnSeat.above;
import static org.longlow.rider.seat.OnSeat.along;
import static org.longlow.rider.seat.OnSeat.man;
import static org.longlow.rider.seat.OnSeat.notes;
import static org.longlow.rider.seat.OnSeat.seated;
import static org.longlow.rider.seat.OnSeat.with;

import org.junit.jupiter.api.Test;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.RiderWidth;
import org.longlow.rider.words.Units;

/** What is said of somebody seated, and of whom no seat holds. */
class SeatedNotesTest {

  private static SeatGeometry pegAt(SeatGeometry s, double x, double z) {
    return new SeatGeometry(
        s.pan(),
        s.back(),
        s.headRest(),
        new FootContact.BallOnPeg(new PointMm(x, z)),
        s.hand(),
        s.width());
  }

  /** The buttock reaches 110 mm behind the hip; 60 of them may hang. */
  @Test
  void buttocksThatHangAreToldOf() {
    int hang = 0;
    int lie = 0;
    SeatGeometry full = SettleTest.seat();
    for (double back = -160; back <= 0; back += 4) {
      PointMm by = full.pan().to().minus(full.pan().from()).times(back / full.pan().lengthMm());
      Cushion pan =
          new Cushion(
              full.pan().from().minus(by), full.pan().to().minus(by), FoamStackTest.TWO, 380);
      SeatOutcome outcome = Settle.settle(man(), with(full, pan, full.back(), null));
      if (!(outcome instanceof SeatOutcome.Seated s)) {
        continue;
      }
      double station = along(pan, s.hip());
      assertThat(notes(s, "The buttocks reach behind the pan")).isEqualTo(station < 50);
      hang += station < 50 ? 1 : 0;
      lie += station > 50 ? 1 : 0;
    }
    assertThat(hang).isPositive();
    assertThat(lie).isPositive();
  }

  /** How far a point stands into the underside of a thigh that thins from hip to knee. */
  private static double intoThigh(Body body, Posture p, PointMm edge) {
    double dx = p.knee().x() - p.hip().x();
    double dz = p.knee().z() - p.hip().z();
    double seen = Math.hypot(dx, dz);
    double share = ((edge.x() - p.hip().x()) * dx + (edge.z() - p.hip().z()) * dz) / seen / seen;
    if (share <= 0 || share >= 1) {
      return 0;
    }
    double below = ((p.hip().z() - edge.z()) * dx + (edge.x() - p.hip().x()) * dz) / seen;
    double knee = body.measures().get("lowerthighcircumference") / (2 * Math.PI);
    // 95 mm of flesh under the hip, 25 of it between buttock and thigh
    double flesh = 70 * (1 - share) + knee * share;
    return flesh - below;
  }

  @Test
  void anEdgeInTheThighIsMeasured() {
    int pressed = 0;
    int free = 0;
    for (int pan = 0; pan <= 35; pan += 5) {
      for (int z : new int[] {200, 320, 440, 560}) {
        SeatGeometry seat = pegAt(SettleTest.seat(pan, pan + 15, 20), 1300, z);
        SeatOutcome outcome = Settle.settle(man(), seat);
        if (!(outcome instanceof SeatOutcome.Seated s)) {
          continue;
        }
        // the foam of 95 mm squeezed to a third over the front edge
        PointMm along = PointMm.unit(Math.toRadians(pan));
        PointMm edge = seat.pan().to().plus(along.left().times(95 / 3.0));
        double dip = intoThigh(man(), s.pose().posture(), edge);
        assertThat(notes(s, "The front edge of the pan presses")).isEqualTo(dip > 0);
        if (dip > 0) {
          pressed++;
          assertThat(notes(s, String.format("presses %.1f mm into the underside", dip))).isTrue();
        } else {
          free++;
        }
      }
    }
    assertThat(pressed).isPositive();
    assertThat(free).isPositive();
  }

  @Test
  void aBackThatCarriesNothingIsToldOf() {
    SeatGeometry full = SettleTest.seat();
    assertThat(notes(seated(man(), full), "carries nothing")).isFalse();
    int reaches = 0;
    int misses = 0;
    for (double length = 90; length <= 300; length += 10) {
      PointMm up = full.back().to().minus(full.back().from()).times(1 / BACK_MM);
      Cushion back =
          new Cushion(
              full.back().from(),
              full.back().from().plus(up.times(length)),
              SettleTest.BACK_FOAM,
              360);
      SeatOutcome.Seated s = seated(man(), with(full, full.pan(), back, null));
      double touch = length - along(back, s.hip()) - 0.2 * man().hipToShoulderMm();
      boolean carries = touch > 20;
      assertThat(notes(s, "The back board does not reach the torso: it carries nothing."))
          .isEqualTo(!carries);
      assertThat(s.back().normalN() > 0).isEqualTo(carries);
      if (!carries) {
        misses++;
        assertThat(s.back().sinkMm()).isZero();
        assertThat(s.back().meanKPa()).isZero();
        assertThat(s.back().remainingMm()).isEqualTo(50);
        assertThat(s.back().worn().safeSinkMm()).isZero();
      } else {
        reaches++;
      }
    }
    assertThat(reaches).isPositive();
    assertThat(misses).isPositive();
    SeatOutcome.Seated upright = seated(man(), SettleTest.seat(5, -3, 20));
    assertThat(notes(upright, "The back leans forward or stands upright: it carries nothing."))
        .isTrue();
    assertThat(upright.back().normalN()).isZero();
    assertThat(notes(seated(man(), SettleTest.seat(5, 1, 20)), "carries nothing")).isFalse();
  }

  /** From 15 degrees nose down to 10 up the road is seen. */
  @Test
  void aHeadThatLooksElsewhereIsToldOf() {
    int up = 0;
    int down = 0;
    int ahead = 0;
    for (int back = -20; back <= 75; back += 5) {
      SeatGeometry seat = SettleTest.seat(0, back, 20);
      SeatOutcome outcome = Settle.settle(man(), with(seat, seat.pan(), seat.back(), null));
      if (!(outcome instanceof SeatOutcome.Seated s)) {
        continue;
      }
      PointMm level = man().head().eye().minus(man().head().tragion());
      Posture p = s.pose().posture();
      double pitch = Math.toDegrees(p.eye().minus(p.tragion()).angleRad() - level.angleRad());
      boolean seesUp = pitch > 10 + 1e-6;
      boolean seesDown = pitch < -15 - 1e-6;
      assertThat(notes(s, String.format("The head is held %.0f deg nose up", pitch)))
          .as(back + ": " + pitch)
          .isEqualTo(seesUp);
      assertThat(notes(s, String.format("The head is held %.0f deg nose down", -pitch)))
          .isEqualTo(seesDown);
      up += seesUp ? 1 : 0;
      down += seesDown ? 1 : 0;
      ahead += !seesUp && !seesDown ? 1 : 0;
    }
    assertThat(up).isPositive();
    assertThat(ahead).isPositive();
  }

  @Test
  void whatFoamsWarnOfIsPassedOn() {
    FoamStack memory =
        FoamStack.of(new FoamLayer(20, Foam.memory(60, 60, 2)), new FoamLayer(60, FoamTest.FIRM));
    SeatGeometry full = SettleTest.seat();
    Cushion pan = new Cushion(full.pan().from(), full.pan().to(), memory, 380);
    Cushion back = new Cushion(full.back().from(), full.back().to(), memory, 360);
    assertThat(notes(seated(man(), full), "memory foam")).isFalse();
    SeatOutcome.Seated onPan = seated(man(), with(full, pan, full.back(), null));
    SeatOutcome.Seated onBack = seated(man(), with(full, full.pan(), back, null));
    SeatOutcome.Seated onBoth = seated(man(), with(full, pan, back, null));
    assertThat(onPan.notes())
        .filteredOn(n -> n.text().in(Units.MM).contains("memory foam"))
        .hasSize(1);
    assertThat(onBack.notes())
        .filteredOn(n -> n.text().in(Units.MM).contains("memory foam"))
        .hasSize(1);
    assertThat(onBoth.notes())
        .filteredOn(n -> n.text().in(Units.MM).contains("memory foam"))
        .hasSize(2);
    // sunk through at once: eight tenths of 20 mm
    assertThat(onBack.back().sinkMm()).isGreaterThan(16);
    double hip = -above(back, onBack.hip());
    assertThat(hip).isCloseTo(80 - onBack.back().sinkMm() + 137, within(1e-6));
  }

  @Test
  void whereNobodyCanSitTheReasonIsSaid() {
    SeatGeometry full = SettleTest.seat();
    PointMm by = new PointMm(600, 160);
    Cushion gone =
        new Cushion(full.pan().from().plus(by), full.pan().to().plus(by), FoamStackTest.TWO, 380);
    SeatOutcome off = Settle.settle(man(), with(full, gone, full.back(), null));
    assertThat(((SeatOutcome.Unseatable) off).reason()).contains("seat bones miss the pan");
    SeatOutcome braced =
        Settle.settle(
            man(), SettleTest.seat(50, 10, 20), new SettleOptions(0.03, Double.NaN, 0.5, 0, 5000));
    assertThat(((SeatOutcome.Unseatable) braced).reason()).contains("The pan carries no weight");
  }

  // --- what cannot be a seat

  private static SeatGeometry bare(double panMm, double panDeg, double backMm, double backDeg) {
    PointMm corner = new PointMm(300, 300);
    PointMm pan = PointMm.unit(Math.toRadians(panDeg));
    PointMm back = PointMm.unit(Math.toRadians(90 + backDeg));
    return new SeatGeometry(
        new Cushion(corner, corner.plus(pan.times(panMm)), FoamStackTest.TWO, 380),
        new Cushion(corner, corner.plus(back.times(backMm)), SettleTest.BACK_FOAM, 360),
        null,
        new FootContact.BallOnPeg(new PointMm(1380, 400)),
        new HandContact.OnThighs(),
        RiderWidth.DEFAULT);
  }

  @Test
  void aSeatHasLengthsAndSlopesWithinLimits() {
    assertThat(Settle.fault(bare(50.1, 10, 50.1, 20))).isNull();
    assertThat(Settle.fault(bare(49.9, 10, 400, 20))).contains("pan board is shorter than 50 mm");
    assertThat(Settle.fault(bare(400, 10, 49.9, 20))).contains("back board is shorter than 50 mm");
    assertThat(Settle.fault(bare(400, 58.9, 400, 20))).isNull();
    assertThat(Settle.fault(bare(400, 59.1, 400, 20))).contains("The pan slopes 59.1 deg");
    assertThat(Settle.fault(bare(400, -58.9, 400, 20))).isNull();
    assertThat(Settle.fault(bare(400, -59.1, 400, 20))).contains("The pan slopes -59.1 deg");
    assertThat(Settle.fault(bare(400, 5, 400, 84.9))).isNull();
    assertThat(Settle.fault(bare(400, 5, 400, 85.1))).contains("The back leans 85.1 deg");
    assertThat(Settle.fault(bare(400, 5, 400, -44.9))).isNull();
    assertThat(Settle.fault(bare(400, 5, 400, -45.1))).contains("The back leans -45.1 deg");
    // between pan and back: 90 + back - pan
    assertThat(Settle.fault(bare(400, 30, 400, -29.9))).isNull();
    assertThat(Settle.fault(bare(400, 30, 400, -30.1))).contains("meet at 29.9 deg");
    assertThat(Settle.fault(bare(400, -30, 400, 54.9))).isNull();
    assertThat(Settle.fault(bare(400, -30, 400, 55.1))).contains("meet at 175.1 deg");
  }

  @Test
  void choicesAreTakenUpToTheirEnds() {
    new SettleOptions(0, 0.3, 0, 0, 0);
    new SettleOptions(0.1, 1.2, 1, 2, 5000);
    double[][] wrong = {
      {-0.01, 0.6, 0.5, 0, 0},
      {0.11, 0.6, 0.5, 0, 0},
      {0.03, 0.29, 0.5, 0, 0},
      {0.03, 1.21, 0.5, 0, 0},
      {0.03, 0.6, -0.1, 0, 0},
      {0.03, 0.6, 1.1, 0, 0},
      {0.03, 0.6, 0.5, -0.1, 0},
      {0.03, 0.6, 0.5, 2.1, 0},
      {0.03, 0.6, 0.5, 0, -1},
      {0.03, 0.6, 0.5, 0, 5001}
    };
    for (double[] w : wrong) {
      org.assertj.core.api.Assertions.assertThatThrownBy(
              () -> new SettleOptions(w[0], w[1], w[2], w[3], w[4]))
          .hasMessageContaining("must be");
    }
  }
}
