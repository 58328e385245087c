package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;

/**
 * The step that knows of curvature is the least of a quadratic under linear equations, which a
 * dense system gives as well: of rows whose second derivatives are constant nothing is left out.
 */
class CurvatureStepTest {

  private static final int N = 6;
  private static final double FAR = 1e6;

  static LongStream seeds() {
    return LongStream.range(0, 10);
  }

  /** Two ties, two wishes with weights and a limit, all curved, after a plain step. */
  private static final class At {
    private final double[] x;
    private final double[] target;
    private final Bowl[] ties;
    private final Bowl[] wishes;
    private final double[] weights = {1, 2.5};
    private final Bowl limit;
    private final GroupSystem system;
    private final CurvatureStep curvature;

    At(Random random, double bend) {
      x = random.doubles(N, -3, 3).toArray();
      target = random.doubles(N, -2, 2).toArray();
      ties = new Bowl[] {Bowl.random(random, N, 1, bend), Bowl.random(random, N, -1, bend)};
      wishes = new Bowl[] {Bowl.random(random, N, 1, 0), Bowl.random(random, N, 0, 0)};
      limit = Bowl.random(random, N, 2, bend);
      Problem.Builder b = Problem.builder();
      for (int i = 0; i < N; i++) {
        b.variable("v" + i, x[i]);
      }
      b.tie("t0", ties[0]).tie("t1", ties[1]);
      b.wish("w0", weights[0], wishes[0]).wish("w1", weights[1], wishes[1]);
      b.limit("l", limit);
      Problem problem = b.build();
      system = new GroupSystem(Group.split(problem).get(0), problem);
      curvature = new CurvatureStep(system);
      assertThat(system.rows.evaluate(x) & system.limits.evaluate(x)).isTrue();
      system.measureWishes();
      system.factor(0, true);
      system.nearingStep(target, false);
    }

    private double[] plain() {
      return system.step.clone();
    }

    private boolean limitPushes() {
      return system.limitStep.activeCount() > 0;
    }

    private boolean find(double region) {
      return curvature.find(x, target, plain(), system.nearWeight(), region);
    }

    /** Second derivatives of what is to be made least, in the measure of the distance. */
    private RealMatrix bends() {
      RealMatrix q = MatrixUtils.createRealIdentityMatrix(N);
      for (int i = 0; i < ties.length; i++) {
        q = q.add(new Array2DRowRealMatrix(ties[i].h()).scalarMultiply(system.lambda[i]));
      }
      for (int i = 0; i < wishes.length; i++) {
        RealVector a = new ArrayRealVector(wishes[i].slope(x));
        q = q.add(a.outerProduct(a).scalarMultiply(weights[i] / system.nearWeight()));
      }
      double push = system.limitStep.multipliers()[0];
      return q.add(new Array2DRowRealMatrix(limit.h()).scalarMultiply(-push));
    }

    private RealVector pull() {
      RealVector g = new ArrayRealVector(target);
      for (int i = 0; i < wishes.length; i++) {
        RealVector a = new ArrayRealVector(wishes[i].slope(x));
        double missed = wishes[i].evaluate(x, null);
        g = g.subtract(a.mapMultiply(weights[i] * missed / system.nearWeight()));
      }
      return g;
    }

    /**
     * Where half p · Q p − pull · p is least while ties and a limit that pushes change as asked.
     */
    private double[] least(double share) {
      List<Bowl> rows = new ArrayList<>(List.of(ties));
      if (limitPushes()) {
        rows.add(limit);
      }
      int m = rows.size();
      RealMatrix k = new Array2DRowRealMatrix(N + m, N + m);
      k.setSubMatrix(bends().getData(), 0, 0);
      RealVector right = new ArrayRealVector(m);
      for (int i = 0; i < m; i++) {
        double[] a = rows.get(i).slope(x);
        for (int j = 0; j < N; j++) {
          k.setEntry(N + i, j, a[j]);
          k.setEntry(j, N + i, a[j]);
        }
        right.setEntry(i, -share * rows.get(i).evaluate(x, null));
      }
      RealVector p = new LUDecomposition(k).getSolver().solve(pull().append(right));
      return Arrays.copyOf(p.toArray(), N);
    }

    private double[] changes(double[] p) {
      return Arrays.stream(ties)
          .mapToDouble(t -> new ArrayRealVector(t.slope(x)).dotProduct(new ArrayRealVector(p)))
          .toArray();
    }
  }

  private static double length(double[] p) {
    return new ArrayRealVector(p).getNorm();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theStepIsTheLeastOfTheCurvedModel(long seed) {
    At at = new At(new Random(seed), 0.02);
    double[] expected = at.least(1);
    double[] before = at.x.clone();
    assertThat(at.find(FAR)).isTrue();
    assertThat(at.x).isEqualTo(before);
    assertThat(length(expected)).isLessThan(12 * length(at.plain()));
    for (int j = 0; j < N; j++) {
      assertThat(at.curvature.step()[j]).isCloseTo(expected[j], within(1e-4));
    }
    // without curvature it would be the plain step, which it is not
    double apart =
        new ArrayRealVector(at.plain()).subtract(new ArrayRealVector(expected)).getNorm();
    assertThat(apart).isGreaterThan(1e-3);
  }

  /** A region cuts the way short: the step ends at its edge, having closed a share of the ties. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void noStepLeavesItsRegion(long seed) {
    At at = new At(new Random(seed), 0.02);
    double plain = length(at.plain());
    for (double part : new double[] {0.01, 0.8, 1.4}) {
      double share = Math.min(1, part / 2);
      boolean beyond = length(at.least(share)) > part * plain * (1 + 1e-6);
      assertThat(at.find(part * plain)).isTrue();
      double[] p = at.curvature.step().clone();
      if (beyond) {
        assertThat(length(p)).isCloseTo(part * plain, within(1e-9 * plain));
      } else {
        assertThat(length(p)).isLessThan(part * plain);
      }
      double[] closes = at.changes(p);
      for (int i = 0; i < closes.length; i++) {
        double off = at.ties[i].evaluate(at.x, null);
        assertThat(closes[i]).isCloseTo(-share * off, within(1e-8));
      }
    }
  }

  /** Where the model has no least the step goes to the edge, and that is twelve plain steps off. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whereAllBendsDownItGoesAsFarAsItMay(long seed) {
    Random random = new Random(seed);
    At at = new At(random, 0.02);
    Arrays.fill(at.system.limitStep.multipliers(), 0);
    Arrays.fill(at.system.lambda, 0, 2, 0);
    for (int j = 0; j < N; j++) {
      // a tie that bends by -60 each way, held by a multiplier of 1
      at.ties[0].h()[j][j] -= 60;
    }
    double[] plain = at.plain();
    at.system.lambda[0] = 1;
    assertThat(at.curvature.find(at.x, at.target, plain, at.system.nearWeight(), FAR)).isTrue();
    assertThat(length(at.curvature.step())).isCloseTo(12 * length(plain), within(1e-6));
    assertThat(at.curvature.find(at.x, at.target, plain, at.system.nearWeight(), 3 * length(plain)))
        .isTrue();
    assertThat(length(at.curvature.step())).isCloseTo(3 * length(plain), within(1e-6));
  }
}
