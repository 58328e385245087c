package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.relation.Relations;

/** One group solved whole: how many steps that takes where it can be told, and how it ends. */
class GroupSolverTest {

  private static final SolverSettings SETTINGS = SolverSettings.DEFAULT;

  private final Problem.Builder builder = Problem.builder();
  private Problem problem;
  private GroupSolver solver;
  private double[] x;

  private void made() {
    problem = builder.build();
    solver = new GroupSolver(new GroupSystem(Group.split(problem).get(0), problem), problem);
    x = problem.start();
  }

  private SolveStatus solve() {
    return solver.solve(x, problem.anchor(), SETTINGS);
  }

  /** Where all is linear the first step arrives and the second finds nothing left to do. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void whatIsLinearTakesOneStepAndALook(boolean wished) {
    builder.pin("p", 3, 4);
    builder.tie("sum", new Row(new double[] {0.6, 0.8}, 50, false));
    if (wished) {
      builder.wish("x", 2, new Row(new double[] {1, 0}, -7, false));
    }
    made();
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    // from (3, 4), which is at 5, along the row; or at x = -7 on it
    double[] nearest = wished ? new double[] {-7, (50 + 4.2) / 0.8} : new double[] {30, 40};
    assertThat(x).containsExactly(nearest, within(1e-8));
    assertThat(solver.iterations()).isEqualTo(2);
    assertThat(solver.wasShaken()).isFalse();
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    assertThat(x).containsExactly(nearest, within(1e-8));
  }

  /**
   * A limit that the first step would break is slid along from the first. What is wished beyond it
   * is asked for again and again, eight times with a look at each.
   */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void aLimitIsMetAtOnce(boolean wished) {
    builder.pin("p", 3, 4);
    builder.tie("sum", new Row(new double[] {0.6, 0.8}, 50, false));
    builder.limit("low", new Row(new double[] {0, -1}, -25, false));
    if (wished) {
      builder.wish("x", 2, new Row(new double[] {1, 0}, -7, false));
    }
    made();
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    assertThat(x).containsExactly(new double[] {50, 25}, within(1e-6));
    assertThat(solver.iterations()).isLessThanOrEqualTo(wished ? 24 : 3);
  }

  /** On a circle few steps are enough wherever the anchor is; from inside near the middle too. */
  @ParameterizedTest
  @CsvSource({"130, 0, 4", "90, 30, 6", "300, 400, 4", "20, 5, 12"})
  void aCircleTakesFewSteps(double fromX, double fromZ, int most) {
    Pt p = builder.pin("p", fromX, fromZ);
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    made();
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    double r = Math.hypot(fromX, fromZ) / 100;
    assertThat(x).containsExactly(new double[] {fromX / r, fromZ / r}, within(1e-6));
    assertThat(solver.iterations()).isLessThanOrEqualTo(most);
  }

  /** On a circle x = 60 is wished: met from near by in the few steps that Newton's rule takes. */
  @ParameterizedTest
  @CsvSource({"61, 80", "70, 71", "40, -95"})
  void aWishOnACircleTakesFewSteps(double fromX, double fromZ) {
    Pt p = builder.pin("p", fromX, fromZ);
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    builder.wish("x", 1, Relations.fix(p.x(), 60));
    made();
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    assertThat(x).containsExactly(new double[] {60, Math.signum(fromZ) * 80}, within(1e-6));
    assertThat(solver.iterations()).isLessThanOrEqualTo(7);
  }

  /** What must do with quick steps says so where they do not lead, and leaves no half way. */
  @Test
  void aHastySearchGivesUpWhereItBegan() {
    Pt p = builder.pin("p", -100, 0);
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    builder.limit("right", Relations.fix(p.x(), 50));
    made();
    solver.setHasty(true);
    assertThat(solve()).isEqualTo(SolveStatus.NOT_DECIDED);
    assertThat(x).containsExactly(-100, 0);
    int hasty = solver.iterations();
    assertThat(hasty).isLessThanOrEqualTo(16);
    solver.setHasty(false);
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    assertThat(solver.iterations()).isGreaterThan(hasty);
    assertThat(solver.wasShaken()).isTrue();
    assertThat(x[0]).isGreaterThan(50 - 1e-6);
  }

