package org.longlow.rider.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;

class BracketTest {

  @Test
  void rootsAreThoseOfTheReferenceSolver() {
    Random random = new Random(4711);
    BracketingNthOrderBrentSolver brent = new BracketingNthOrderBrentSolver(1e-15, 1e-15, 1e-15, 5);
    for (int i = 0; i < 2000; i++) {
      double root = 2 * random.nextDouble() - 1;
      double steep = Math.exp(6 * random.nextDouble() - 3);
      double sign = random.nextBoolean() ? 1 : -1;
      DoubleUnaryOperator f =
          x -> sign * (Math.expm1(steep * (x - root)) + 0.3 * Math.pow(x - root, 3));
      double found = Bracket.root(f, -1.5, 2, 1e-14);
      assertThat(found).isCloseTo(brent.solve(1000, f::applyAsDouble, -1.5, 2), within(1e-13));
      // the side of the high end
      assertThat(sign * f.applyAsDouble(found)).isGreaterThanOrEqualTo(0);
    }
  }

  @Test
  void flatAndSteppedFunctionsAreFoundToo() {
    // false position alone creeps on both
    assertThat(Bracket.root(x -> Math.pow(x - 0.3, 9), -5, 9, 1e-12)).isCloseTo(0.3, within(1e-1));
    assertThat(Bracket.root(x -> x < 0.7 ? -1e-9 : 1e9, 0, 100, 1e-13))
        .isCloseTo(0.7, within(1e-13));
  }

  @Test
  void asNearAsAskedAndNoNearer() {
    int[] calls = {0};
    DoubleUnaryOperator f =
        x -> {
          calls[0]++;
          return Math.cos(x);
        };
    assertThat(Bracket.root(f, 1, 2, 1e-3)).isBetween(Math.PI / 2, Math.PI / 2 + 1e-3);
    int few = calls[0];
    assertThat(Bracket.root(f, 1, 2, 1e-15)).isBetween(Math.PI / 2 - 1e-15, Math.PI / 2 + 1e-15);
    assertThat(calls[0] - few).isGreaterThan(few).isLessThan(40);
  }

  @Test
  void endsOfOneSignAreAMistake() {
    assertThatThrownBy(() -> Bracket.root(x -> x * x + 1, -1, 1, 1e-9))
        .isInstanceOf(IllegalArgumentException.class)
        .isNotInstanceOf(OutOfRange.class);
    assertThat(Bracket.root(x -> x, 0, 1, 1e-9)).isZero();
    assertThat(Bracket.root(x -> x - 1, 0, 1, 1e-9)).isEqualTo(1);
  }
}
