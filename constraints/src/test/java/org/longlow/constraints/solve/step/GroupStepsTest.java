package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;

/**
 * Steps of a group of linear rows against dense systems of equations: what is nearest under ties is
 * where the gradient is a combination of theirs.
 */
class GroupStepsTest {

  private static final int N = 7;
  private static final int TIES = 3;

  static LongStream seeds() {
    return LongStream.range(0, 30);
  }

  private static double[] some(Random random, int count) {
    return random.doubles(count, -1, 1).toArray();
  }

  private static Row row(Random random, double size) {
    return new Row(some(random, N), size * (random.nextDouble() - 0.5), false);
  }

  private final Problem.Builder builder = Problem.builder();
  private final RealMatrix ties = new Array2DRowRealMatrix(TIES, N);
  private final RealVector tieB = new ArrayRealVector(TIES);

  /** Seven variables at zero under three ties. */
  private void tied(Random random) {
    for (int i = 0; i < N; i++) {
      builder.variable("v" + i, 0);
    }
    for (int i = 0; i < TIES; i++) {
      Row row = row(random, 10);
      builder.tie("t" + i, row);
      ties.setRow(i, row.a());
      tieB.setEntry(i, row.b());
    }
  }

  private GroupSystem system() {
    Problem problem = builder.build();
    GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
    double[] x = new double[N];
    assertThat(system.rows.evaluate(x)).isTrue();
    assertThat(system.limits.evaluate(x)).isTrue();
    system.measureWishes();
    return system;
  }

  /** Of all p with A p = b the one nearest to a target in the metric Q: Q (p − t) = Aᵀ λ. */
  private static double[] nearest(RealMatrix q, RealMatrix a, RealVector b, RealVector qt) {
    int n = q.getRowDimension();
    int m = a.getRowDimension();
    RealMatrix k = new Array2DRowRealMatrix(n + m, n + m);
    k.setSubMatrix(q.getData(), 0, 0);
    k.setSubMatrix(a.getData(), n, 0);
    k.setSubMatrix(a.transpose().getData(), 0, n);
    RealVector p = new LUDecomposition(k).getSolver().solve(qt.append(b));
    return Arrays.copyOf(p.toArray(), n);
  }

  private static RealMatrix one() {
    return org.hipparchus.linear.MatrixUtils.createRealIdentityMatrix(N);
  }

  private static void same(double[] step, double[] expected) {
    for (int j = 0; j < N; j++) {
      assertThat(step[j]).as("part %d", j).isCloseTo(expected[j], within(1e-7));
    }
  }

