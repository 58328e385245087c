package org.longlow.constraints.solve.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.StillPin;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.relation.Relations;
import org.longlow.constraints.solve.step.Restoration.End;

/** Steps onto ties and limits, counted, against Newton's rule worked out for one variable. */
class RestorationTest {

  private static final double AIM = 1e-9;

  /** A function of the one variable there is, with its slope. */
  private record Curve(DoubleUnaryOperator f, DoubleUnaryOperator slope) implements Relation {
    @Override
    public int[] variables() {
      return new int[] {0};
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      if (gradient != null) {
        gradient[0] = slope.applyAsDouble(x[0]);
      }
      return f.applyAsDouble(x[0]);
    }
  }

  private static Curve square(double a) {
    return new Curve(x -> x * x - a, x -> 2 * x);
  }

  private static Curve line(double at) {
    return new Curve(x -> x - at, x -> 1);
  }

  private static GroupSystem system(List<Relation> ties, List<Relation> limits) {
    Problem.Builder b = Problem.builder();
    b.variable("x", 0);
    for (int i = 0; i < ties.size(); i++) {
      b.tie("t" + i, ties.get(i));
    }
    for (int i = 0; i < limits.size(); i++) {
      b.limit("l" + i, limits.get(i));
    }
    Problem problem = b.build();
    return new GroupSystem(Group.split(problem).get(0), problem);
  }

  private static Restoration of(Relation... ties) {
    return new Restoration(system(List.of(ties), List.of()), true);
  }

  /** Heron's rule for a root: each step halves x + a / x. */
  @ParameterizedTest
  @CsvSource({"3, 4", "100, 4", "1.5, 2", "-7, 9", "1e4, 1e6"})
  void smoothTiesAreMetByNewtonsSteps(double from, double a) {
    int wanted = 0;
    double x = from;
    while (Math.abs((x * x - a) / (2 * x)) > AIM) {
      x = (x + a / x) / 2;
      wanted++;
    }
    for (boolean reweighs : new boolean[] {true, false}) {
      GroupSystem system = system(List.of(square(a)), List.of());
      Restoration restoration = new Restoration(system, reweighs);
      double[] at = {from};
      assertThat(restoration.run(at, AIM, 200, false, false)).isEqualTo(End.HOLDS);
      assertThat(at[0]).isCloseTo(Math.signum(from) * Math.sqrt(a), within(2 * AIM));
      assertThat(restoration.steps()).isEqualTo(wanted);
      // as many as it takes are enough, and one less is not
      at[0] = from;
      assertThat(restoration.run(at, AIM, wanted, true, true)).isEqualTo(End.HOLDS);
      at[0] = from;
      assertThat(restoration.run(at, AIM, wanted - 1, false, false)).isEqualTo(End.RAN_OUT);
      assertThat(restoration.steps()).isEqualTo(wanted - 1);
      assertThat(restoration.wasHeldBack()).isFalse();
    }
  }

  /**
   * From 3 Newton's rule for atan would go to -9.5, and half of that way to -3.2, no better; a
   * quarter leads to -0.122. From there, by x - (1 + x²) atan x, about -2/3 x³: 1.2e-3, then 1e-9.
   */
  @Test
  void aStepThatLeadsTooFarIsHalvedUntilItPays() {
    Restoration restoration = of(new Curve(Math::atan, x -> 1 / (1 + x * x)));
    double[] x = {3};
    assertThat(restoration.run(x, 1e-8, 200, false, false)).isEqualTo(End.HOLDS);
    assertThat(x[0]).isCloseTo(0, within(1e-8));
    assertThat(restoration.steps()).isEqualTo(3);
  }

