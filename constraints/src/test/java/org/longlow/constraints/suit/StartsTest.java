package org.longlow.constraints.suit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StartsTest {

  private static final double[] HOME = {500, 400, 1400, 420};
  private static final double[][] WAYS = {{1, 0, 0, 0}, {0, 0, 0.6, 0.8}};

  @Test
  void theFirstStartIsThePresentPlace() {
    assertThat(Starts.of(0, HOME, WAYS, 150)).containsExactly(HOME);
  }

  @Test
  void startsStayInsideTheSpreadAndFillIt() {
    double least = 0;
    double most = 0;
    for (int k = 1; k <= 32; k++) {
      double[] start = Starts.of(k, HOME, WAYS, 150);
      double along = 0.6 * (start[2] - HOME[2]) + 0.8 * (start[3] - HOME[3]);
      assertThat(Math.abs(along)).isLessThan(150);
      assertThat(Math.abs(start[0] - HOME[0])).isLessThan(150);
      assertThat(start[1]).isEqualTo(HOME[1]);
      least = Math.min(least, along);
      most = Math.max(most, along);
    }
    // Halton's points to base 3 reach within 1/27 of both ends in 32 draws
    assertThat(least).isLessThan(-150 * (1 - 2.0 / 27 - 1e-9));
    assertThat(most).isGreaterThan(150 * (1 - 2.0 / 27 - 1e-9));
  }
}
