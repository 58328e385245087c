package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The least shift along one line, beside a walk in small steps. */
class ShiftsAcrossTest {

  private static final double STEP = 0.01;

  private static double walked(double[][] forbidden, int way) {
    for (int k = 0; ; k++) {
      double at = way * STEP * k;
      boolean free = true;
      for (double[] f : forbidden) {
        free &= at <= f[0] || at >= f[1];
      }
      if (free) {
        return at;
      }
    }
  }

  @Test
  void isTheFirstPlaceThatAWalkFinds() {
    SplittableRandom random = new SplittableRandom(3);
    int chained = 0;
    for (int i = 0; i < 400; i++) {
      double[][] forbidden = new double[1 + random.nextInt(5)][];
      Across across = new Across();
      for (int k = 0; k < forbidden.length; k++) {
        // ends between two steps, no two nearer than a step
        double from = random.nextInt(-40, 30) + 0.005 + 0.05 * k;
        forbidden[k] = new double[] {from, from + random.nextInt(1, 25)};
        across.forbid(forbidden[k][0], forbidden[k][1]);
      }
      double up = walked(forbidden, 1);
      double down = walked(forbidden, -1);
      assertThat(across.least(1)).isCloseTo(up, within(STEP));
      assertThat(across.least(-1)).isCloseTo(down, within(STEP));
      assertThat(across.least()).isCloseTo(up <= -down ? up : down, within(STEP));
      for (double[] f : forbidden) {
        chained += up > 0 && f[0] > 0 && f[1] <= up + STEP ? 1 : 0;
      }
    }
    assertThat(chained).isGreaterThan(20);
  }

  @Test
  void whatOnlyTouchesNeedsNoShiftAndEqualWaysGoToTheLeft() {
    Across across = new Across();
    assertThat(across.least()).isZero();
    across.forbid(0, 8);
    assertThat(across.least()).isZero();
    across.forbid(-6, 0);
    assertThat(across.least()).isZero();
    across.forbid(-1, 6);
    assertThat(across.least(1)).isEqualTo(8);
    assertThat(across.least(-1)).isEqualTo(-6);
    Across even = new Across();
    even.forbid(-4, 4);
    assertThat(even.least()).isEqualTo(4);
    Across backwards = new Across();
    backwards.forbid(4, -4);
    assertThat(backwards.least()).isZero();
  }

  /** A slot that fits to the hair is no place to go to. */
  @Test
  void aSlotNeedsAHairOfRoom() {
    Across hair = new Across();
    hair.forbid(-1, 3);
    hair.forbid(3.00005, 7);
    assertThat(hair.least(1)).isEqualTo(7);
    Across slot = new Across();
    slot.forbid(-1, 3);
    slot.forbid(3.0002, 7);
    assertThat(slot.least(1)).isEqualTo(3);
  }
}
