package org.longlow.constraints.solve.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.solve.problem.Relation;

/** The sparse factor, the rank and the bases, beside dense matrices of Hipparchus. */
class NormalFactorTest {

  /** A row that reads some variables with fixed slopes. */
  private record Linear(int[] variables, double[] slopes) implements Relation {
    @Override
    public double evaluate(double[] x, double[] gradient) {
      double sum = 0;
      for (int i = 0; i < variables.length; i++) {
        sum += slopes[i] * x[variables[i]];
        if (gradient != null) {
          gradient[i] = slopes[i];
        }
      }
      return sum;
    }
  }

  private static RowSet rows(SplittableRandom random, int count, int variables) {
    List<Relation> relations = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int[] used =
          random.ints(0, variables).distinct().limit(1 + random.nextInt(3)).sorted().toArray();
      relations.add(
          new Linear(used, random.doubles(used.length, -1, 1).map(s -> s + 0.01).toArray()));
    }
    double[] scale = random.doubles(variables, 0.5, 2).toArray();
    RowSet rows = new RowSet(relations, IntStream.range(0, variables).toArray(), scale);
    assertThat(rows.evaluate(new double[variables])).isTrue();
    return rows;
  }

  private static RealMatrix dense(RowSet rows, int variables) {
    RealMatrix a = MatrixUtils.createRealMatrix(rows.count, variables);
    for (int i = 0; i < rows.count; i++) {
      for (int e = rows.start[i]; e < rows.start[i + 1]; e++) {
        a.setEntry(i, rows.column[e], rows.entry[e]);
      }
    }
    return a;
  }

  private static int rank(RealMatrix a) {
    double[] singular = new SingularValueDecomposition(a).getSingularValues();
    return (int) Arrays.stream(singular).filter(v -> v > 1e-8 * singular[0]).count();
  }

  @Test
  void solvesTheNormalEquations() {
    SplittableRandom random = new SplittableRandom(11);
    for (int trial = 0; trial < 200; trial++) {
      int n = 4 + random.nextInt(12);
      int m = 1 + random.nextInt(2 * n);
      RowSet rows = rows(random, m, n);
      NormalFactor factor = new NormalFactor(rows, n);
      assertThat(factor.order).hasSize(m).doesNotHaveDuplicates();
      // used twice: nothing of the first factor may stay behind
      for (int again = 0; again < 2; again++) {
        double[] compliance = random.doubles(m, 0.01, 1).toArray();
        factor.factor(compliance);
        RealMatrix a = dense(rows, n);
        RealMatrix normal =
            a.multiply(a.transpose()).add(MatrixUtils.createRealDiagonalMatrix(compliance));
        double[] b = random.doubles(m, -5, 5).toArray();
        double[] x = new double[m];
        factor.solve(b, x);
        double[] left = normal.operate(x);
        for (int i = 0; i < m; i++) {
          assertThat(left[i]).isCloseTo(b[i], within(1e-9));
        }
        double[] same = b.clone();
        factor.solve(same, same);
        assertThat(same).containsExactly(x, within(1e-12));
      }
    }
  }

  /** With next to no compliance each pivot is what is new in its row, squared. */
  @Test
  void freshRowsAreThoseThatAddToTheRank() {
    SplittableRandom random = new SplittableRandom(12);
    int dependent = 0;
    for (int trial = 0; trial < 200; trial++) {
      int n = 3 + random.nextInt(6);
      int m = 1 + random.nextInt(2 * n);
      RowSet rows = rows(random, m, n);
      NormalFactor factor = new NormalFactor(rows, n);
      double[] compliance = new double[m];
      Arrays.fill(compliance, 1e-13);
      factor.factor(compliance);
      int rank = rank(dense(rows, n));
      dependent += m - rank;
      assertThat(factor.fresh(1e-8, m)).isEqualTo(rank);
      assertThat(factor.fresh(1e-8, 0)).isZero();
      assertThat(new RankFactor(rows, n, 1e-9).rank()).isEqualTo(rank);
    }
    assertThat(dependent).isGreaterThan(100);
  }

  @Test
  void rankNullSpaceDependenciesAndAnswersFitTheRows() {
    SplittableRandom random = new SplittableRandom(13);
    for (int trial = 0; trial < 200; trial++) {
      int n = 3 + random.nextInt(6);
      int m = 1 + random.nextInt(2 * n);
      RowSet rows = rows(random, m, n);
      RealMatrix a = dense(rows, n);
      RankFactor factor = new RankFactor(rows, n, 1e-9);
      int rank = factor.rank();
      double[][] nulls = factor.nullSpace();
      assertThat(nulls).hasDimensions(n - rank, n - rank == 0 ? 0 : n);
      for (double[] z : nulls) {
        RealVector v = MatrixUtils.createRealVector(z);
        assertThat(a.operate(v).getNorm()).isLessThan(1e-9);
        assertThat(v.getNorm()).isCloseTo(1, within(1e-9));
      }
      double[][] vanishing = factor.dependencies();
      assertThat(vanishing.length).isEqualTo(m - rank);
      for (double[] y : vanishing) {
        RealVector v = MatrixUtils.createRealVector(y);
        assertThat(v.getNorm()).isGreaterThanOrEqualTo(1);
        assertThat(a.preMultiply(v).getNorm()).isLessThan(1e-7 * v.getNorm());
      }
      if (rank < m) {
        continue;
      }
      // rows all new: the least change that answers each is a column of the pseudoinverse
      RealMatrix inverse = new SingularValueDecomposition(a).getSolver().getInverse();
      double[][] answers = factor.answers();
      double[] gains = factor.gains();
      for (int i = 0; i < m; i++) {
        double most = 0;
        double scale = Math.max(1, inverse.getFrobeniusNorm());
        for (int j = 0; j < n; j++) {
          assertThat(answers[i][j]).isCloseTo(inverse.getEntry(j, i), within(1e-9 * scale * scale));
          most = Math.max(most, Math.abs(inverse.getEntry(j, i)));
        }
        assertThat(gains[i]).isCloseTo(most, within(1e-9 * scale * scale));
      }
    }
  }

  /** The same span, each vector with an entry of its own, and what is apart comes apart. */
  @Test
  void localBasesSpanTheSame() {
    SplittableRandom random = new SplittableRandom(14);
    for (int trial = 0; trial < 200; trial++) {
      int half = 3 + random.nextInt(4);
      int f = 2;
      // one motion in the first half, one in the second, then mixed
      double[][] apart = new double[2][2 * half];
      for (int j = 0; j < half; j++) {
        apart[0][j] = random.nextDouble(0.1, 1);
        apart[1][half + j] = random.nextDouble(0.1, 1);
      }
      double angle = random.nextDouble(0.2, 1.3);
      double[][] mixed = new double[2][2 * half];
      for (int j = 0; j < 2 * half; j++) {
        mixed[0][j] = Math.cos(angle) * apart[0][j] + Math.sin(angle) * apart[1][j];
        mixed[1][j] = -Math.sin(angle) * apart[0][j] + Math.cos(angle) * apart[1][j];
      }
      double[][] before = {mixed[0].clone(), mixed[1].clone()};
      double[][] local = LocalBasis.localise(mixed);
      assertThat(mixed).isDeepEqualTo(before);
      assertThat(local.length).isEqualTo(f);
      for (double[] z : local) {
        boolean first = IntStream.range(0, half).anyMatch(j -> z[j] != 0);
        boolean second = IntStream.range(half, 2 * half).anyMatch(j -> z[j] != 0);
        assertThat(first != second).isTrue();
        assertThat(Arrays.stream(z).map(Math::abs).max().getAsDouble()).isGreaterThanOrEqualTo(1);
        assertThat(Arrays.stream(z).anyMatch(v -> v == 1)).isTrue();
      }
      double[][] reduced = LocalBasis.reduceFromLast(mixed);
      RealMatrix both = MatrixUtils.createRealMatrix(4, 2 * half);
      for (int j = 0; j < 2 * half; j++) {
        both.setEntry(0, j, mixed[0][j]);
        both.setEntry(1, j, mixed[1][j]);
        both.setEntry(2, j, reduced[0][j]);
        both.setEntry(3, j, reduced[1][j]);
      }
      assertThat(rank(both)).isEqualTo(2);
      for (int k = 0; k < 2; k++) {
        int pivot = LocalBasis.lastPivot(reduced[k]);
        assertThat(reduced[k][pivot]).isEqualTo(1);
        assertThat(reduced[1 - k][pivot]).isZero();
        for (int j = pivot + 1; j < 2 * half; j++) {
          assertThat(reduced[k][j]).isZero();
        }
      }
    }
    assertThat(LocalBasis.localise(new double[0][])).isEmpty();
    assertThat(LocalBasis.reduceFromLast(new double[0][])).isEmpty();
    assertThat(LocalBasis.lastPivot(new double[] {0, 3, 0, 1e-7})).isEqualTo(1);
  }
}
