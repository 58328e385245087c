package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;

class SideClearanceTest {

  // Worked apart and checked by solving the tangency numerically; printed to 1e-12 deg.
  @Test
  void anglesMatchWorkedFigures() {
    assertThat(
            Math.toDegrees(
                SideClearance.approachRad(new PointMm(1500, 299.9), 299.9, new PointMm(1820, 260))))
        .isCloseTo(61.325269498516, within(1e-9));
    SideClearance.Breakover b = SideClearance.breakover(1500, 314.9, 299.9, new PointMm(700, 140));
    assertThat(Math.toDegrees(b.rearRad())).isCloseTo(11.848431899103, within(1e-9));
    assertThat(Math.toDegrees(b.frontRad())).isCloseTo(10.264880557460, within(1e-9));
    assertThat(Math.toDegrees(b.angleRad())).isCloseTo(22.113312456563, within(1e-9));
  }

  @Test
  void aRampAtTheApproachAngleTouchesTyreAndPoint() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 200; i++) {
      double r = random.nextDouble(200, 350);
      PointMm centre = new PointMm(1500, r);
      PointMm point = new PointMm(1500 + random.nextDouble(r, 700), random.nextDouble(50, 400));
      double angle = SideClearance.approachRad(centre, r, point);
      // A line through the point falling towards the machine at that slope is tangent to the tyre.
      PointMm along = PointMm.unit(angle);
      assertThat(Math.abs(along.cross(centre.minus(point)))).isCloseTo(r, within(1e-9));
      assertThat(
              SideClearance.departureRad(
                  new PointMm(-centre.x(), r), r, new PointMm(-point.x(), point.z())))
          .isEqualTo(angle);
    }
  }

  @Test
  void pointsInsideATyreAreRefused() {
    assertThatThrownBy(
            () -> SideClearance.approachRad(new PointMm(0, 300), 300, new PointMm(10, 300)))
        .hasMessageContaining("allowed is");
    assertThatThrownBy(() -> SideClearance.breakover(1500, 300, 300, new PointMm(10, 300)))
        .hasMessageContaining("allowed is");
    assertThatThrownBy(() -> SideClearance.breakover(1500, 300, 300, new PointMm(1600, 100)))
        .hasMessageContaining("belly point x");
  }
}
