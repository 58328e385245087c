package org.longlow.rider.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class PointMmTest {

  @Test
  void lengthsAreThoseOfPythagoras() {
    // Pythagorean triples: every square and root is exact
    assertThat(PointMm.norm(-5, 12)).isEqualTo(13);
    assertThat(new PointMm(8, -15).length()).isEqualTo(17);
    assertThat(new PointMm(21, 30).distance(new PointMm(1, 9))).isEqualTo(29);
    assertThat(PointMm.norm(0, -0.1)).isEqualTo(0.1);
  }

  @Test
  void lengthsAreThoseOfTheSlowWayButForTheLastBits() {
    Random random = new Random(7);
    for (int i = 0; i < 1000; i++) {
      double size = Math.pow(10, 12 * random.nextDouble() - 6);
      double x = size * random.nextGaussian();
      double z = size * random.nextGaussian();
      // two squares, a sum and a root: each is right to half a bit
      double slow = Math.hypot(x, z);
      assertThat(PointMm.norm(x, z)).isCloseTo(slow, within(2 * Math.ulp(slow)));
    }
  }
}
