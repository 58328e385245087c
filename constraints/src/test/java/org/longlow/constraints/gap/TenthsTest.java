package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.geom.PointMm;

class TenthsTest {

  @ParameterizedTest(name = "{0} mm is said as {1}")
  @CsvSource({
    "0, 0",
    "1.2, 1.2",
    "1.21, 1.3",
    "1.2000001, 1.3",
    "1.20000001, 1.2",
    "1.19999, 1.2",
    "-1.2, -1.2",
    "-1.21, -1.3",
    "-1.19999, -1.2",
    "0.001, 0.1",
    "-0.001, -0.1"
  })
  void aFigureIsSaidInTenthsFartherFromZero(double mm, double said) {
    assertThat(Tenths.away(mm)).isEqualTo(said);
  }

  /** Of all whole tenths round it the shortest that does, by looking at each. */
  @Test
  void aShiftInTenthsIsTheShortestThatDoes() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 300; i++) {
      PointMm exact = new PointMm(random.nextDouble(-20, 20), random.nextDouble(-20, 20));
      // a wall square to some direction near that of the shift
      PointMm wall = PointMm.unit(exact.angleRad() + random.nextDouble(-0.6, 0.6));
      double off = exact.dot(wall) + 1e-5;
      double shortest = Double.POSITIVE_INFINITY;
      for (long x = Math.round(exact.x() * 10) - 6; x <= Math.round(exact.x() * 10) + 6; x++) {
        for (long z = Math.round(exact.z() * 10) - 6; z <= Math.round(exact.z() * 10) + 6; z++) {
          PointMm p = new PointMm(x * 0.1, z * 0.1);
          if (p.dot(wall) >= off && p.length() >= exact.length()) {
            shortest = Math.min(shortest, p.length());
          }
        }
      }
      Optional<PointMm> near = Tenths.near(exact, p -> p.dot(wall) >= off);
      assertThat(near).isPresent();
      assertThat(near.get().dot(wall)).isGreaterThanOrEqualTo(off);
      assertThat(near.get().length())
          .isBetween(exact.length() - 2 * WayClear.PAST_MM, shortest + 1e-9);
      assertThat(near.get().x() * 10).isEqualTo(Math.rint(near.get().x() * 10));
      assertThat(near.get().z() * 10).isEqualTo(Math.rint(near.get().z() * 10));
    }
  }

  @Test
  void whereNothingNearDoesThereIsNone() {
    assertThat(Tenths.near(new PointMm(3, 4), p -> false)).isEmpty();
    assertThat(Tenths.near(new PointMm(3, 4), p -> p.x() > 3.65)).isEmpty();
    assertThat(Tenths.near(new PointMm(3, 4), p -> p.x() > 3.55)).isPresent();
    assertThat(Tenths.near(new PointMm(3, 4), p -> p.x() < 2.35)).isEmpty();
    assertThat(Tenths.near(new PointMm(3, 4), p -> p.z() > 4.65)).isEmpty();
    assertThat(Tenths.near(new PointMm(3, 4), p -> p.z() > 4.55)).isPresent();
    // never shorter than what was worked out
    assertThat(Tenths.near(new PointMm(3.04, 0), p -> true)).contains(new PointMm(3, -0.5));
  }
}
