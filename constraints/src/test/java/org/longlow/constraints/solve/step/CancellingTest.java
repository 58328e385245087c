package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;

/**
 * Sets of linear demands that cannot all hold, by Farkas: there is one way, and only one, to add
 * their rows up to nothing, each row has a part in it, and their right sides do not add up to
 * nothing.
 */
class CancellingTest {

  private static final double FAILS_MM = 1e-6;

  private static Row along(int n, int variable, double at) {
    double[] a = new double[n];
    a[variable] = 1;
    return new Row(a, at, false);
  }

  private static GroupSystem system(int n, List<Row> ties, List<Row> limits) {
    Problem.Builder b = Problem.builder();
    IntStream.range(0, n).forEach(i -> b.variable("v" + i, 0));
    IntStream.range(0, ties.size()).forEach(i -> b.tie("t" + i, ties.get(i)));
    IntStream.range(0, limits.size()).forEach(i -> b.limit("l" + i, limits.get(i)));
    Problem problem = b.build();
    return new GroupSystem(Group.split(problem).get(0), problem);
  }

  /** Multipliers that add the rows up to nothing, of length 1; there must be one way only. */
  private static double[] cancels(List<Row> members) {
    double[][] columns = members.stream().map(Row::a).toArray(double[][]::new);
    SingularValueDecomposition svd =
        new SingularValueDecomposition(
            new Array2DRowRealMatrix(columns)
                .multiplyTransposed(new Array2DRowRealMatrix(columns)));
    double[] size = svd.getSingularValues();
    assertThat(size[size.length - 1]).as("rows that cancel").isLessThan(1e-9);
    if (size.length > 1) {
      assertThat(size[size.length - 2]).as("only one way").isGreaterThan(1e-9);
    }
    return svd.getV().getColumn(size.length - 1);
  }

  private static List<Row> members(boolean[] used, List<Row> all) {
    List<Row> members = new ArrayList<>();
    IntStream.range(0, all.size()).filter(i -> used[i]).forEach(i -> members.add(all.get(i)));
    return members;
  }

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void tiesThatCancelContradictAndNoneCanBeSpared(long seed) {
    Random random = new Random(seed);
    int n = 5;
    List<Row> ties = new ArrayList<>();
    double[] through = random.doubles(n, -90, 90).toArray();
    for (int i = 0; i < 9; i++) {
      Row row = Row.random(random, n, 3);
      // most of them agree, or none
      ties.add(seed % 2 == 0 && i != 4 ? row.through(through) : row);
    }
    double[][] a = ties.stream().map(Row::a).toArray(double[][]::new);
    RealVector b = new ArrayRealVector(ties.stream().mapToDouble(Row::b).toArray());
    double[] least =
        new SingularValueDecomposition(new Array2DRowRealMatrix(a)).getSolver().solve(b).toArray();
    boolean[] used = Cancelling.rows(system(n, ties, List.of()), least, FAILS_MM);
    List<Row> members = members(used, ties);
    double[] y = cancels(members);
    double missed = 0;
    for (int i = 0; i < y.length; i++) {
      assertThat(Math.abs(y[i])).isGreaterThan(1e-6);
      missed += y[i] * members.get(i).b();
    }
    assertThat(Math.abs(missed)).isGreaterThan(1e-6);
  }

