package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.RiderWidth;

/** What is said of somebody seated, worked out again from where their joints came to be. */
class SeatedReportTest {

  private static final double BACK_MM = 560;

  private static Body man() {
    return Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
  }

  private static SeatOutcome.Seated seated(Body body, SeatGeometry seat) {
    SeatOutcome outcome = Settle.settle(body, seat);
    assertThat(outcome).as(outcome.toString()).isInstanceOf(SeatOutcome.Seated.class);
    return (SeatOutcome.Seated) outcome;
  }

  private static SeatGeometry with(SeatGeometry s, Cushion pan, Cushion back, Cushion rest) {
    return new SeatGeometry(pan, back, rest, s.foot(), s.hand(), s.width());
  }

  private static SeatGeometry pegAt(SeatGeometry s, double x, double z) {
    return new SeatGeometry(
        s.pan(),
        s.back(),
        s.headRest(),
        new FootContact.BallOnPeg(new PointMm(x, z)),
        s.hand(),
        s.width());
  }

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

  private static double along(Cushion c, PointMm p) {
    return p.minus(c.from()).dot(c.to().minus(c.from()).times(1 / c.lengthMm()));
  }

  private static double above(Cushion c, PointMm p) {
    PointMm d = c.to().minus(c.from()).times(1 / c.lengthMm());
    return d.x() * (p.z() - c.from().z()) - d.z() * (p.x() - c.from().x());
  }

  // --- cushions

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
          PointMm skull = p.neckBase().plus(body.head().centre().turned(p.angles().headPitch()));
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

  // --- notes

  private static boolean notes(SeatOutcome.Seated s, String words) {
    return s.notes().stream().anyMatch(n -> n.text().contains(words));
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
        PointMm skull = p.neckBase().plus(man().head().centre().turned(p.angles().headPitch()));
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
    return along(
        seat.headRest(), p.neckBase().plus(man().head().centre().turned(p.angles().headPitch())));
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
    assertThat(onPan.notes()).filteredOn(n -> n.text().contains("memory foam")).hasSize(1);
    assertThat(onBack.notes()).filteredOn(n -> n.text().contains("memory foam")).hasSize(1);
    assertThat(onBoth.notes()).filteredOn(n -> n.text().contains("memory foam")).hasSize(2);
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
