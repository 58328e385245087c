package org.longlow.constraints.suit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DampedStepTest {

  @Test
  void withoutDampingItIsTheStepOfLeastSquares() {
    // line through (0,1), (1,3), (2,4): intercept 7/6, slope 3/2, by the textbook formulas
    double[][] slopes = {{1, 0}, {1, 1}, {1, 2}};
    double[] step = DampedStep.of(slopes, new double[] {-1, -3, -4}, 0);
    assertThat(step[0]).isCloseTo(7.0 / 6, within(1e-9));
    assertThat(step[1]).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void dampingShortensTheStepInProportion() {
    double[] step = DampedStep.of(new double[][] {{2}}, new double[] {-6}, 1);
    // (4 + 1·4) s = 12
    assertThat(step[0]).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void aDirectionThatChangesNothingIsNotTaken() {
    double[] step = DampedStep.of(new double[][] {{1, 0}}, new double[] {-5}, 1e-6);
    assertThat(step[0]).isCloseTo(5, within(1e-4));
    assertThat(step[1]).isZero();
  }
}