  /** The root of x is 1; from 9 Newton's step leads to -3, where there is no root to be had. */
  @Test
  void aStepToWhereThereIsNoNumberIsHalved() {
    Restoration restoration = of(new Curve(x -> Math.sqrt(x) - 1, x -> 0.5 / Math.sqrt(x)));
    double[] x = {9};
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.HOLDS);
    assertThat(x[0]).isCloseTo(1, within(1e-8));
    assertThat(restoration.steps()).isLessThanOrEqualTo(8);
    x[0] = -3;
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.STUCK);
    assertThat(restoration.steps()).isZero();
  }

  /** At 0 and at 10 at once: one step leads to the middle, and from there no way is better. */
  @Test
  void whatContradictsIsGivenUpWhereNothingHelps() {
    Restoration restoration = of(line(0), line(10));
    double[] x = {-70};
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.STUCK);
    assertThat(x[0]).isCloseTo(5, within(1e-6));
    assertThat(restoration.steps()).isLessThanOrEqualTo(2);
  }

  /** x² + 1 has no root: its least is at 0. */
  @Test
  void aCurveThatDoesNotReachZeroIsLeftAtItsLeast() {
    Restoration restoration = of(square(-1));
    double[] x = {3};
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.STUCK);
    assertThat(x[0]).isCloseTo(0, within(1e-3));
    assertThat(restoration.steps()).isLessThanOrEqualTo(60);
  }

  /** A tie is met by three hundred-thousandths: enough for one aim and not for the next. */
  @ParameterizedTest
  @CsvSource({"3.1e-5, 0", "2.9e-5, 1"})
  void whatHoldsIsLeftAlone(double aim, int steps) {
    Restoration restoration = of(line(0));
    for (double side : new double[] {1, -1}) {
      double[] x = {side * 3e-5};
      assertThat(restoration.run(x, aim, 200, false, false)).isEqualTo(End.HOLDS);
      assertThat(restoration.steps()).isEqualTo(steps);
      assertThat(x[0]).isCloseTo(steps == 0 ? side * 3e-5 : 0, within(1e-12));
    }
  }

  @ParameterizedTest
  @CsvSource({"3.1e-5, 0", "2.9e-5, 1"})
  void aLimitCountsWhereItIsAskedFor(double aim, int steps) {
    GroupSystem system = system(List.of(), List.of(line(10)));
    Restoration restoration = new Restoration(system, false);
    double[] x = {10 - 3e-5};
    assertThat(restoration.run(x, aim, 200, true, false)).isEqualTo(End.HOLDS);
    assertThat(restoration.steps()).isEqualTo(steps);
    x[0] = 3;
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.HOLDS);
    assertThat(x[0]).isEqualTo(3);
    assertThat(restoration.run(x, AIM, 200, true, false)).isEqualTo(End.HOLDS);
    assertThat(restoration.steps()).isEqualTo(1);
    assertThat(x[0]).isCloseTo(10, within(AIM));
    x[0] = 40;
    assertThat(restoration.run(x, AIM, 200, true, false)).isEqualTo(End.HOLDS);
    assertThat(x[0]).isEqualTo(40);
  }

  /** A tie at 3 and a limit from 10: both give half of what is between them. */
  @Test
  void aTieAndALimitThatContradictMeetHalfway() {
    GroupSystem system = system(List.of(line(3)), List.of(line(10)));
    Restoration restoration = new Restoration(system, false);
    double[] x = {-20};
    assertThat(restoration.run(x, AIM, 200, true, false)).isNotEqualTo(End.HOLDS);
    assertThat(x[0]).isCloseTo(6.5, within(1e-4));
    // without the limit the tie has its way
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.HOLDS);
    assertThat(x[0]).isCloseTo(3, within(AIM));
  }

  /** A limit that curves: x² is to be 4 at least. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.3, -1.9})
  void aCurvedLimitIsMetFromBelow(double from) {
    GroupSystem system = system(List.of(), List.of(square(4)));
    Restoration restoration = new Restoration(system, false);
    double[] x = {from};
    assertThat(restoration.run(x, AIM, 200, true, false)).isEqualTo(End.HOLDS);
    assertThat(Math.abs(x[0])).isGreaterThan(2 - 2 * AIM);
    // Newton's first step leads past 2, where nothing is asked any more
    assertThat(restoration.steps()).isLessThanOrEqualTo(4);
    assertThat(Math.signum(x[0])).isEqualTo(Math.signum(from));
  }

  @Test
  void tiesThatAreOffTheListDoNotCount() {
    GroupSystem system = system(List.of(line(0), line(10)), List.of());
    Restoration restoration = new Restoration(system, true);
    for (int off = 0; off < 2; off++) {
      system.tieOn[0] = off != 0;
      system.tieOn[1] = off != 1;
      double[] x = {-70};
      assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.HOLDS);
      assertThat(x[0]).isCloseTo(off == 0 ? 10 : 0, within(AIM));
      assertThat(restoration.steps()).isEqualTo(1);
    }
  }

  @Test
  void workThatIsSpentEndsTheSearch() {
    GroupSystem system = system(List.of(square(4)), List.of());
    Work work = new Work(7);
    system.charge(work);
    Restoration restoration = new Restoration(system, true);
    double[] x = {1e9};
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.RAN_OUT);
    assertThat(restoration.steps()).isBetween(1, 7);
    assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.RAN_OUT);
    assertThat(restoration.steps()).isZero();
  }

  /**
   * Two links of 50 and 50 from hip over knee to foot bend to one side; the foot is asked to the
   * other side of the hip, where steps of any length turn the knee over. Under guard none may.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void underGuardNoStepLeapsOverStraight(boolean guarded) {
    Problem.Builder b = Problem.builder();
    Pt knee = b.pin("knee", 45, 9);
    Pt foot = b.pin("foot", 90, 0);
    b.tie("thigh", Relations.distance(StillPin.in(b, "hip", 0, 0), knee, 50));
    b.tie("shank", Relations.distance(knee, foot, 50));
    b.tie("x", Relations.fix(foot.x(), -40));
    b.tie("z", Relations.fix(foot.z(), 20));
    Problem problem = b.build();
    GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
    Restoration restoration = new Restoration(system, true);
    double[] x = problem.start();
    End end = restoration.run(x, AIM, 200, false, guarded);
    assertThat(end).isEqualTo(End.HOLDS);
    assertThat(Math.hypot(x[0], x[1])).isCloseTo(50, within(1e-8));
    double side = x[0] * x[3] - x[1] * x[2];
    assertThat(restoration.wasHeldBack()).isEqualTo(guarded);
    // before it bent upwards: the foot lay to the right of the thigh
    assertThat(side < 0).isEqualTo(guarded);
  }

  // --- known hard curves, beside a reference

  /** Functions of several variables with their slopes, all to be zero. */
  private enum Known {
    /** H. H. Rosenbrock, The Computer Journal 3, 1960. */
    VALLEY(
        new double[] {-1.2, 1},
        v -> new double[] {10 * (v[1] - v[0] * v[0]), 1 - v[0]},
        v -> new double[][] {{-20 * v[0], 10}, {-1, 0}}),
    /** F. Freudenstein and B. Roth, Journal of the ACM 10, 1963, from near its root. */
    TWO_HOLLOWS(
        new double[] {6, 5},
        v ->
            new double[] {
              -13 + v[0] + ((5 - v[1]) * v[1] - 2) * v[1],
              -29 + v[0] + ((v[1] + 1) * v[1] - 14) * v[1]
            },
        v ->
            new double[][] {
              {1, (10 - 3 * v[1]) * v[1] - 2}, {1, (3 * v[1] + 2) * v[1] - 14},
            }),
    /** Two circles and a cubic that meet in one point. */
    CURVES(
        new double[] {9, 7},
        v ->
            new double[] {
              v[0] * v[0] + v[1] * v[1] - 25,
              (v[0] - 6) * (v[0] - 6) + v[1] * v[1] - 25,
              v[0] * v[0] * v[0] / 27 - 4 + v[1] - 1
            },
        v ->
            new double[][] {{2 * v[0], 2 * v[1]}, {2 * v[0] - 12, 2 * v[1]}, {v[0] * v[0] / 9, 1}});

    private final double[] start;
    private final Function<double[], double[]> values;
    private final Function<double[], double[][]> slopes;

    Known(
        double[] start,
        Function<double[], double[]> values,
        Function<double[], double[][]> slopes) {
      this.start = start;
      this.values = values;
      this.slopes = slopes;
    }

    Relation row(int i) {
      int n = start.length;
      return new Relation() {
        @Override
        public int[] variables() {
          return IntStream.range(0, n).toArray();
        }

        @Override
        public double evaluate(double[] x, double[] gradient) {
          if (gradient != null) {
            System.arraycopy(slopes.apply(x)[i], 0, gradient, 0, n);
          }
          return values.apply(x)[i];
        }
      };
    }

    /** How many points the reference looks at to bring all to zero. */
    int looksOfTheReference() {
      return new LevenbergMarquardtOptimizer()
          .optimize(
              new LeastSquaresBuilder()
                  .start(start)
                  .target(new double[values.apply(start).length])
                  .model(values::apply, slopes::apply)
                  .maxEvaluations(1000)
                  .maxIterations(1000)
                  .build())
          .getEvaluations();
    }
  }

  @ParameterizedTest
  @EnumSource(Known.class)
  void hardCurvesTakeNoMoreStepsThanTheReferenceLooks(Known known) {
    for (boolean reweighs : new boolean[] {true, false}) {
      Problem.Builder b = Problem.builder();
      for (int i = 0; i < known.start.length; i++) {
        b.variable("v" + i, known.start[i]);
      }
      for (int i = 0; i < known.values.apply(known.start).length; i++) {
        b.tie("t" + i, known.row(i));
      }
      Problem problem = b.build();
      GroupSystem system = new GroupSystem(Group.split(problem).get(0), problem);
      Restoration restoration = new Restoration(system, reweighs);
      double[] x = known.start.clone();
      assertThat(restoration.run(x, AIM, 200, false, false)).isEqualTo(End.HOLDS);
      for (double miss : known.values.apply(x)) {
        assertThat(miss).isCloseTo(0, within(1e-6));
      }
      assertThat(restoration.steps()).isLessThanOrEqualTo(known.looksOfTheReference());
    }
  }
}
