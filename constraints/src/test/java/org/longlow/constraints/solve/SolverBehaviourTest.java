package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.constraints.solve.relation.Relations;

/** Promises of the solver: order of rank, least change, invariance, honesty about odd layouts. */
class SolverBehaviourTest {
  private static final double SOLVER_MM = 1e-6;

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  /** A framework with two bars left out, so that "nearest" has something to decide. */
  private static Framework loose(SplittableRandom random, double size) {
    Framework f;
    do {
      f = new Framework(random, 7, size);
    } while (f.quality() < 0.01);
    f.bars.remove(f.bars.size() - 1);
    f.bars.remove(2);
    return f;
  }

  private static Problem problem(
      Framework f, double[] start, double grow, double dx, double dz, double flip) {
    Problem.Builder b = Problem.builder();
    for (int i = 0; i < f.pins(); i++) {
      b.pin("pin " + i, grow * (start[2 * i] + dx), grow * flip * (start[2 * i + 1] + dz));
    }
    for (int[] bar : f.bars) {
      b.tie(
          Framework.name(bar),
          Relations.distance(f.pin(bar[0]), f.pin(bar[1]), grow * f.length(bar)));
    }
    return b.build();
  }

  private static double[] start(Framework f, SplittableRandom random) {
    double[] x = new double[2 * f.pins()];
    for (int i = 0; i < f.pins(); i++) {
      x[2 * i] = f.px[i] + 0.06 * f.size * random.nextDouble(-1, 1);
      x[2 * i + 1] = f.pz[i] + 0.06 * f.size * random.nextDouble(-1, 1);
    }
    return x;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void orderShiftMirrorAndUnitDoNotMatter(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Framework f = loose(random, 1000);
    double[] start = start(f, random);
    double[] plain = Solver.solve(problem(f, start, 1, 0, 0, 1)).x();

    Problem asIs = problem(f, start, 1, 0, 0, 1);
    List<SolverTie> ties = new ArrayList<>(asIs.ties());
    Collections.shuffle(ties, new Random(seed));
    assertThat(Solver.solve(asIs.withTies(ties)).x()).containsExactly(plain, offset(SOLVER_MM));

    double[] shifted = Solver.solve(problem(f, start, 1, 2500, -700, 1)).x();
    double[] mirrored = Solver.solve(problem(f, start, 1, 0, 0, -1)).x();
    double[] inches = Solver.solve(problem(f, start, 1 / 25.4, 0, 0, 1)).x();
    for (int i = 0; i < plain.length; i += 2) {
      assertThat(shifted[i]).isCloseTo(plain[i] + 2500, offset(SOLVER_MM));
      assertThat(shifted[i + 1]).isCloseTo(plain[i + 1] - 700, offset(SOLVER_MM));
      assertThat(mirrored[i]).isCloseTo(plain[i], offset(SOLVER_MM));
      assertThat(mirrored[i + 1]).isCloseTo(-plain[i + 1], offset(SOLVER_MM));
      assertThat(25.4 * inches[i]).isCloseTo(plain[i], offset(25.4 * SOLVER_MM));
      assertThat(25.4 * inches[i + 1]).isCloseTo(plain[i + 1], offset(25.4 * SOLVER_MM));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void solvingTwiceChangesNothing(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Framework f = loose(random, 1000);
    Problem p = problem(f, start(f, random), 1, 0, 0, 1);
    double[] once = Solver.solve(p).x();
    SolveReport twice = Solver.solve(p.withStart(once));
    assertThat(twice.x()).containsExactly(once, offset(SOLVER_MM));
    assertThat(twice.iterations()).isLessThanOrEqualTo(2);
  }

  @Test
  void nearestPointOnACircleIsFoundFromFarAndFromInside() {
    SplittableRandom random = new SplittableRandom(5);
    for (int k = 0; k < 200; k++) {
      double angle = random.nextDouble(-Math.PI, Math.PI);
      double distance = Math.pow(10, random.nextDouble(-1, 4));
      Problem.Builder b = Problem.builder();
      Pt p = b.pin("p", distance * Math.cos(angle), distance * Math.sin(angle));
      b.tie("round", Relations.distance(Pt.at(0, 0), p, 300));
      SolveReport report = Solver.solve(b.build());
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      assertThat(report.x()[0]).isCloseTo(300 * Math.cos(angle), offset(SOLVER_MM));
      assertThat(report.x()[1]).isCloseTo(300 * Math.sin(angle), offset(SOLVER_MM));
    }
  }

  @Test
  void nearestPointOnAnEllipseHasItsNormalThroughTheStart() {
    // Ellipse as a relation of its own: strongly curved, so plain linear steps would not settle on
    // the foot.
    SplittableRandom random = new SplittableRandom(6);
    for (int k = 0; k < 100; k++) {
      double a = 300;
      double c = 60;
      double sx = random.nextDouble(-900, 900);
      double sz = random.nextDouble(-900, 900);
      Problem.Builder b = Problem.builder();
      b.pin("p", sx, sz);
      Relation ellipse =
          new Relation() {
            @Override
            public int[] variables() {
              return new int[] {0, 1};
            }

            @Override
            public double evaluate(double[] x, double[] g) {
              double r = Math.sqrt(x[0] * x[0] / (a * a) + x[1] * x[1] / (c * c));
              if (g != null) {
                g[0] = c * x[0] / (a * a) / r;
                g[1] = c * x[1] / (c * c) / r;
              }
              return c * (r - 1);
            }
          };
      b.tie("ellipse", ellipse);
      SolveReport report = Solver.solve(b.build());
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      double[] g = new double[2];
      ellipse.evaluate(report.x(), g);
      double size = Math.hypot(g[0], g[1]);
      double tangential = ((sx - report.x()[0]) * -g[1] + (sz - report.x()[1]) * g[0]) / size;
      assertThat(tangential).isCloseTo(0, offset(1e-5));
    }
  }

  @Test
  void variableScaleDecidesWhatCountsAsNear() {
    // x + y = 10 from 0, 0; y is cheap to change.
    Problem.Builder b = Problem.builder();
    int x = b.variable("x", 0);
    int y = b.variable(new Problem.Variable("y", 0, 0, 3, false));
    b.tie(
        "sum",
        Relations.equal(
            Quantity.formula(
                new int[] {x, y},
                (v, g) -> {
                  if (g != null) {
                    g[0] = 1;
                    g[1] = 1;
                  }
                  return v[x] + v[y];
                }),
            Quantity.of(10)));
    SolveReport report = Solver.solve(b.build());
    // Least x^2 + (y/3)^2 under x + y = 10: x = 1, y = 9.
    assertThat(report.x()).containsExactly(new double[] {1, 9}, offset(SOLVER_MM));
  }

  @Test
  void tiesComeBeforeLimitsBeforeWishesBeforeStayingNear() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 10, 90);
    b.tie("height", Relations.fix(p.z(), 50));
    b.limit("wall", Relations.equal(Quantity.of(40), p.x()));
    b.wish("forward", 1e-3, Relations.fix(p.x(), 100));
    b.wish("low", 1e6, Relations.fix(p.z(), 0));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(report.x()).containsExactly(new double[] {40, 50}, offset(SOLVER_MM));
    assertThat(report.activeLimits()).containsExactly("wall");
  }

  @Test
  void wishesAreWeighted() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", -5, 3);
    b.wish("here", 1, Relations.fix(p.x(), 0));
    b.wish("there", 3, Relations.fix(p.x(), 100));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.x()[0]).isCloseTo(75, offset(SOLVER_MM));
    assertThat(report.x()[1]).isCloseTo(3, offset(SOLVER_MM));
  }

  @Test
  void freedomOfASlidingPinIsShownAtThatPinAlone() {
    Problem.Builder b = Problem.builder();
    Pt a = b.pin("a", 0, 0);
    Pt c = b.pin("b", 100, 0);
    Pt d = b.pin("c", 40, 30);
    Pt e = b.pin("slider", 300, 20);
    b.tie("place", Relations.fix(a, 0, 0));
    b.tie("level", Relations.fix(c.z(), 0));
    b.tie("base", Relations.distance(a, c, 100));
    b.tie("left", Relations.distance(a, d, 50));
    b.tie("right", Relations.distance(c, d, Math.hypot(60, 30)));
    b.tie("guide", Relations.pointOnLine(e, a, c));
    SolveReport report = Solver.solveAndDiagnose(b.build(), SolverSettings.DEFAULT);
    Diagnosis d1 = report.diagnosis().orElseThrow();
    assertThat(d1.freedoms()).hasSize(1);
    assertThat(d1.freedoms().get(0).lead()).isEqualTo("slider.x");
    assertThat(d1.freedoms().get(0).moves()).containsOnlyKeys("slider.x");
  }

  @Test
  void deadPointIsFlaggedAndItsFreedomIsNotLasting() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("knee", 100, 0);
    b.tie("thigh", Relations.distance(Pt.at(0, 0), p, 100));
    b.tie("shank", Relations.distance(p, Pt.at(200, 0), 100));
    SolveReport report = Solver.solveAndDiagnose(b.build(), SolverSettings.DEFAULT);
    assertThat(report.status().holds()).isTrue();
    Diagnosis d = report.diagnosis().orElseThrow();
    assertThat(d.rank()).isEqualTo(1);
    assertThat(d.nearSingular()).isNotEmpty();
    assertThat(d.redundant()).isEmpty();
    assertThat(d.freedoms()).hasSize(1);
    assertThat(d.freedoms().get(0).lasting()).isFalse();
  }

  @Test
  void nearDeadPointIsFlaggedBeforeItIsReached() {
    for (double span : new double[] {150, 199.9999}) {
      Problem.Builder b = Problem.builder();
      Pt p = b.pin("knee", span / 2, 10);
      b.tie("thigh", Relations.distance(Pt.at(0, 0), p, 100));
      b.tie("shank", Relations.distance(p, Pt.at(span, 0), 100));
      SolveReport report = Solver.solveAndDiagnose(b.build(), SolverSettings.DEFAULT);
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      Diagnosis d = report.diagnosis().orElseThrow();
      assertThat(d.degreesOfFreedom()).isZero();
      assertThat(d.nearSingular().isEmpty()).isEqualTo(span < 190);
    }
  }

  @Test
  void redundancyNamesTheTieThatComesLastAndWhatImpliesIt() {
    Problem.Builder b = Problem.builder();
    int x = b.variable("x", 3);
    int y = b.variable("y", 4);
    b.tie("x is 3", Relations.fix(Quantity.variable(x), 3));
    b.tie("y is 4", Relations.fix(Quantity.variable(y), 4));
    b.tie("five", Relations.distance(Pt.at(0, 0), Pt.variables(x, y), 5));
    Diagnosis d =
        Solver.solveAndDiagnose(b.build(), SolverSettings.DEFAULT).diagnosis().orElseThrow();
    assertThat(d.redundant())
        .containsExactly(new Redundancy("five", List.of("x is 3", "y is 4"), true));
  }

  @Test
  void contradictionBetweenFixedPinsIsNamed() {
    Problem.Builder b = Problem.builder();
    Pt a = StillPin.in(b, "a", 0, 0);
    Pt c = StillPin.in(b, "b", 100, 0);
    Pt free = b.pin("free", 1, 2);
    b.tie("wrong", Relations.distance(a, c, 90));
    b.tie("right", Relations.distance(a, free, 10));
    SolveReport report = Solver.solveAndDiagnose(b.build(), SolverSettings.DEFAULT);
    assertThat(report.status()).isEqualTo(SolveStatus.CONTRADICTS);
    assertThat(report.failedTies()).containsExactly("wrong");
    assertThat(report.maxResidualMm()).isCloseTo(10, offset(1e-9));
    assertThat(report.diagnosis().orElseThrow().contradiction()).containsExactly("wrong");
    // The other group is solved all the same.
    assertThat(Math.hypot(report.x()[4], report.x()[5])).isCloseTo(10, offset(SOLVER_MM));
  }

  @Test
  void relationThatGivesNoNumberIsReportedNotThrown() {
    Problem.Builder b = Problem.builder();
    int x = b.variable("x", -1);
    b.tie(
        "root",
        Relations.equal(
            Quantity.formula(
                new int[] {x},
                (v, g) -> {
                  if (g != null) {
                    g[0] = 0.5 / Math.sqrt(v[x]);
                  }
                  return Math.sqrt(v[x]);
                }),
            Quantity.of(2)));
    SolveReport report = Solver.solveAndDiagnose(b.build(), SolverSettings.DEFAULT);
    assertThat(report.x()[0]).isFinite();
    assertThat(report.maxResidualMm()).isNotNaN();
    if (!report.status().holds()) {
      assertThat(report.failedTies()).containsExactly("root");
    }
  }

  @Test
  void emptyAndUntiedProblemsAreSolved() {
    assertThat(Solver.solve(Problem.builder().build()).status()).isEqualTo(SolveStatus.SOLVED);
    Problem.Builder b = Problem.builder();
    b.pin("lonely", 3, 4);
    SolveReport report = Solver.solveAndDiagnose(b.build(), SolverSettings.DEFAULT);
    assertThat(report.x()).containsExactly(3, 4);
    assertThat(report.diagnosis().orElseThrow().freedoms()).hasSize(2);
  }

  @Test
  void brokenCallsAreRefusedWithTheReason() {
    assertThatThrownBy(() -> Problem.builder().variable("x", Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'x'")
        .hasMessageContaining("finite");
    assertThatThrownBy(
            () -> Problem.builder().tie("t", Relations.fix(Quantity.variable(4), 0)).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'t'")
        .hasMessageContaining("variable 4");
    assertThatThrownBy(() -> Problem.builder().wish("w", -1, Relations.fix(Quantity.of(1), 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("weight");
  }

  @Test
  void limitsOfAllKindsKeepAPinInItsRoom() {
    // Dragged by a wish to many places, the pin stays in a ring sector above ground and in its box.
    SplittableRandom random = new SplittableRandom(9);
    for (int k = 0; k < 200; k++) {
      Problem.Builder b = Problem.builder();
      Pt p = b.pin("p", 60, 60);
      b.limit("far enough", Relations.distance(Pt.at(0, 0), p, Quantity.of(50)));
      b.limit(
          "near enough", Relations.negative(Relations.distance(Pt.at(0, 0), p, Quantity.of(150))));
      b.limit("above ground", Relations.fix(p.z(), 0));
      b.limit("front", Relations.equal(p.x(), Quantity.of(-20)));
      double wx = random.nextDouble(-300, 300);
      double wz = random.nextDouble(-300, 300);
      b.wish("x", 1, Relations.fix(p.x(), wx));
      b.wish("z", 1, Relations.fix(p.z(), wz));
      SolveReport report = Solver.solve(b.build());
      assertThat(report.status().holds()).as(wx + " " + wz + " " + report.status()).isTrue();
      double x = report.x()[0];
      double z = report.x()[1];
      assertThat(Math.hypot(x, z)).isBetween(50 - SOLVER_MM, 150 + SOLVER_MM);
      assertThat(z).isGreaterThan(-SOLVER_MM);
      assertThat(x).isGreaterThan(-20 - SOLVER_MM);
      // No place nearby in the room is better: a coarse search around the answer.
      double best = Math.hypot(x - wx, z - wz);
      for (int i = 0; i < 64; i++) {
        double a = 2 * Math.PI * i / 64;
        double nx = x + 0.01 * Math.cos(a);
        double nz = z + 0.01 * Math.sin(a);
        double r = Math.hypot(nx, nz);
        if (r >= 50 && r <= 150 && nz >= 0 && nx >= -20) {
          assertThat(Math.hypot(nx - wx, nz - wz)).isGreaterThan(best - 1e-5);
        }
      }
    }
  }
}
