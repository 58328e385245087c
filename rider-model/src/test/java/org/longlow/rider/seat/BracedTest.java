package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;

/**
 * Somebody braking, by forces on the trunk and on all of the body as vectors under a pull that
 * leans forward, instead of by shares of what they weigh at rest.
 */
class BracedTest {

  private static final Body MAN = OnSeat.man();

  private static SeatOutcome.Seated seated(double panDeg, double backDeg) {
    SeatGeometry with = SettleTest.seat(panDeg, backDeg, backDeg);
    SeatOutcome.Seated s = OnSeat.seated(MAN, OnSeat.with(with, with.pan(), with.back(), null));
    assertThat(s.headOnRest()).isFalse();
    return s;
  }

  /** What the trunk presses on its back under such braking, by moments about the hip. */
  private static double backN(SeatOutcome.Seated s, double g) {
    WeightShares w = WeightShares.of(MAN, 0);
    double weight = MAN.massInGearKg() * 9.80665;
    double theta = s.reclineRad();
    // arm of each mass about the hip, over hip-shoulder length; pull down 1 and forward g
    double moment = 0;
    double atRest = 0;
    for (double[] m :
        new double[][] {
          {w.trunk(), w.trunkHeight()},
          {w.arms() - SeatLoad.DEFAULT_HANDS, w.armsHeight()},
          {w.head(), w.headHeight()}
        }) {
      double x = -m[1] * Math.sin(theta);
      double z = m[1] * Math.cos(theta);
      moment += weight * m[0] * (-x - g * z);
      atRest += weight * m[0] * -x;
    }
    double centre = atRest / s.load().backN();
    return moment / centre;
  }

  private static double panRad(double panDeg) {
    return Math.toRadians(panDeg);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 0.3, 0.5, 0.65})
  void whatFeetPushLeavesThePanItsFriction(double g) {
    for (double panDeg : new double[] {5, 12, 20}) {
      SeatOutcome.Seated s = seated(panDeg, 36);
      double weight = MAN.massInGearKg() * 9.80665;
      double theta = s.reclineRad();
      double back = backN(s, g);
      assertThat(back).isPositive();
      Braced braced = Braced.of(MAN, s, g);
      double forward = back * Math.cos(theta) + g * weight;
      double down = weight - s.load().pegsN() - s.load().handsN() - back * Math.sin(theta);
      for (boolean ice : new boolean[] {false, true}) {
        double feet = ice ? braced.feetOnIceN() : braced.feetN();
        // along the pan, forward and down its slope, and square into it
        double shear =
            (forward - feet) * Math.cos(panRad(panDeg)) - down * Math.sin(panRad(panDeg));
        double normal =
            (forward - feet) * Math.sin(panRad(panDeg)) + down * Math.cos(panRad(panDeg));
        double friction = ice ? 0 : 0.30;
        if (feet > 0) {
          assertThat(shear / normal).as("pan " + panDeg).isCloseTo(friction, within(1e-6));
        } else {
          assertThat(shear / normal).as("pan " + panDeg).isLessThanOrEqualTo(friction);
        }
      }
      double shear = forward * Math.cos(panRad(panDeg)) - down * Math.sin(panRad(panDeg));
      double normal = forward * Math.sin(panRad(panDeg)) + down * Math.cos(panRad(panDeg));
      assertThat(braced.frictionNeeded()).isCloseTo(shear / normal, within(1e-6));
      assertThat(braced.handsN()).isZero();
    }
  }

  @Test
  void atRestItIsTheSeatsOwnFriction() {
    SeatOutcome.Seated s = seated(12, 36);
    assertThat(Braced.of(MAN, s, 0).frictionNeeded())
        .isCloseTo(s.load().frictionNeeded(), within(1e-12));
  }

  /** Beyond the tangent of its lean the trunk would fall forward; below it leans on the back. */
  @Test
  void handsHoldTheTrunkOnceItLeavesTheBack() {
    SeatOutcome.Seated s = seated(12, 30);
    double leaves = Math.tan(s.reclineRad());
    assertThat(Braced.of(MAN, s, 0.5).backLeavesG()).isCloseTo(leaves, within(1e-12));
    assertThat(backN(s, leaves)).isCloseTo(0, within(1e-9));
    assertThat(Braced.of(MAN, s, leaves - 0.001).handsN()).isZero();
    double g = leaves + 0.2;
    Braced braced = Braced.of(MAN, s, g);
    WeightShares w = WeightShares.of(MAN, 0);
    double moment = 0;
    for (double[] m :
        new double[][] {
          {w.trunk(), w.trunkHeight()}, {w.arms(), w.armsHeight()}, {w.head(), w.headHeight()}
        }) {
      // forward pull times height less weight times how far it is behind the hip
      moment +=
          m[0]
              * m[1]
              * MAN.massInGearKg()
              * 9.80665
              * (g * Math.cos(s.reclineRad()) - Math.sin(s.reclineRad()));
    }
    // at the shoulders, one hip-shoulder length from the hip
    assertThat(braced.handsN()).isCloseTo(moment, within(1e-9));
    assertThat(braced.feetN()).isGreaterThan(Braced.of(MAN, s, leaves).feetN());
  }
}
