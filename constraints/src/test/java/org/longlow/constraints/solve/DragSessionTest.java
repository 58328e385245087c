package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.relation.Circles;
import org.longlow.constraints.solve.relation.Relations;

/**
 * What a pointer weighs, how far a pin follows at once, and what a drag along costly limits asks.
 */
class DragSessionTest {

  private static final SolverSettings SETTINGS = SolverSettings.DEFAULT;

  /** A relation that takes long, and how often it was asked. */
  private static final class Costly implements Relation {
    private final Relation relation;
    private int asked;

    Costly(Relation relation) {
      this.relation = relation;
    }

    @Override
    public int[] variables() {
      return relation.variables();
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      asked++;
      return relation.evaluate(x, gradient);
    }

    @Override
    public boolean costly() {
      return true;
    }
  }

  private static void refused(Runnable call, String... words) {
    assertThatThrownBy(call::run)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(words);
  }

  @Test
  void callsThatCannotBeMeantAreRefused() {
    Problem.Builder b = Problem.builder();
    b.pin("p", 1, 2);
    Problem problem = b.build();
    double[] x = problem.start();
    refused(() -> Solver.drag(problem, x, SETTINGS), "at least one variable");
    refused(() -> Solver.drag(problem, new double[3], SETTINGS, 0), "3 values", "2 variables");
    refused(() -> Solver.drag(problem, x, SETTINGS, -1), "no variable -1", "0 to 1");
    refused(() -> Solver.drag(problem, x, SETTINGS, 0, 2), "no variable 2", "0 to 1");
    DragSession drag = Solver.drag(problem, x, SETTINGS, 1);
    refused(() -> drag.moveTo(1, 2), "give 1 target", "got 2");
    refused(() -> drag.moveTo(Double.NaN), "finite, got NaN");
    // what was refused changed nothing, and one variable goes alone
    assertThat(drag.moveTo(7).x()).containsExactly(new double[] {1, 7}, offset(1e-9));
  }

