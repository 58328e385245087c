package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

/** The head's pitch: by its rule in words for a free head, by where the helmet is on a rest. */
class HeadSolverTest {

  // level to 30 of flexion, 10 nose up to 45 of flexion, then nose up; leaning forward likewise
  @ParameterizedTest
  @CsvSource({
    "0, 0", "20, 0", "30, 0", "31, 1", "35, 5", "40, 10", "41, 10", "50, 10", "55, 10", "56, 11",
    "70, 25", "-20, 0", "-45, 0", "-50, -5"
  })
  void aFreeHeadLooksAtTheRoad(double reclineDeg, double pitchDeg) {
    assertThat(Math.toDegrees(HeadSolver.gazePitch(Math.toRadians(reclineDeg))))
        .isCloseTo(pitchDeg, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"-15.1, false", "-15, true", "0, true", "10, true", "10.1, false"})
  void theRoadIsInViewFrom15DownTo10Up(double pitchDeg, boolean seen) {
    assertThat(HeadSolver.roadInView(Math.toRadians(pitchDeg))).isEqualTo(seen);
  }

  @Test
  void aHelmetTouchesWithItsRadius() {
    Body body = Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
    PointMm shoulder = new PointMm(160, 820);
    Neck neck = new Neck(body, shoulder, Math.toRadians(35));
    PointMm normal = PointMm.unit(Math.toRadians(-20));
    for (double behind : new double[] {40, 80, 110, 140}) {
      PointMm surface = shoulder.minus(normal.times(behind));
      double pitch = neck.pitchTouching(surface, normal);
      PointMm centre = neck.head(body.head().centre(), pitch);
      assertThat(normal.dot(centre.minus(surface))).isCloseTo(body.head().radiusMm(), within(1e-9));
      // 3 mm farther away it is 3 mm off, and pressed in on the other side
      for (double off : new double[] {3, -3}) {
        assertThat(neck.gapMm(pitch, surface.minus(normal.times(off)), normal))
            .isCloseTo(off, within(1e-9));
      }
    }
    double far = body.head().radiusMm() + 500;
    assertThat(neck.pitchTouching(shoulder.plus(normal.times(far)), normal)).isNaN();
    assertThat(neck.pitchTouching(shoulder.minus(normal.times(far)), normal)).isNaN();
  }
}