  private static RealMatrix with(RealMatrix a, double[] row) {
    RealMatrix more = new Array2DRowRealMatrix(a.getRowDimension() + 1, N);
    more.setSubMatrix(a.getData(), 0, 0);
    more.setRow(a.getRowDimension(), row);
    return more;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theRestoringStepIsTheShortestThatMeetsTiesAndLimits(long seed) {
    Random random = new Random(seed);
    tied(random);
    Row limit = row(random, 20);
    builder.limit("l", limit);
    GroupSystem system = system();
    system.factor(0, false);
    RealVector zero = new ArrayRealVector(N);
    double[] free = nearest(one(), ties, tieB, zero);
    system.restoringStep(0, false);
    same(system.step, free);
    system.restoringStep(0, true);
    boolean broken = limit.evaluate(free, null) < 0;
    same(
        system.step,
        broken ? nearest(one(), with(ties, limit.a()), tieB.append(limit.b()), zero) : free);
  }

  /** Ties off the list are as if they were not there. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aTieThatIsLeftOutDoesNotCount(long seed) {
    Random random = new Random(seed);
    tied(random);
    GroupSystem system = system();
    system.tieOn[1] = false;
    system.factor(0, false);
    system.restoringStep(0, false);
    RealMatrix kept = ties.getSubMatrix(new int[] {0, 2}, IntStream.range(0, N).toArray());
    RealVector b = new ArrayRealVector(new double[] {tieB.getEntry(0), tieB.getEntry(2)});
    same(system.step, nearest(one(), kept, b, new ArrayRealVector(N)));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theNearingStepWeighsWishesAgainstTheTarget(long seed) {
    Random random = new Random(seed);
    tied(random);
    Row[] wishes = {row(random, 10), row(random, 10)};
    double[] weights = {1, 1 + 3 * random.nextDouble()};
    builder.wish("w0", weights[0], wishes[0]).wish("w1", weights[1], wishes[1]);
    GroupSystem system = system();
    RealVector target = new ArrayRealVector(some(random, N)).mapMultiply(10);
    double unit = system.nearWeight();
    RealMatrix q = one().scalarMultiply(unit);
    RealVector qt = target.mapMultiply(unit);
    for (int i = 0; i < 2; i++) {
      RealVector w = new ArrayRealVector(wishes[i].a());
      q = q.add(w.outerProduct(w).scalarMultiply(weights[i]));
      qt = qt.add(w.mapMultiply(weights[i] * wishes[i].b()));
    }
    system.factor(0, true);
    system.nearingStep(target.toArray(), false);
    same(system.step, nearest(q, ties, tieB, qt));
  }

  /** Two wishes and three ties leave two ways free: all are met and the target is neared. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theWishingStepMeetsFewWishesOutrightOrSaysThatALimitForbidsIt(long seed) {
    Random random = new Random(seed);
    tied(random);
    Row[] wishes = {row(random, 10), row(random, 10)};
    builder.wish("w0", 1, wishes[0]).wish("w1", 2, wishes[1]);
    Row limit = row(random, 20);
    builder.limit("l", limit);
    GroupSystem system = system();
    assertThat(system.hasFewWishes()).isTrue();
    RealVector target = new ArrayRealVector(some(random, N)).mapMultiply(10);
    RealMatrix rows = with(with(ties, wishes[0].a()), wishes[1].a());
    double[] expected =
        nearest(one(), rows, tieB.append(wishes[0].b()).append(wishes[1].b()), target);
    boolean keeps = system.wishingStep(target.toArray(), false);
    same(system.step, expected);
    assertThat(keeps).isEqualTo(limit.evaluate(expected, null) >= 0);
  }

  /**
   * What is left of a push goes along the ties and into no limit; what is held back is made of
   * their gradients, and a limit only pushes away from where it is broken.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aPushIsHeldBackByTiesAndByLimitsItRunsInto(long seed) {
    Random random = new Random(seed);
    tied(random);
    Row near = new Row(some(random, N), 0, false);
    Row far = new Row(some(random, N), -50, false);
    builder.limit("near", near).limit("far", far);
    GroupSystem system = system();
    system.factor(0, false);
    double[] push = some(random, N);
    double[] left = new double[N];
    double[] held = system.heldBack(push, 1, left);
    assertThat(held).hasSize(TIES + 2);
    assertThat(held[TIES]).isGreaterThanOrEqualTo(0);
    assertThat(held[TIES + 1]).isZero();
    RealVector rest = new ArrayRealVector(left);
    assertThat(ties.operate(rest).getNorm()).isCloseTo(0, within(1e-8));
    double into = rest.dotProduct(new ArrayRealVector(near.a()));
    assertThat(into).isGreaterThan(-1e-8);
    assertThat(held[TIES] * into).isCloseTo(0, within(1e-8));
    // rows are weighed, so theirs, not those above, make up what is held back
    double[] made = push.clone();
    for (int i = 0; i < TIES; i++) {
      system.rows.addRow(i, held[i], made);
    }
    system.limits.addRow(0, held[TIES], made);
    same(made, left);
  }

  // --- what a group says of itself

  @ParameterizedTest
  @CsvSource({"true, false", "false, true", "false, false"})
  void costlyRowsAreKnown(boolean costlyLimit, boolean costlyWish) {
    tied(new Random(1));
    builder.limit("l", new Row(some(new Random(2), N), -9, costlyLimit));
    builder.wish("w", 1, new Row(some(new Random(3), N), 0, costlyWish));
    GroupSystem system = system();
    assertThat(system.isCostly()).isEqualTo(costlyLimit);
    assertThat(system.hasCostlyWishes()).isEqualTo(costlyWish);
    assertThat(system.hasFewWishes()).isEqualTo(!costlyWish);
  }

  // --- limits that cannot all hold

  /** Right of 10 and left of 0 at once: halfway both fail by 5, and 25 + 25 is least. */
  @ParameterizedTest
  @CsvSource({"-20, 7", "3, 7", "40, -2"})
  void limitsThatContradictFailLeastInTheMiddle(double startX, double startZ) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", startX, startZ);
    b.tie("level", new Row(new double[] {0, 1}, 7, false));
    b.limit("right", new Row(new double[] {1, 0}, 10, false));
    b.limit("left", new Row(new double[] {-1, 0}, 0, false));
    Problem problem = b.build();
    GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
    double[] x = {startX, 7};
    LeastBroken search = new LeastBroken(system, new Restoration(system, false));
    assertThat(search.run(x, SolverSettings.DEFAULT, 1e-9)).isFalse();
    assertThat(p.x().value(x, null)).isCloseTo(5, within(1e-4));
    assertThat(p.z().value(x, null)).isCloseTo(7, within(1e-9));
    assertThat(search.steps()).isBetween(1, 60);
  }

  @Test
  void limitsThatCanHoldAreMet() {
    Problem.Builder b = Problem.builder();
    b.pin("p", -20, 7);
    b.tie("level", new Row(new double[] {0, 1}, 7, false));
    b.limit("right", new Row(new double[] {1, 0}, 10, false));
    Problem problem = b.build();
    GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
    double[] x = {-20, 7};
    assertThat(
            new LeastBroken(system, new Restoration(system, false))
                .run(x, SolverSettings.DEFAULT, 1e-9))
        .isTrue();
    assertThat(x[0]).isGreaterThanOrEqualTo(10 - 1e-7);
    assertThat(x[1]).isCloseTo(7, within(1e-9));
  }

