package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Population;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.SegmentMass;

/** Forces and moments of whoever sits add up to nothing, the whole person and each half. */
class BalanceTest {

  /** N and N m. */
  private static final double CLOSED = 1e-6;

  private static SeatGeometry feet(SeatGeometry s, FootContact foot) {
    return new SeatGeometry(s.pan(), s.back(), s.headRest(), foot, s.hand(), s.width());
  }

  private static void isClosed(Balance b) {
    PointMm sum = PointMm.ORIGIN;
    for (Push push : b.all()) {
      sum = sum.plus(push.force());
    }
    assertThat(sum.x()).isCloseTo(0, within(CLOSED));
    assertThat(sum.z()).isCloseTo(0, within(CLOSED));
    for (PointMm about : List.of(PointMm.ORIGIN, new PointMm(1234, -567))) {
      assertThat(Push.aboutNm(about, b.all())).isCloseTo(0, within(CLOSED));
    }
  }

  /** What a small rigid turn costs in height is what the pushes do, to first order. */
  private static double workPerTurn(Body body, SeatOutcome.Seated s, Balance b, PointMm about) {
    double turn = 1e-6;
    double energy = 0;
    for (SegmentMass m : SegmentMass.of(body, s.pose().posture())) {
      double up =
          m.centre().turnedAbout(about, turn).z() - m.centre().turnedAbout(about, -turn).z();
      energy += m.massKg() * SeatLoad.GRAVITY * up / 1000;
    }
    for (Push push : b.all().subList(b.weights().size(), b.all().size())) {
      PointMm way = push.at().turnedAbout(about, turn).minus(push.at().turnedAbout(about, -turn));
      energy -= push.force().dot(way) / 1000;
    }
    return energy / (2 * turn);
  }

  @Test
  void everybodyIsInBalanceOnEverySeat() {
    Population people = Population.usAdults(23, 0.5);
    int hips = 0;
    double worst = 0;
    for (int i = 0; i < 90; i++) {
      Body body = Body.of(people.person(i), Gear.RIDING);
      SeatGeometry seat = SettleTest.seat(5 + i % 3 * 7, 15 + i % 4 * 12, 12 + i % 2 * 10);
      if (i % 2 == 1) {
        seat =
            feet(seat, new FootContact.Footboard(new PointMm(1250, 330), new PointMm(1450, 430)));
      }
      if (!(Settle.settle(body, seat) instanceof SeatOutcome.Seated s)) {
        continue;
      }
      Balance b = Balance.of(body, seat, s);
      isClosed(b);
      assertThat(workPerTurn(body, s, b, new PointMm(100, 900))).isCloseTo(0, within(1e-4));
      assertThat(b.leftNm()).isCloseTo(0, within(CLOSED));
      hips += Math.abs(b.hipNm()) > CLOSED ? 1 : 0;
      worst = Math.max(worst, Math.abs(asFoamHasIt(b, s, seat)));
    }
    assertThat(hips).isBetween(5, 85); // both kinds are among them
    assertThat(worst).isBetween(8.0, 60.0); // what was left where nothing moves
  }

  /** The moment left with every push at the middle of its foam's pressure. */
  private static double asFoamHasIt(Balance b, SeatOutcome.Seated s, SeatGeometry seat) {
    PointMm up = seat.back().along();
    PointMm along = seat.pan().along();
    double pan = b.panMm() * s.load().panNormalN() / 1000;
    double back = b.backMm() * s.load().backN() / 1000;
    assertThat(b.back().at().minus(s.back().centre()).dot(up)).isCloseTo(b.backMm(), within(1e-9));
    assertThat(b.pan().at().minus(s.pan().centre()).dot(along)).isCloseTo(b.panMm(), within(1e-9));
    return pan - back;
  }

  /** The legs by themselves: what they weigh, rests and pan bear about the hip, and hips hold. */
  @Test
  void legsAndTrunkAreEachInBalance() {
    Body body = OnSeat.man();
    SeatGeometry seat = SettleTest.seat();
    SeatOutcome.Seated s = OnSeat.seated(body, seat);
    Balance b = Balance.of(body, seat, s);
    double legs = b.feet().aboutNm(s.hip()) + b.pan().aboutNm(s.hip());
    double trunk =
        b.hands().aboutNm(s.hip())
            + b.back().aboutNm(s.hip())
            + b.headRest().orElseThrow().aboutNm(s.hip());
    for (SegmentMass m : SegmentMass.of(body, s.pose().posture())) {
      double ahead = m.centre().x() - s.hip().x();
      double nm = -m.massKg() * SeatLoad.GRAVITY * ahead / 1000;
      if (m.segment() == Segment.THIGH
          || m.segment() == Segment.SHANK
          || m.segment() == Segment.FOOT) {
        legs += nm;
      } else {
        trunk += nm;
      }
    }
    assertThat(legs + b.hipNm()).isCloseTo(0, within(CLOSED));
    assertThat(trunk - b.hipNm()).isCloseTo(0, within(CLOSED));
  }