  /** Where wishes pull at 0 the pointer at 100 counts ten thousand times the heaviest of them. */
  @ParameterizedTest
  @CsvSource({"3, 1", "1, 5", "2, 2"})
  void thePointerOutweighsWishes(double along, double across) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 0, 0);
    b.wish("x", along, Relations.fix(p.x(), 0));
    b.wish("z", across, Relations.fix(p.z(), 0));
    DragSession drag = Solver.drag(b.build(), new double[2], SETTINGS, 0, 1);
    double pointer = 1e4 * Math.max(along, across);
    assertThat(drag.moveTo(100, -100).x())
        .containsExactly(
            new double[] {100 * pointer / (pointer + along), -100 * pointer / (pointer + across)},
            offset(1e-5));
  }

  /** Without wishes the pointer is met, also by what costs three times as much to move. */
  @Test
  void aPointerAloneIsMet() {
    Problem.Builder b = Problem.builder();
    int x = b.variable(new Problem.Variable("x", 0, 0, 1 / 3.0, false));
    int z = b.variable("z", 0);
    DragSession drag = Solver.drag(b.build(), new double[2], SETTINGS, x, z);
    assertThat(drag.moveTo(40, 30).x()).containsExactly(new double[] {40, 30}, offset(1e-6));
    assertThat(drag.moveTo(-400, 3).x()).containsExactly(new double[] {-400, 3}, offset(1e-6));
  }

  /** A slide along x with a wall at 60, ordinary or costly. */
  private static Problem walled(Relation wall) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 0, 0);
    Pt q = b.pin("q", 30, 40);
    b.tie("rod", Relations.distance(p, q, 50));
    b.tie("level", Relations.fix(p.z(), 0));
    b.limit("wall", wall);
    return b.build();
  }

  private static Relation wall() {
    return Relations.equal(Quantity.of(60), Quantity.variable(0));
  }

  @ParameterizedTest
  @CsvSource({"false, 0.5", "false, 7", "false, 90", "true, 0.5", "true, 7", "true, 90"})
  void aPinSlidesToTheWallAndComesBack(boolean costly, double step) {
    Costly counted = new Costly(wall());
    Problem problem = walled(costly ? counted : wall());
    DragSession drag = Solver.drag(problem, problem.start(), SETTINGS, 0);
    double to = 57;
    drag.moveTo(to);
    int moves = 0;
    counted.asked = 0;
    for (; to < 64; to += step, moves++) {
      SolveReport report = drag.moveTo(to);
      assertThat(report.status().holds()).isTrue();
      assertThat(report.x()[0]).isCloseTo(Math.min(to, 60), offset(1e-5));
      assertThat(Math.hypot(report.x()[2] - report.x()[0], report.x()[3]))
          .isCloseTo(50, offset(1e-6));
      assertThat(report.activeLimits()).hasSize(to >= 60 ? 1 : 0);
    }
    // few looks for each piece of the way
    assertThat(counted.asked).isLessThanOrEqualTo(moves * 24);
    assertThat(drag.moveTo(20).x()[0]).isCloseTo(20, offset(1e-5));
    assertThat(drag.moveTo(-90).x()[0]).isCloseTo(-90, offset(1e-5));
  }

  /**
   * A pointer far beyond a costly wall, from afar: the pin ends at the wall, in few looks for each
   * of 16 pieces.
   */
  @ParameterizedTest
  @ValueSource(doubles = {61, 130, 4000})
  void aFarPointerIsFollowedToTheWall(double to) {
    Costly counted = new Costly(wall());
    Problem problem = walled(counted);
    DragSession drag = Solver.drag(problem, problem.start(), SETTINGS, 0);
    counted.asked = 0;
    SolveReport report = drag.moveTo(to);
    assertThat(report.status().holds()).isTrue();
    assertThat(report.x()[0]).isCloseTo(60, offset(1e-5));
    assertThat(counted.asked).isLessThanOrEqualTo(16 * 100);
  }

  /**
   * Behind a ring that keeps the pin out, from 50 to 150 of the origin, lies room again. In small
   * steps and in leaps of 300 the pin never comes to the inside, where it would be nearer.
   */
  @ParameterizedTest
  @ValueSource(doubles = {2, 15, 300})
  void aPinDoesNotLeapIntoWhatIsShut(double step) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 200, 0);
    Quantity r2 =
        Quantity.formula(
            new int[] {0, 1},
            (v, g) -> {
              double r = Math.max(1e-9, Math.hypot(v[0], v[1]));
              double s = r > 100 ? 1 : -1;
              if (g != null) {
                g[0] = s * v[0] / r;
                g[1] = s * v[1] / r;
              }
              return s * (r - 100) - 50;
            });
    b.limit("ring", Relations.equal(r2, Quantity.of(0)));
    Problem problem = b.build();
    DragSession drag = Solver.drag(problem, problem.start(), SETTINGS, 0, 1);
    SolveReport report = null;
    for (double to = 200; to > -step; to -= step) {
      report = drag.moveTo(Math.max(0, to), 0);
      assertThat(report.status().holds()).isTrue();
      assertThat(Math.hypot(report.x()[0], report.x()[1])).isGreaterThan(150 - 1e-6);
    }
    assertThat(report.x()[0]).isCloseTo(150, offset(1e-3));
    // and is led out again
    assertThat(drag.moveTo(210, 30).x()).containsExactly(new double[] {210, 30}, offset(1e-4));
  }

  /**
   * Past the middle of a disc of 50 mm, a millimetre over it, the nearest place leaps by 98 mm from
   * one side to the other while the pointer goes 10. The pin goes round in small ways instead, and
   * on with the next steps until it is there.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aPinIsNotThrownRoundADisc(boolean costly) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 0, 1);
    Relation clear = Circles.tangentOutside(p, Quantity.of(0), Pt.at(100, 0), Quantity.of(50));
    b.limit("clear", costly ? new Costly(clear) : clear);
    DragSession drag = Solver.drag(b.build(), new double[] {0, 1}, SETTINGS, 0, 1);
    double[] at = {0, 1};
    double most = 0;
    for (double to = 5; to <= 195; to += 10) {
      SolveReport report = drag.moveTo(to, 1);
      assertThat(report.status().holds()).isTrue();
      double[] x = report.x();
      assertThat(Math.hypot(x[0] - 100, x[1])).isGreaterThan(50 - 1e-6);
      if (to < 145) {
        most = Math.max(most, Math.hypot(x[0] - at[0], x[1] - at[1]));
      }
      at = x.clone();
    }
    assertThat(most).isLessThan(85);
    SolveReport last = null;
    for (int k = 0; k < 20; k++) {
      last = drag.moveTo(195, 1);
    }
    assertThat(last.x()).containsExactly(new double[] {195, 1}, offset(1e-4));
  }
}
