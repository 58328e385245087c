package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A machine leaned on two tyres, beside tori turned in space. */
class OnTyresTest {

  private static OnTyres on(double base, double rf, double cf, double rr, double cr, double roll) {
    return OnTyres.of(base, new LeanClearance.Wheel(rf, cf), new LeanClearance.Wheel(rr, cr), roll);
  }

  @Test
  void contactsAndLeversAreThoseOfToriInSpace() {
    Random random = new Random(7);
    for (int i = 0; i < 60; i++) {
      double base = 1200 + 700 * random.nextDouble();
      double rf = 230 + 120 * random.nextDouble();
      double rr = 230 + 120 * random.nextDouble();
      double cf = 30 + 60 * random.nextDouble();
      double cr = 30 + 120 * random.nextDouble();
      double roll = Math.toRadians(50) * random.nextDouble();
      OnTyres on = on(base, rf, cf, rr, cr, roll);
      Tori tori = new Tori(base, rf, cf, rr, cr, roll);
      // the lowest point of a ring is found to some 1e-5 mm along it, which its pitch feels
      assertThat(on.front().xMm()).isCloseTo(tori.frontContact[0], within(1e-3));
      assertThat(on.front().yMm()).isCloseTo(tori.frontContact[1], within(1e-4));
      assertThat(on.rear().xMm()).isCloseTo(tori.rearContact[0], within(1e-3));
      assertThat(on.rear().yMm()).isCloseTo(tori.rearContact[1], within(1e-4));
      double x = base * random.nextDouble();
      double y = -100 + 200 * random.nextDouble();
      double z = 300 + 400 * random.nextDouble();
      double[] at = tori.at(x, y, z);
      assertThat(on.plan(x, y, z).xMm()).isCloseTo(at[0], within(1e-4));
      assertThat(on.plan(x, y, z).yMm()).isCloseTo(at[1], within(1e-4));
      assertThat(on.road().heightMm(x, y, z)).isCloseTo(at[2], within(1e-4));
      double[] levers = tori.levers(x, y, z);
      assertThat(Math.tan(on.idealRollRad(x, y, z))).isCloseTo(levers[0] / levers[1], within(1e-6));
    }
  }

  /** On like crowns it is a body turned about the crowns' centre line. */
  @ParameterizedTest
  @CsvSource({"0, 30", "25, 30", "25, -30", "40, 120", "40, -120", "12, 0"})
  void onLikeCrownsACentreTurnsAboutTheirCentre(double rollDeg, double y) {
    double roll = Math.toRadians(rollDeg);
    double h = 600;
    double t = 75;
    OnTyres on = on(1500, 310, t, 290, t, roll);
    double arm = Math.hypot(y, h - t);
    double angle = Math.atan2(y, h - t) + roll;
    assertThat(on.asideMm(700, y, h)).isCloseTo(arm * Math.sin(angle), within(1e-9));
    assertThat(on.road().heightMm(700, y, h)).isCloseTo(t + arm * Math.cos(angle), within(1e-9));
    assertThat(Math.tan(on.idealRollRad(700, y, h)))
        .isCloseTo(arm * Math.sin(angle) / (t + arm * Math.cos(angle)), within(1e-12));
  }

  // touch-down roll 42.7725206784 deg, h 600, t 75, 50 m, worked apart; lean shift of 520 mm by
  // hand
  @Test
  void onLikeCrownsItIsThePublishedBalance() {
    double roll = Math.toRadians(42.7725206784);
    double ideal = on(1500, 300, 75, 300, 75, roll).idealRollRad(700, 0, 600);
    assertThat(Math.tan(ideal)).isCloseTo(0.774409196219, within(1e-9));
    double v = TurnLean.speedMs(ideal, 50);
    assertThat(v).isCloseTo(19.486354128082, within(1e-8));
    assertThat(TurnLean.of(v, 50, 600, 75).rollRad()).isCloseTo(roll, within(1e-12));
    OnTyres parked = on(1500, 300, 75, 300, 75, Math.toRadians(12));
    assertThat(parked.asideMm(700, 0, 520)).isCloseTo(92.520702414, within(1e-8));
    assertThat(parked.road().heightMm(700, 0, 520)).isCloseTo(510.275682327, within(1e-8));
  }

  /** A mass over one axle leans on that tyre's crown alone, whatever the other is. */
  @Test
  void eachWheelCountsAsFarAsItCarries() {
    double roll = Math.toRadians(12);
    OnTyres unlike = on(1500, 300, 40, 300, 140, roll);
    double front = (600 - 40) * Math.sin(roll);
    double rear = (600 - 140) * Math.sin(roll);
    // the pitch of 0.08 degrees raises neither by more than a few tenths
    assertThat(unlike.asideMm(1500, 0, 600)).isCloseTo(front, within(0.7));
    assertThat(unlike.asideMm(0, 0, 600)).isCloseTo(rear, within(0.7));
    assertThat(unlike.asideMm(375, 0, 600)).isCloseTo(0.75 * rear + 0.25 * front, within(0.7));
  }
}