  /** Asked only whether it can hold, it goes the shortest way to where it does. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void whereItHoldsIsEnough(boolean hasty) {
    Pt p = builder.pin("p", 30, 40);
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    builder.wish("x", 1, Relations.fix(p.x(), 0));
    made();
    solver.holdAnywhere();
    solver.setHasty(hasty);
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    assertThat(x).containsExactly(new double[] {60, 80}, within(1e-6));
    assertThat(solver.iterations()).isEqualTo(1);
  }

  /** A place that cannot be is told as a contradiction, and left at its least. */
  @Test
  void whatCannotHoldContradicts() {
    Pt p = builder.pin("p", 20, 70);
    builder.tie("left", Relations.distance(Pt.at(0, 0), p, 60));
    builder.tie("right", Relations.distance(p, Pt.at(100, 0), 30));
    made();
    assertThat(solve()).isEqualTo(SolveStatus.CONTRADICTS);
    assertThat(x[0]).isCloseTo(65, within(1e-2));
    assertThat(solver.wasShaken()).isFalse();
  }

  /** No step of a knee turns it over unless it must; then the bend at the beginning is told. */
  @ParameterizedTest
  @CsvSource({"-10, false", "20, true"})
  void aKneeKeepsItsSideWhereItCan(double below, boolean keeps) {
    Pt knee = builder.pin("knee", 40, 31);
    Pt foot = builder.pin("foot", 80, 0);
    builder.tie("thigh", Relations.distance(Pt.at(0, 0), knee, 50));
    builder.tie("shank", Relations.distance(knee, foot, 50));
    builder.tie("level", Relations.fix(foot.z(), 0));
    builder.limit("stop", Relations.equal(Quantity.of(98), foot.x()));
    builder.limit("below", Relations.equal(Quantity.of(below), knee.z()));
    made();
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    assertThat(Math.hypot(x[0], x[1])).isCloseTo(50, within(1e-6));
    assertThat(x[1]).isLessThan(below + 1e-6);
    assertThat(x[1] > 0).isEqualTo(keeps);
    // from (40, 31) one way to the hip and one to the foot: sine of the angle between
    double sine = (-40.0 * -31 - -31.0 * 40) / (40 * 40 + 31 * 31);
    assertThat(Math.abs(solver.bendAtBegin()[0])).isCloseTo(Math.abs(sine), within(1e-12));
  }

  // --- costly limits

  /**
   * Costly, a wall that x must be right of: met, or missed by as little as ties and other limits
   * let it be, which then do not give.
   */
  @ParameterizedTest
  @CsvSource({"40, SOLVED, 40", "80, LIMIT_FAILS, 60"})
  void aCostlyLimitFailsAlone(double wall, SolveStatus status, double isX) {
    builder.pin("p", 0, 7);
    builder.tie("z", new Row(new double[] {0, 1}, 7, false));
    builder.limit("to", new Row(new double[] {-1, 0}, -60, false));
    builder.limit("costly", new Row(new double[] {1, 0}, wall, true));
    made();
    assertThat(solve()).isEqualTo(status);
    assertThat(x).containsExactly(new double[] {isX, 7}, within(1e-4));
    assertThat(solver.iterations()).isLessThanOrEqualTo(80);
    // briefly, no long search is made
    if (status == SolveStatus.LIMIT_FAILS) {
      x = problem.start();
      solver.setBrief(true);
      assertThat(solve()).isEqualTo(SolveStatus.NOT_DECIDED);
      assertThat(x).containsExactly(0, 7);
    }
  }

  /** Of two costly walls that cannot both be kept, each is missed by half. */
  @Test
  void costlyLimitsShareWhatIsMissing() {
    builder.pin("p", 3, 7);
    builder.tie("z", new Row(new double[] {0, 1}, 7, false));
    builder.limit("right", new Row(new double[] {1, 0}, 40, true));
    builder.limit("left", new Row(new double[] {-1, 0}, -10, true));
    made();
    assertThat(solve()).isEqualTo(SolveStatus.LIMIT_FAILS);
    assertThat(x).containsExactly(new double[] {25, 7}, within(1e-3));
  }

  /** A costly circle is met with ties that do not contradict; ties that do are told as such. */
  @ParameterizedTest
  @CsvSource({"30, SOLVED", "130, LIMIT_FAILS"})
  void tiesComeBeforeCostlyLimits(double away, SolveStatus status) {
    Pt p = builder.pin("p", 100, 0);
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    builder.limit("costly", new CostlyOf(Relations.equal(p.z(), Quantity.of(away))));
    made();
    assertThat(solve()).isEqualTo(status);
    assertThat(Math.hypot(x[0], x[1])).isCloseTo(100, within(1e-6));
    assertThat(x[1]).isCloseTo(Math.min(away, 100), within(0.2));
  }

  private record CostlyOf(Relation relation) implements Relation {
    @Override
    public int[] variables() {
      return relation.variables();
    }