  /** Seven limits; every other time they leave room for one point at least. */
  private static List<Row> limits(long seed) {
    Random random = new Random(1000 + seed);
    double[] room = random.doubles(3, -90, 90).toArray();
    List<Row> limits = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      Row limit = Row.random(random, 3, 3);
      limits.add(seed % 2 == 0 ? limit : new Row(limit.a(), limit.through(room).b() - 5, false));
    }
    return limits;
  }

  /**
   * Three variables, a tie and seven limits. Where limits fail least, what they miss pushes along
   * the tie only; of those that cancel each limit has its part in the same sense.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void limitsThatCancelPushAgainstEachOther(long seed) {
    Row tie = Row.random(new Random(500 + seed), 3, 9);
    List<Row> limits = limits(seed);
    GroupSystem system = system(3, List.of(tie), limits);
    double[] x = new ArrayRealVector(tie.a()).mapMultiply(tie.b()).toArray();
    LeastBroken search = new LeastBroken(system, new Restoration(system, false));
    boolean held = search.run(x, SolverSettings.DEFAULT, 1e-9);
    // all is linear: what takes steps is to learn which limits count
    assertThat(search.steps()).isLessThanOrEqualTo(12);
    assertThat(tie.evaluate(x, null)).isCloseTo(0, within(1e-8));
    double[] push = new double[3];
    double worst = 0;
    for (Row limit : limits) {
      double gap = Math.min(0, limit.evaluate(x, null));
      worst = Math.min(worst, gap);
      for (int j = 0; j < 3; j++) {
        push[j] += gap * limit.a()[j];
      }
    }
    RealVector t = new ArrayRealVector(tie.a());
    RealVector left = new ArrayRealVector(push);
    left = left.subtract(t.mapMultiply(left.dotProduct(t)));
    assertThat(left.getNorm()).as("push along the tie").isCloseTo(0, within(2e-3));
    assertThat(held).isEqualTo(worst > -2 * FAILS_MM);
    boolean[] used = Cancelling.rows(system, x, FAILS_MM);
    if (held) {
      return;
    }
    List<Row> all = new ArrayList<>(List.of(tie));
    all.addAll(limits);
    List<Row> members = members(used, all);
    double[] y = cancels(members);
    double missed = 0;
    double sense = Math.signum(y[y.length - 1]);
    for (int i = 0; i < y.length; i++) {
      missed += sense * y[i] * members.get(i).b();
      assertThat(Math.abs(y[i])).isGreaterThan(1e-6);
      if (members.get(i) != tie) {
        assertThat(sense * y[i]).as("limit %d", i).isPositive();
      }
    }
    assertThat(missed).isPositive();
  }

  /** Where what is missed is not least, to a hundredth of the most, nothing cancels. */
  @ParameterizedTest
  @CsvSource({"5, true", "5.06, false", "5.5, false", "0, false"})
  void nothingCancelsAwayFromTheLeast(double at, boolean least) {
    List<Row> ties = List.of(along(2, 0, 0), along(2, 0, 10), along(2, 1, 3), along(2, 1, 3));
    // one more row, so that both variables are one group
    List<Row> limits = List.of(new Row(new double[] {0.6, 0.8}, -900, false));
    boolean[] used = Cancelling.rows(system(2, ties, limits), new double[] {at, 3}, FAILS_MM);
    assertThat(used).containsExactly(least, least, false, false, false);
  }

  /**
   * x is to be 10 at least and 3 at most, which is missed least at 6.5. Beside that the tie, which
   * z alone would follow, takes up what is left of the push, and has no part in it.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-6, 1e-5, 1e-4, 3e-4, 1e-3, 1e-2, -1e-5, -1e-4, -1e-3})
  void aTieIsNotNamedBesideTheLeast(double off) {
    Row tie = new Row(new double[] {0.6, 0.8}, 0.6 * (6.5 + off) + 0.8 * 7, false);
    List<Row> limits =
        List.of(new Row(new double[] {1, 0}, 10, false), new Row(new double[] {-1, 0}, -3, false));
    boolean[] used =
        Cancelling.rows(system(2, List.of(tie), limits), new double[] {6.5 + off, 7}, FAILS_MM);
    assertThat(used).containsExactly(false, true, true);
  }

  /**
   * A costly limit wants x &gt;= 10. What holds it back is the tie at 0, or else the limit that
   * keeps x at 3; what keeps z, or leaves room, does not.
   */
  @ParameterizedTest
  @CsvSource({"true, 0", "false, 3"})
  void whatHoldsACostlyLimitBackIsNamed(boolean tied, double at) {
    Problem.Builder b = Problem.builder();
    b.variable("x", 0);
    b.variable("z", 7);
    b.tie("z", along(2, 1, 7));
    if (tied) {
      b.tie("x", along(2, 0, 0));
    }
    b.limit("wide", new Row(new double[] {-1, 0}, -50, false));
    b.limit("near", new Row(new double[] {-1, 0}, -3, false));
    b.limit("costly", new Row(new double[] {1, 0}, 10, true));
    b.limit("joins", new Row(new double[] {0.6, 0.8}, -900, false));
    Problem problem = b.build();
    Softened soft = new Softened(Group.split(problem).get(0), problem, Work.unbounded());
    boolean[] used = Cancelling.rows(soft.system(), new double[] {at, 7}, FAILS_MM);
    int wish = soft.system().ties;
    boolean[] expected = new boolean[used.length];
    expected[wish] = true;
    expected[tied ? 1 : wish + 2] = true;
    assertThat(used).containsExactly(expected);
    assertThat(soft.limitOf(0)).isEqualTo(2);
  }

  /** A costly limit that has room is missed by nothing, and nothing holds it back. */
  @Test
  void whatHasRoomIsNotHeldBack() {
    Problem.Builder b = Problem.builder();
    b.variable("x", 0);
    b.tie("x", along(1, 0, 20));
    b.limit("costly", new Row(new double[] {1}, 10, true));
    b.limit("near", new Row(new double[] {-1}, -20, false));
    Problem problem = b.build();
    Softened soft = new Softened(Group.split(problem).get(0), problem, Work.unbounded());
    assertThat(Cancelling.rows(soft.system(), new double[] {20}, FAILS_MM)).containsOnly(false);
  }

  /** Rows of any length: what cancels is that of rows made one long. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void lengthsOfRowsDoNotCount(long seed) {
    Random random = new Random(seed);
    List<Row> ties = new ArrayList<>();
    List<Row> stretched = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      Row row = Row.random(random, 4, 3);
      double by = Math.pow(30, 2 * random.nextDouble() - 1);
      ties.add(row);
      stretched.add(
          new Row(new ArrayRealVector(row.a()).mapMultiply(by).toArray(), row.b() * by, false));
    }
    double[][] a = ties.stream().map(Row::a).toArray(double[][]::new);
    RealVector b = new ArrayRealVector(ties.stream().mapToDouble(Row::b).toArray());
    double[] least =
        new SingularValueDecomposition(new Array2DRowRealMatrix(a)).getSolver().solve(b).toArray();
    boolean[] used = Cancelling.rows(system(4, ties, List.of()), least, FAILS_MM);
    assertThat(Cancelling.rows(system(4, stretched, List.of()), least, FAILS_MM)).isEqualTo(used);
    assertThat(used).contains(true);
  }
}