  /** Of costly limits what they miss is wished away; where there is room they ask nothing. */
  @ParameterizedTest
  @CsvSource({"4, -6, 1", "10, 0, 0", "13, 0, 0"})
  void aCostlyLimitMissesWhatItIsBelowZero(double at, double missed, double slope) {
    Problem.Builder b = Problem.builder();
    b.pin("p", at, 7);
    b.tie("slanted", new Row(new double[] {0.5, 1}, 7, false));
    b.limit("cheap", new Row(new double[] {0, 1}, -90, false));
    b.limit("costly", new Row(new double[] {1, 0}, 10, true));
    Problem hard = b.build();
    Softened soft = new Softened(Group.split(hard).get(0), hard, Work.unbounded());
    assertThat(soft.system().limits.count).isEqualTo(1);
    assertThat(soft.system().hasCostlyWishes()).isTrue();
    assertThat(soft.limitOf(0)).isEqualTo(1);
    Relation wish = soft.problem().wishes().get(0).residual();
    double[] g = {9, 9};
    assertThat(wish.evaluate(new double[] {at, 7}, g)).isEqualTo(missed);
    assertThat(g[0]).isEqualTo(slope);
    assertThat(wish.costly()).isTrue();
  }

  // --- multipliers, and a group taken over by another problem

  /**
   * The step is the target less what ties and wishes pull and plus what limits push, each by its
   * multiplier; of limits only one that the step touches pushes. A second step from the same place
   * is the same.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theNearingStepIsMadeOfItsMultipliers(long seed) {
    Random random = new Random(seed);
    tied(random);
    Row wish = row(random, 10);
    builder.wish("w", 1, wish);
    Row limit = row(random, 20);
    builder.limit("l", limit);
    GroupSystem system = system();
    double[] target = some(random, N);
    system.factor(0, true);
    for (boolean again : new boolean[] {false, true}) {
      system.nearingStep(target, again);
      double[] made = target.clone();
      for (int i = 0; i < TIES + 1; i++) {
        system.rows.addRow(i, -system.lambda[i], made);
      }
      double pushes = system.limitStep.multipliers()[0];
      system.limits.addRow(0, pushes, made);
      same(system.step, made);
      double room = limit.evaluate(system.step, null);
      assertThat(pushes).isGreaterThanOrEqualTo(0);
      assertThat(room).isGreaterThan(-1e-7);
      assertThat(pushes * room).isCloseTo(0, within(1e-7));
      assertThat(ties.operate(new ArrayRealVector(system.step)).subtract(tieB).getNorm())
          .isCloseTo(0, within(1e-8));
    }
  }

  /** Relations and weights of another problem take the place of the first's. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aGroupTakesOverRelationsAndWeights(long seed) {
    Random random = new Random(seed);
    tied(random);
    Row[] wishes = {row(random, 10), row(random, 10)};
    builder.wish("w0", 1, wishes[0]).wish("w1", 1, wishes[1]);
    builder.limit("l", row(random, 20));
    GroupSystem system = system();
    GroupStepsTest other = new GroupStepsTest();
    other.tied(random);
    other.builder.wish("w0", 3, row(random, 10)).wish("w1", 0.2, row(random, 10));
    other.builder.limit("l", row(random, 20));
    GroupSystem fresh = other.system();
    system.bind(other.builder.build());
    double[] x = new double[N];
    assertThat(system.rows.evaluate(x) & system.limits.evaluate(x)).isTrue();
    system.measureWishes();
    assertThat(system.nearWeight()).isEqualTo(fresh.nearWeight());
    double[] target = some(random, N);
    for (GroupSystem each : new GroupSystem[] {system, fresh}) {
      each.factor(0, true);
      each.nearingStep(target, false);
    }
    same(system.step, fresh.step);
  }

  // --- costly limits as wishes

  @Test
  void eachCostlyLimitIsAWishOfItsOwnAndIsCharged() {
    Problem.Builder b = Problem.builder();
    b.pin("p", 4, 7);
    b.tie("slanted", new Row(new double[] {0.5, 1}, 7, false));
    b.limit("costly", new Row(new double[] {1, 0}, 10, true));
    b.limit("cheap", new Row(new double[] {0, 1}, -90, false));
    b.limit("dear", new Row(new double[] {0, 1}, 30, true));
    Problem hard = b.build();
    Work work = new Work(1_000_000);
    Softened soft = new Softened(Group.split(hard).get(0), hard, work);
    assertThat(soft.limitOf(0)).isZero();
    assertThat(soft.limitOf(1)).isEqualTo(2);
    GroupSystem system = soft.system();
    long before = work.done();
    assertThat(system.rows.evaluate(new double[] {4, 7})).isTrue();
    assertThat(work.done() - before).isGreaterThanOrEqualTo(2L * Work.COSTLY_VALUE);
    // 4 of 10 and 7 of 30
    assertThat(system.rows.value[1]).isEqualTo(-6);
    assertThat(system.rows.value[2]).isEqualTo(-23);
  }
}
