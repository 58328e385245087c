package org.longlow.constraints.lock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** Hands on turned grips, against points turned one by one. */
class HandsTurnedTest {

  private static final Study STUDY = TestMachine.asFiled("runabout");
  private static final double LOCK = Math.toRadians(40);

  private static HandsTurned hands(SteeringAxis axis, PointMm grip, double y) {
    Sitting sitting = STUDY.sittings().get(0);
    return new HandsTurned(sitting.body(), sitting.posture().orElseThrow(), axis, grip, y);
  }

  private static SteeringAxis axis(PointMm at) {
    double rake = Math.toRadians(26);
    return SteeringAxis.through(at, at.plus(new PointMm(-Math.sin(rake), Math.cos(rake))));
  }

  private static PointMm grip() {
    RestPart grips = STUDY.sittings().get(0).parts().hands().orElseThrow();
    return STUDY.placed().places().pin(grips.at());
  }

  private static double distance(HandsTurned h, boolean left, double rad) {
    double side = left ? 1 : -1;
    double[] g =
        Clouds.turned(
            new double[] {h.grip().x(), side * h.gripYMm(), h.grip().z()},
            h.bars().at(),
            h.bars().up(),
            rad);
    PointMm s = h.posture().shoulder();
    return Math.sqrt(
        Math.pow(g[0] - s.x(), 2)
            + Math.pow(g[1] - side * h.posture().across().shoulderMm(), 2)
            + Math.pow(g[2] - s.z(), 2));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-100, 0, 150, 400})
  void theFirstHandLostIsThatOfALookEveryHundredthOfADegree(double ahead) {
    HandsTurned h = hands(axis(grip().plus(new PointMm(ahead, -100))), grip(), 280);
    double most = h.body().upperArmMm() + h.body().elbowToGripMm();
    double first = Double.POSITIVE_INFINITY;
    double far = 0;
    for (int k = 0; k <= 4000; k++) {
      double rad = LOCK * k / 4000;
      for (boolean left : new boolean[] {true, false}) {
        for (int side = -1; side <= 1; side += 2) {
          double mm = distance(h, left, side * rad);
          far = Math.max(far, mm - most);
          if (mm > most) {
            first = Math.min(first, rad);
          }
        }
      }
    }
    HandsTurned.Kept kept = h.first();
    if (Double.isInfinite(first)) {
      assertThat(kept.rad()).isGreaterThan(LOCK);
      assertThat(h.farMm(LOCK)).isZero();
    } else {
      assertThat(kept.rad()).isCloseTo(first, within(LOCK / 4000 + 1e-9));
      // outer hand: turned to the right the left one goes ahead, and the other way round
      assertThat(kept.left()).isNotEqualTo(kept.turnLeft());
      assertThat(h.farMm(LOCK)).isCloseTo(far, within(1e-6));
    }
  }

  @Test
  void aGripInTheLapIsTooNear() {
    PointMm shoulder = STUDY.sittings().get(0).posture().orElseThrow().shoulder();
    PointMm lap = shoulder.plus(new PointMm(60, -60));
    HandsTurned h = hands(axis(lap.plus(new PointMm(200, -100))), lap, 190);
    assertThat(h.first().rad()).isZero();
    assertThat(h.near(LOCK)).isTrue();
  }

  private static double apart(HandsTurned.Joint a, HandsTurned.Joint b) {
    return Math.hypot(a.at().distance(b.at()), a.yMm() - b.yMm());
  }

  @Test
  void anArmFollowsItsGripWithLinksAsLongAsTheyAre() {
    HandsTurned h = hands(axis(grip().plus(new PointMm(150, -100))), grip(), 280);
    for (boolean left : new boolean[] {true, false}) {
      for (int deg = -40; deg <= 40; deg += 10) {
        double rad = Math.toRadians(deg);
        HandsTurned.Arm arm = h.turned(left, rad);
        double most = h.body().upperArmMm() + h.body().elbowToGripMm();
        boolean reached = distance(h, left, rad) <= most;
        assertThat(apart(arm.shoulder(), arm.elbow()))
            .isCloseTo(h.body().upperArmMm(), within(1e-6));
        assertThat(apart(arm.elbow(), arm.hand()))
            .isCloseTo(h.body().elbowToGripMm(), within(1e-6));
        assertThat(arm.holds()).as(deg + " deg").isEqualTo(reached);
        if (reached) {
          double[] g =
              Clouds.turned(
                  new double[] {grip().x(), left ? 280 : -280, grip().z()},
                  h.bars().at(),
                  h.bars().up(),
                  rad);
          assertThat(arm.hand().at().distance(new PointMm(g[0], g[2]))).isLessThan(1e-6);
          assertThat(arm.hand().yMm()).isCloseTo(g[1], within(1e-6));
        }
      }
    }
  }

  @Test
  void straightAheadTheElbowIsWhereThePostureHasIt() {
    HandsTurned h =
        hands(
            axis(grip().plus(new PointMm(150, -100))),
            grip(),
            STUDY.sittings().get(0).posture().orElseThrow().across().gripMm());
    HandsTurned.Arm arm = h.turned(true, 0);
    assertThat(arm.holds()).isTrue();
    assertThat(arm.elbow().at().distance(h.posture().elbow())).isLessThan(2);
    assertThat(arm.elbow().yMm()).isCloseTo(h.posture().across().elbowMm(), within(2.0));
  }
}
