package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where the change is linear in the state, Broyden's method comes to its end in twice as many steps
 * as there are values (D. M. Gay, Some convergence properties of Broyden's method, SIAM Journal on
 * Numerical Analysis 16, 1979).
 */
class AgreeTest {

  private static final int N = 4;

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  /** A round's change where each round leaves a share of what is off, and values act on others. */
  private record Linear(RealMatrix slope, RealVector rest) {

    static Linear random(Random random) {
      RealMatrix a = new Array2DRowRealMatrix(N, N);
      for (int i = 0; i < N; i++) {
        for (int j = 0; j < N; j++) {
          a.setEntry(i, j, (i == j ? -1 : 0) + 0.5 * (random.nextDouble() - 0.5));
        }
      }
      return new Linear(a, new ArrayRealVector(random.doubles(N, -30, 30).toArray()));
    }

    double[] change(double[] x) {
      return slope.operate(new ArrayRealVector(x).subtract(rest)).toArray();
    }

    double[][] inverse() {
      return new LUDecomposition(slope).getSolver().getInverse().getData();
    }
  }

  private static double most(double[] values) {
    return new ArrayRealVector(values).getLInfNorm();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aLinearChangeAgreesInTwiceAsManyStepsAsValues(long seed) {
    Linear linear = Linear.random(new Random(seed));
    Agree agree = new Agree(N);
    assertThat(agree.state()).containsExactly(0, 0, 0, 0);
    double off = Double.POSITIVE_INFINITY;
    for (int round = 0; round <= 2 * N; round++) {
      double[] change = linear.change(agree.state());
      off = agree.move(change);
      assertThat(off).isEqualTo(most(change));
    }
    assertThat(off).isLessThan(1e-9);
    assertThat(agree.state()).containsExactly(linear.rest().toArray(), within(1e-9));
  }

  /** The first step is as long as the change. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void itBeginsWithThePlainStep(long seed) {
    Random random = new Random(seed);
    double[] from = random.doubles(N, -9, 9).toArray();
    double[] change = random.doubles(N, -9, 9).toArray();
    Agree agree = new Agree(N);
    agree.begin(from);
    assertThat(agree.move(change)).isEqualTo(most(change));
    double[] plain = new ArrayRealVector(from).add(new ArrayRealVector(change)).toArray();
    assertThat(agree.state()).containsExactly(plain, within(1e-12));
  }

  /** Broyden's step by his formula: the slope learnt takes the last step to the last difference. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatItLearnsFitsTheLastStep(long seed) {
    Random random = new Random(seed);
    RealVector first = new ArrayRealVector(random.doubles(N, -9, 9).toArray());
    RealVector second = new ArrayRealVector(random.doubles(N, -3, 3).toArray());
    Agree agree = new Agree(N);
    agree.move(first.toArray());
    RealVector at = new ArrayRealVector(agree.state());
    agree.move(second.toArray());
    // B = -1 + (y + s) s / s·s for step s = first and difference y = second - first
    RealVector y = second.subtract(first);
    RealMatrix b =
        y.add(first)
            .outerProduct(first)
            .scalarMultiply(1 / first.dotProduct(first))
            .subtract(org.hipparchus.linear.MatrixUtils.createRealIdentityMatrix(N));
    RealVector step = new LUDecomposition(b).getSolver().solve(second).mapMultiply(-1);
    assertThat(agree.state()).containsExactly(at.add(step).toArray(), within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void withTheSlopeKnownOneStepIsEnough(long seed) {
    Random random = new Random(seed);
    Linear linear = Linear.random(random);
    Agree agree = new Agree(N);
    agree.begin(random.doubles(N, -9, 9).toArray(), linear.inverse());
    agree.move(linear.change(agree.state()));
    assertThat(agree.state()).containsExactly(linear.rest().toArray(), within(1e-9));
    // begun anew it knows nothing of that
    double[] from = agree.state();
    agree.begin(from);
    double[] change = {1, 2, 3, 4};
    agree.move(change);
    for (int i = 0; i < N; i++) {
      assertThat(agree.state()[i]).isCloseTo(from[i] + change[i], within(1e-12));
    }
  }

  /** More than twice as far off as before: what was learnt is forgotten. */
  @Test
  void aStepThatMakesThingsWorseIsFollowedByAPlainOne() {
    for (double worse : new double[] {1.9, 2.1}) {
      Agree agree = new Agree(N);
      agree.move(new double[] {1, 0, 0, 0});
      agree.move(new double[] {0.5, 0.25, 0, 0});
      double[] from = agree.state();
      double[] change = {0, 0.5 * worse, 0.1, 0};
      assertThat(agree.move(change)).isEqualTo(0.5 * worse);
      boolean plain = true;
      for (int i = 0; i < N; i++) {
        plain &= Math.abs(agree.state()[i] - from[i] - change[i]) < 1e-12;
      }
      assertThat(plain).isEqualTo(worse > 2);
    }
  }

  /** What does not move the state teaches nothing. */
  @Test
  void noStepTeachesNothing() {
    Agree agree = new Agree(N);
    agree.move(new double[N]);
    agree.move(new double[] {3, -4, 5, 6});
    assertThat(agree.state()).containsExactly(3, -4, 5, 6);
  }
}
