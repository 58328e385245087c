package org.longlow.constraints.solve.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.Diagnoser;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.linear.RankFactor;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.relation.Relations;
import org.longlow.constraints.solve.step.GroupSystem;

/**
 * Freedoms and gains by blocks beside singular values of the whole Jacobian, by another library.
 */
class BlockRankTest {
  private static final double TOLERANCE = SolverSettings.DEFAULT.rankTolerance();

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  /**
   * Bays of a frame at their true places, every other one with a strut that swings and, by chance,
   * a link from it to the one before.
   */
  private static Problem frame(SplittableRandom random, int bays) {
    Problem.Builder b = Problem.builder();
    double[] x = new double[6 * bays + 6];
    Pt lower = b.pin("lower 0", 0, 0);
    Pt upper = b.pin("upper 0", 0, x[3] = 200);
    b.tie("place", Relations.fix(lower, 0, 0));
    b.tie("upright", Relations.fix(upper.x(), 0));
    b.tie("head", Relations.distance(lower, upper, 200));
    Pt strutBefore = null;
    int next = 4;
    for (int k = 1; k <= bays; k++) {
      double lx = 300 * k + random.nextDouble(-40, 40);
      double lz = random.nextDouble(-40, 40);
      double ux = lx + random.nextDouble(-40, 40);
      double uz = 200 + random.nextDouble(-40, 40);
      Pt lowerNext = b.pin("lower " + k, x[next++] = lx, x[next++] = lz);
      Pt upperNext = b.pin("upper " + k, x[next++] = ux, x[next++] = uz);
      bar(b, x, "rail " + k, lower, lowerNext);
      bar(b, x, "brace " + k, upper, lowerNext);
      bar(b, x, "post " + k, lowerNext, upperNext);
      bar(b, x, "top " + k, upper, upperNext);
      if (k % 2 == 0) {
        Pt strut =
            b.pin("strut " + k, x[next++] = lx - random.nextDouble(20, 200), x[next++] = lz - 150);
        bar(b, x, "strut " + k, lowerNext, strut);
        if (strutBefore != null && random.nextBoolean()) {
          bar(b, x, "link " + k, strutBefore, strut);
        }
        strutBefore = strut;
      }
      lower = lowerNext;
      upper = upperNext;
    }
    return b.build();
  }

  private static void bar(Problem.Builder b, double[] x, String name, Pt p, Pt q) {
    double length =
        Math.hypot(
            p.x().value(x, null) - q.x().value(x, null),
            p.z().value(x, null) - q.z().value(x, null));
    b.tie(name, Relations.distance(p, q, length));
  }

  private static GroupSystem system(Problem problem) {
    List<Group> groups = Group.split(problem);
    assertThat(groups).hasSize(1);
    GroupSystem system = new GroupSystem(groups.get(0), problem);
    assertThat(system.rows.evaluate(problem.start())).isTrue();
    system.rows.equilibrate(system.ties);
    return system;
  }

  private static RealMatrix jacobian(GroupSystem system) {
    RealMatrix m = new Array2DRowRealMatrix(system.ties, system.n);
    for (int i = 0; i < system.ties; i++) {
      for (int e = system.rows.start[i]; e < system.rows.start[i + 1]; e++) {
        m.addToEntry(i, system.rows.column[e], system.rows.entry[e]);
      }
    }
    return m;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void gainsAndFreedomsAreThoseOfThePseudoinverse(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Problem problem = frame(random, 2 + random.nextInt(8));
    GroupSystem system = system(problem);
    RealMatrix j = jacobian(system);
    SingularValueDecomposition svd = new SingularValueDecomposition(j);
    BlockRank blocks = new BlockRank(system, problem, TOLERANCE);
    assertThat(blocks.isRegular()).isTrue();
    assertThat(svd.getRank()).isEqualTo(system.ties);
    assertThat(blocks.open()).hasSize(system.n - system.ties);
    DecompositionSolver solver = svd.getSolver();
    RealMatrix inverse = solver.getInverse();
    for (int i = 0; i < system.ties; i++) {
      double most = inverse.getColumnVector(i).getLInfNorm();
      assertThat(blocks.gains()[i]).as("row " + i).isCloseTo(most, offset(1e-8 * most));
    }
    RealMatrix open = new Array2DRowRealMatrix(blocks.open().toArray(double[][]::new));
    for (double[] motion : blocks.open()) {
      for (double v : j.operate(motion)) {
        assertThat(v).isCloseTo(0, offset(1e-9));
      }
    }
    assertThat(new SingularValueDecomposition(open).getRank()).isEqualTo(blocks.open().size());
  }

  @Test
  void tiesTooManyAndDeadPointsAreLeftToTheWholeFactor() {
    Problem.Builder extra = Problem.builder();
    int x = extra.variable("x", 3);
    int y = extra.variable("y", 4);
    extra.tie("x", Relations.fix(Quantity.variable(x), 3));
    extra.tie("y", Relations.fix(Quantity.variable(y), 4));
    extra.tie("five", Relations.distance(Pt.at(0, 0), Pt.variables(x, y), 5));
    Problem.Builder dead = Problem.builder();
    Pt knee = dead.pin("knee", 100, 0);
    dead.tie("thigh", Relations.distance(Pt.at(0, 0), knee, 100));
    dead.tie("shank", Relations.distance(knee, Pt.at(200, 0), 100));
    Problem.Builder near = Problem.builder();
    Pt toggle = near.pin("toggle", 100, 1e-5);
    near.tie("thigh", Relations.distance(Pt.at(0, 0), toggle, 100));
    near.tie("shank", Relations.distance(toggle, Pt.at(200, 0), 100));
    for (Problem problem : List.of(extra.build(), dead.build(), near.build())) {
      assertThat(new BlockRank(system(problem), problem, TOLERANCE).isRegular()).isFalse();
    }
  }

  @Test
  void diagnosisOfALargeFrameIsThatOfItsWholeFactor() {
    Problem problem = frame(new SplittableRandom(77), 30);
    SolveReport report = Solver.solve(problem);
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    GroupSystem system = system(problem.withStart(report.x()));
    assertThat(system.n).isGreaterThan(Diagnoser.BLOCKS_FROM);
    RankFactor whole = new RankFactor(system.rows, system.n, TOLERANCE);
    Diagnosis d = Solver.diagnose(problem, report, SolverSettings.DEFAULT);
    assertThat(d.rank()).isEqualTo(whole.rank()).isEqualTo(system.ties);
    assertThat(d.degreesOfFreedom()).isEqualTo(system.n - whole.rank());
    assertThat(d.freedoms()).hasSize(d.degreesOfFreedom()).allMatch(Freedom::lasting);
    assertThat(d.redundant()).isEmpty();
    double largest = 0;
    java.util.Set<String> weak = new java.util.HashSet<>();
    double[] gains = whole.gains();
    for (int i = 0; i < gains.length; i++) {
      double gain = gains[i] * system.rows.weight[i];
      largest = Math.max(largest, gain);
      if (gain > SolverSettings.DEFAULT.nearSingularGain()) {
        weak.add(problem.ties().get(system.group.tieRows()[i][0]).name());
      }
    }
    assertThat(d.largestGain()).isCloseTo(largest, offset(1e-6 * largest));
    assertThat(d.nearSingular()).containsExactlyInAnyOrderElementsOf(weak);
    // A strut shows as a motion of itself or of the few it is linked with, not of the frame.
    for (Freedom freedom : d.freedoms()) {
      assertThat(freedom.moves().keySet()).allMatch(name -> name.startsWith("strut"));
    }
  }
}
