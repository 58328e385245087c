package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.relation.Relations;

/**
 * What is reported as contradictory: that it cannot hold, that without any one member the rest can,
 * and by how much it fails. The judge of straight demands is a linear program solved by Hipparchus'
 * simplex method; that of distances is the triangle inequality and the solver asked anew.
 */
class ConflictTest {

  private static final int PINS = 7;

  /** x[b] - x[a] is at least, or is exactly, a length. */
  private record Step(String name, int a, int b, double mm, boolean exact) {}

  static List<Long> seeds() {
    return LongStream.rangeClosed(1, 60).boxed().toList();
  }

  /** Pins on a line about 100 mm apart, and demands some of which ask for more than there is. */
  private static List<Step> steps(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Step> steps = new ArrayList<>();
    int count = random.nextInt(10, 22);
    for (int i = 0; i < count; i++) {
      int a = random.nextInt(PINS);
      int b = (a + random.nextInt(1, PINS)) % PINS;
      boolean exact = random.nextInt(4) == 0;
      double now = 100 * (b - a);
      steps.add(new Step("s" + i, a, b, now + random.nextDouble(-90, 35), exact));
    }
    return steps;
  }

  private static Problem problem(List<Step> steps) {
    Problem.Builder builder = Problem.builder();
    List<Pt> pins = new ArrayList<>();
    pins.add(StillPin.in(builder, "p0", 0, 0));
    for (int i = 1; i < PINS; i++) {
      pins.add(builder.pin("p" + i, 100 * i, 10 * i));
    }
    for (Step s : steps) {
      Relation over = Relations.horizontal(pins.get(s.a), pins.get(s.b), Quantity.of(s.mm));
      if (s.exact) {
        builder.tie(s.name, over);
      } else {
        builder.limit(s.name, over);
      }
    }
    return builder.build();
  }

  /** The least by which {@code spared} is missed while the others hold; NaN if they cannot. */
  private static double leastMissMm(List<Step> steps, Step spared) {
    // unknowns: x of each pin, how far the spared one is below, how far above
    int n = PINS + 2;
    List<LinearConstraint> rows = new ArrayList<>();
    double[] first = new double[n];
    first[0] = 1;
    rows.add(new LinearConstraint(first, Relationship.EQ, 0));
    for (Step s : steps) {
      double[] row = new double[n];
      row[s.b] += 1;
      row[s.a] -= 1;
      if (s == spared) {
        row[PINS] = 1;
        row[PINS + 1] = s.exact ? -1 : 0;
      }
      rows.add(new LinearConstraint(row, s.exact ? Relationship.EQ : Relationship.GEQ, s.mm));
    }
    for (int k = 0; k < 2; k++) {
      double[] row = new double[n];
      row[PINS + k] = 1;
      rows.add(new LinearConstraint(row, Relationship.GEQ, 0));
    }
    double[] cost = new double[n];
    cost[PINS] = 1;
    cost[PINS + 1] = 1;
    try {
      return new SimplexSolver()
          .optimize(
              new LinearObjectiveFunction(cost, 0),
              new LinearConstraintSet(rows),
              GoalType.MINIMIZE,
              new NonNegativeConstraint(false))
          .getValue();
    } catch (MathIllegalStateException e) {
      return Double.NaN;
    }
  }

  private static boolean canHold(List<Step> steps) {
    return !Double.isNaN(leastMissMm(steps, null));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aConflictCannotHoldAndWithoutAnyMemberItCan(long seed) {
    List<Step> steps = steps(seed);
    Problem problem = problem(steps);
    SolveReport report = Solver.solveAndDiagnose(problem, SolverSettings.DEFAULT);
    assertThat(report.status().holds()).isEqualTo(canHold(steps));
    if (report.status().holds()) {
      assertThat(report.diagnosis().orElseThrow().conflict()).isEmpty();
      return;
    }
    Conflict conflict = report.diagnosis().orElseThrow().conflict().orElseThrow();
    List<Step> set = steps.stream().filter(s -> conflict.names().contains(s.name)).toList();
    assertThat(set).hasSameSizeAs(conflict.names());
    assertThat(canHold(set)).as("%s", conflict).isFalse();
    for (Step left : set) {
      assertThat(canHold(set.stream().filter(s -> s != left).toList())).as(left.name).isTrue();
    }
    Step missed =
        set.stream().filter(s -> s.name.equals(conflict.missed())).findFirst().orElseThrow();
    assertThat(conflict.missMm()).isPositive().isCloseTo(leastMissMm(set, missed), within(1e-4));
  }

  @Test
  void mostOfTheseSeedsAreOverConstrained() {
    assertThat(seeds().stream().filter(s -> !canHold(steps(s))).count()).isBetween(30L, 55L);
  }

  /**
   * Bars between fixed ends that are too far apart, among others that have nothing to do with it.
   */
  @ParameterizedTest(name = "{0} bars")
  @ValueSource(ints = {2, 5, 20})
  void barsTooShortForTheirEndsAreAllToBlameAndNothingElse(int bars) {
    for (boolean asLimits : new boolean[] {false, true}) {
      SplittableRandom random = new SplittableRandom(bars);
      Problem.Builder builder = Problem.builder();
      double reach = 0;
      Pt last = StillPin.in(builder, "p0", 0, 0);
      List<String> names = new ArrayList<>();
      for (int i = 1; i <= bars; i++) {
        boolean end = i == bars;
        double mm = random.nextDouble(80, 99);
        reach += mm;
        Pt next =
            end
                ? StillPin.in(builder, "p" + i, 100 * i, 0)
                : builder.pin("p" + i, 100 * i, random.nextDouble(-20, 20));
        Relation length = Relations.distance(last, next, mm);
        names.add("bar" + i);
        if (asLimits) {
          builder.limit("bar" + i, Relations.negative(length));
        } else {
          builder.tie("bar" + i, length);
        }
        if (!end) {
          builder.limit("low" + i, Relations.vertical(Pt.at(0, -300), next, Quantity.of(0)));
          builder.limit("high" + i, Relations.vertical(next, Pt.at(0, 300), Quantity.of(0)));
        }
        last = next;
      }
      SolveReport report = Solver.solveAndDiagnose(builder.build(), SolverSettings.DEFAULT);
      Conflict conflict = report.diagnosis().orElseThrow().conflict().orElseThrow();
      assertThat(conflict.names()).containsExactlyInAnyOrderElementsOf(names);
      assertThat(conflict.missMm()).isCloseTo(100 * bars - reach, within(1e-3));
    }
  }
}
