package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Population;
import org.longlow.rider.body.Segment;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.FootLoad;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SegmentMass;

/** The masses that load the seat are those that make the centre of mass. */
class OneBodyOneWeightTest {

  /** Helmet 1.5, two boots of 1.0, jacket 2.5, trousers 1.5, two gloves of 0.15. */
  private static final double GEAR_KG = 7.8;

  private static SeatOutcome.Seated seated(Body body, SeatGeometry seat) {
    return (SeatOutcome.Seated) Settle.settle(body, seat);
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void sharesAreTheSumsOfTheSegments(Sex sex) {
    Body body = Body.of(sex, 1700, 72, Gear.RIDING);
    Posture posture = seated(body, SettleTest.seat(15, 35, 25)).pose().posture();
    Map<Segment, Double> kg =
        SegmentMass.of(body, posture).stream()
            .collect(Collectors.toMap(SegmentMass::segment, SegmentMass::massKg));
    WeightShares w = WeightShares.of(body, 0.05);
    double arms = kg.get(Segment.UPPER_ARM) + kg.get(Segment.FOREARM) + kg.get(Segment.HAND);
    double legs = kg.get(Segment.THIGH) + kg.get(Segment.SHANK) + kg.get(Segment.FOOT);
    assertThat(w.head() * (72 + GEAR_KG)).isCloseTo(kg.get(Segment.HEAD), within(1e-9));
    assertThat(w.trunk() * (72 + GEAR_KG)).isCloseTo(kg.get(Segment.TRUNK), within(1e-9));
    assertThat(w.arms() * (72 + GEAR_KG)).isCloseTo(arms, within(1e-9));
    assertThat(w.legs() * (72 + GEAR_KG)).isCloseTo(legs, within(1e-9));
    assertThat(w.head() + w.trunk() + w.arms() + w.legs()).isCloseTo(1, within(1e-12));
  }

  @Test
  void theWorkedSharesAddUpToo() {
    WeightShares w = WeightShares.WORKED;
    assertThat(w.head() + w.trunk() + w.arms() + w.legs()).isCloseTo(1, within(1e-12));
    assertThat(w.feet()).isLessThan(w.legs());
  }

  @Test
  void everybodyIsCarriedWhole() {
    Population people = Population.usAdults(17, 0.5);
    SeatGeometry seat = SettleTest.seat(15, 35, 25);
    for (int i = 0; i < 200; i++) {
      Body body = Body.of(people.person(i), Gear.RIDING);
      SeatOutcome.Seated s = seated(body, seat);
      double rest = s.headOnRest() ? Math.sin(Math.toRadians(25)) : 0;
      double up =
          s.load().panVerticalN()
              + s.load().pegsN()
              + s.load().handsN()
              + s.load().backN() * Math.sin(s.reclineRad())
              + s.load().headRestN() * rest;
      assertThat(up).isCloseTo((body.massKg() + GEAR_KG) * SeatLoad.GRAVITY, within(1e-6));
    }
  }

  /** By lever about the knee, from the settled posture's own joints and segment masses. */
  @Test
  void theFeetCarryWhatThePostureSays() {
    Body body = Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
    for (PointMm peg :
        List.of(new PointMm(1380, 400), new PointMm(1250, 260), new PointMm(1340, 560))) {
      SeatGeometry full = SettleTest.seat(15, 35, 25);
      SeatGeometry seat =
          new SeatGeometry(
              full.pan(),
              full.back(),
              full.headRest(),
              new FootContact.BallOnPeg(peg),
              full.hand(),
              full.width());
      SeatOutcome.Seated s = seated(body, seat);
      Posture p = s.pose().posture();
      double length = p.ball().distance(p.knee());
      double lever = 0;
      for (SegmentMass m : SegmentMass.of(body, p)) {
        if (m.segment() == Segment.SHANK || m.segment() == Segment.FOOT) {
          PointMm d = m.centre().minus(p.knee());
          PointMm b = p.ball().minus(p.knee());
          lever += m.massKg() * SeatLoad.GRAVITY * (d.x() * b.x() + d.z() * b.z()) / length;
        }
      }
      assertThat(s.load().pegsN()).isCloseTo(lever / length, within(1e-6));
      assertThat(s.load().pegsN() / ((80 + GEAR_KG) * SeatLoad.GRAVITY))
          .isCloseTo(FootLoad.share(body, s.hip(), seat.foot(), seat.width()), within(1e-9));
    }
  }
}