  /** Thighs that rise from the pan are held up by muscles; those that lie on it are not. */
  @Test
  void highPegsLiftTheThighsOffThePan() {
    Body body = OnSeat.man();
    SeatGeometry low = feet(SettleTest.seat(), new FootContact.BallOnPeg(new PointMm(1330, 200)));
    SeatGeometry high = feet(SettleTest.seat(), new FootContact.BallOnPeg(new PointMm(1250, 550)));
    assertThat(Balance.of(body, low, OnSeat.seated(body, low)).hipNm()).isBetween(-2.0, 2.0);
    assertThat(Balance.of(body, high, OnSeat.seated(body, high)).hipNm()).isGreaterThan(10);
  }

  /** Foam ahead of where rising thighs leave it carries nothing, and so costs nothing. */
  @Test
  void aLongerPanNeverCostsTheHipsAnything() {
    Body body = OnSeat.man();
    for (double peg : new double[] {400, 475, 550}) {
      SeatGeometry s = feet(SettleTest.seat(), new FootContact.BallOnPeg(new PointMm(1250, peg)));
      double last = Double.POSITIVE_INFINITY;
      double first = Double.NaN;
      for (double mm = 280; mm <= 560; mm += 20) {
        PointMm front = s.pan().from().plus(s.pan().along().times(mm));
        Cushion pan = new Cushion(s.pan().from(), front, s.pan().foam(), s.pan().widthMm());
        SeatGeometry seat =
            new SeatGeometry(pan, s.back(), s.headRest(), s.foot(), s.hand(), s.width());
        double nm = Balance.of(body, seat, OnSeat.seated(body, seat)).hipNm();
        first = Double.isNaN(first) ? nm : first;
        // the posture itself moves a little with the sink
        assertThat(nm).as(peg + ", " + mm).isLessThan(last + 0.25);
        last = nm;
      }
      assertThat(last).isLessThan(first - 2);
    }
  }

  /**
   * Nothing leans on a back that leans forward; hips hold the trunk, and what is too much is left.
   */
  @Test
  void withoutABackTheHipsHoldTheTrunk() {
    Body body = OnSeat.man();
    SeatGeometry seat =
        feet(SettleTest.seat(5, -12, 5), new FootContact.BallOnPeg(new PointMm(1250, 250)));
    SeatOutcome.Seated s = OnSeat.seated(body, seat);
    assertThat(s.load().backN()).isZero();
    Balance b = Balance.of(body, seat, s);
    assertThat(b.backMm()).isZero();
    double left = Push.aboutNm(s.hip(), b.all());
    assertThat(left).isCloseTo(b.leftNm(), within(CLOSED));
    assertThat(Math.abs(b.hipNm())).isGreaterThan(2);
  }

  /** Under a flat sole the board pushes where the ankle is loose; under a ball on a peg, there. */
  @Test
  void aFlatSoleLeavesTheAnkleLoose() {
    Body body = OnSeat.man();
    SeatGeometry board =
        feet(
            SettleTest.seat(),
            new FootContact.Footboard(new PointMm(1250, 330), new PointMm(1500, 350)));
    SeatOutcome.Seated s = OnSeat.seated(body, board);
    Balance b = Balance.of(body, board, s);
    PointMm ankle = s.pose().posture().ankle();
    double foot =
        SegmentMass.of(body, s.pose().posture()).stream()
            .filter(m -> m.segment() == Segment.FOOT)
            .mapToDouble(m -> -m.massKg() * SeatLoad.GRAVITY * (m.centre().x() - ankle.x()) / 1000)
            .sum();
    assertThat(b.feet().aboutNm(ankle) + foot).isCloseTo(0, within(CLOSED));
    SeatOutcome.Seated onPeg = OnSeat.seated(body, SettleTest.seat());
    assertThat(Balance.of(body, SettleTest.seat(), onPeg).feet().at())
        .isEqualTo(onPeg.pose().posture().ball());
  }

  /** Rate of the pan: the slope of force by sink between two people a little apart in weight. */
  @Test
  void theRateIsTheSlopeOfTheFoam() {
    Body body = OnSeat.man();
    SeatGeometry seat = SettleTest.seat();
    SeatOutcome.Seated s = OnSeat.seated(body, seat);
    double n = s.pan().normalN();
    Underside outline = PanRate.outline(body, seat, s);
    double safe = FoamContact.areaCm2(outline, s.pan().safeSinkMm());
    double k = FoamContact.edgeFactor(0.5, seat.pan().foam().thicknessMm(), safe);
    double more = FoamContact.press(seat.pan().foam(), outline, n * 1.001, k).sinkMm();
    double less = FoamContact.press(seat.pan().foam(), outline, n * 0.999, k).sinkMm();
    double rate = PanRate.nPerMm(body, seat, s);
    // a chord of 2 % against one of 0.2 % of a smooth curve
    assertThat(rate).isCloseTo(0.002 * n / (more - less), within(0.002 * rate));
    assertThat(s.pan().sinkMm()).isBetween(less, more);
  }
}