    @Override
    public double evaluate(double[] v, double[] gradient) {
      return relation.evaluate(v, gradient);
    }

    @Override
    public boolean costly() {
      return true;
    }
  }

  // --- bounds

  /**
   * What a tie is aimed at: a hundredth of its tolerance, or what rounding leaves of its values.
   */
  @ParameterizedTest
  @CsvSource({"1, 1e-9", "1e4, 1e-9", "1e9, 1e-6", "1e7, 1.1920928955078125e-7"})
  void theAimGrowsWithTheValues(double largest, double aim) {
    // the values between 2^23 and 2^24 are 2^-29 apart, 64 times that is 2^-23
    assertThat(GroupSolver.aimMm(SETTINGS, largest)).isCloseTo(aim, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"1, 1e-7", "1e4, 1e-7", "1e5, 1e-6", "3e6, 3e-5"})
  void nearnessGrowsWithTheValues(double largest, double near) {
    assertThat(GroupSolver.nearnessMm(SETTINGS, largest)).isCloseTo(near, within(near * 1e-9));
  }

  @Test
  void searchesEndWhenTheWorkIsSpent() {
    Pt p = builder.pin("p", -100, 0);
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    builder.limit("right", Relations.fix(p.x(), 150));
    made();
    Work all = Work.unbounded();
    solver.system().charge(all);
    assertThat(solve()).isEqualTo(SolveStatus.LIMIT_FAILS);
    for (double share : new double[] {0.01, 0.2, 0.6}) {
      x = problem.start();
      Work some = new Work((long) (share * all.done()));
      solver.system().charge(some);
      assertThat(solve()).isEqualTo(SolveStatus.NOT_DECIDED);
      assertThat(some.isSpent()).isTrue();
      assertThat(some.done()).isLessThan((long) ((share + 0.3) * all.done()));
    }
  }

  /**
   * Work that ends on the way along a circle leaves a place on it, roughly solved; where it ends
   * before that, nothing is decided.
   */
  @Test
  void whatHoldsWhenTheWorkIsSpentIsKept() {
    Pt p = builder.pin("p", 3, 4);
    builder.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    builder.wish("far", 1, Relations.fix(p.x(), -250));
    for (int i = 0; i < 8; i++) {
      builder.wish("up " + i, 0.1, Relations.fix(p.z(), 3 * i));
    }
    made();
    Work all = Work.unbounded();
    solver.system().charge(all);
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    // outside the circle, the wishes' own place is at (-250, 10.5): weights 1 and 0.8
    double best = Double.POSITIVE_INFINITY;
    double bestX = 0;
    for (double a = 0; a < 2 * Math.PI; a += 1e-5) {
      double dx = 100 * Math.cos(a) + 250;
      double dz = 100 * Math.sin(a) - 10.5;
      if (dx * dx + 0.8 * dz * dz < best) {
        best = dx * dx + 0.8 * dz * dz;
        bestX = a;
      }
    }
    assertThat(x[0]).isCloseTo(100 * Math.cos(bestX), within(2e-3));
    assertThat(x[1]).isCloseTo(100 * Math.sin(bestX), within(2e-3));
    int roughly = 0;
    for (long allowed = 1; allowed < all.done(); allowed += 1 + all.done() / 100) {
      x = problem.start();
      solver.system().charge(new Work(allowed));
      SolveStatus status = solve();
      if (status.holds()) {
        assertThat(Math.hypot(x[0], x[1])).isCloseTo(100, within(1e-6));
        roughly += status == SolveStatus.SOLVED_ROUGHLY ? 1 : 0;
      } else {
        assertThat(status).isEqualTo(SolveStatus.NOT_DECIDED);
      }
    }
    assertThat(roughly).isPositive();
  }

  /**
   * Many wishes for w, and x + y + w = 10: w = 4 comes first, and of the rest x and y move as
   * little as they can from 2 and 6, y three times as cheaply: by 0.2 and 1.8.
   */
  @Test
  void scalesCountBesideManyWishes() {
    builder.variable("x", 2);
    builder.variable(new Problem.Variable("y", 6, 6, 3, false));
    builder.variable("w", 0);
    builder.tie("sum", new Row(new double[] {1, 1, 1}, 10, false));
    for (int i = 0; i < 12; i++) {
      builder.wish("w" + i, 1, new Row(new double[] {0, 0, 1}, 4, false));
    }
    made();
    assertThat(solve()).isEqualTo(SolveStatus.SOLVED);
    assertThat(x).containsExactly(new double[] {1.8, 4.2, 4}, within(1e-5));
  }
}
