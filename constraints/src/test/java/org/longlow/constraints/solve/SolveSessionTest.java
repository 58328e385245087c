package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.relation.Relations;

/** What a session reports of groups that end unlike, and what it keeps from problem to problem. */
class SolveSessionTest {

  private static final SolverSettings SETTINGS = SolverSettings.DEFAULT;

  /** A relation with another name for its kind: no link, though it reads the same. */
  private record Plain(Relation relation) implements Relation {
    @Override
    public int[] variables() {
      return relation.variables();
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      return relation.evaluate(x, gradient);
    }

    @Override
    public double scale() {
      return relation.scale();
    }
  }

  private static Quantity var(Problem.Builder b, String name, double at) {
    return Quantity.variable(b.variable(name, at));
  }

  // --- groups that end unlike

  /** Adds a group of its own that ends in a way of its own. */
  private enum Ends {
    SOLVED(SolveStatus.SOLVED, (b, n) -> b.tie(n + " at 3", Relations.fix(var(b, n, 0), 3))),
    FAILS(
        SolveStatus.LIMIT_FAILS,
        (b, n) -> {
          Quantity x = var(b, n, 0);
          b.tie(n + " at 3", Relations.fix(x, 3));
          b.limit(n + " from 8", Relations.fix(x, 8));
        }),
    CONTRADICTS(
        SolveStatus.CONTRADICTS,
        (b, n) -> {
          Quantity x = var(b, n, 0);
          b.tie(n + " at 3", Relations.fix(x, 3));
          b.tie(n + " at 4", Relations.fix(x, 4));
        });

    final SolveStatus status;
    final BiConsumer<Problem.Builder, String> add;

    Ends(SolveStatus status, BiConsumer<Problem.Builder, String> add) {
      this.status = status;
      this.add = add;
    }
  }

  private static SolveReport of(Ends... ends) {
    Problem.Builder b = Problem.builder();
    for (int i = 0; i < ends.length; i++) {
      ends[i].add.accept(b, "v" + i);
    }
    return Solver.solve(b.build());
  }

  static Stream<Arguments> pairs() {
    return Stream.of(Ends.values())
        .flatMap(a -> Stream.of(Ends.values()).map(b -> Arguments.of(a, b)));
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void theVerdictIsThatOfTheWorstGroup(Ends a, Ends b) {
    Ends worse = a.compareTo(b) > 0 ? a : b;
    SolveReport both = of(a, b);
    SolveReport one = of(a);
    SolveReport other = of(b);
    assertThat(one.status()).isEqualTo(a.status);
    assertThat(both.status()).isEqualTo(worse.status);
    // what each takes adds up
    assertThat(one.iterations()).isPositive();
    assertThat(both.iterations()).isEqualTo(one.iterations() + other.iterations());
    assertThat(both.work()).isEqualTo(one.work() + other.work());
    assertThat(both.failedTies()).hasSize(one.failedTies().size() + other.failedTies().size());
    assertThat(both.failedLimits())
        .hasSize(one.failedLimits().size() + other.failedLimits().size());
  }

  @Test
  void whatIsNotDecidedIsWorseThanALimitThatFailsAndNotThanAContradiction() {
    SolverSettings little =
        new SolverSettings(1e-7, 1e-7, 200, 1e-7, 100, 12, true, of(Ends.FAILS).work());
    for (boolean contradicts : new boolean[] {false, true}) {
      Problem.Builder b = Problem.builder();
      (contradicts ? Ends.CONTRADICTS : Ends.FAILS).add.accept(b, "first");
      // a group that needs a shaken start and begins when all work is spent
      Pt p = b.pin("p", -100, 0);
      b.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
      b.limit("right", Relations.fix(p.x(), 50));
      SolveReport report = Solver.solve(b.build(), little);
      assertThat(report.status())
          .isEqualTo(contradicts ? SolveStatus.CONTRADICTS : SolveStatus.NOT_DECIDED);
      assertThat(report.work()).isGreaterThan(little.workAllowed());
    }
  }

  // --- limits and ties in the report

  private static SolveReport held(double at, double... from) {
    Problem.Builder b = Problem.builder();
    Quantity x = var(b, "x", at);
    b.tie("x", Relations.fix(x, at));
    for (int i = 0; i < from.length; i++) {
      b.limit("l" + i, Relations.fix(x, from[i]));
    }
    return Solver.solve(b.build());
  }

  /** A limit holds up to a ten-millionth of a millimetre, and is active within as much of it. */
  @Test
  void limitsFailHoldOrAreActive() {
    SolveReport report = held(10, 10, 9, 10 - 2e-7, 10 - 5e-8, 10 + 5e-8);
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(report.failedLimits()).isEmpty();
    assertThat(report.activeLimits()).containsExactly("l0", "l3", "l4");
    report = held(10, 13, 17, 10, 13, 10 + 2e-7);
    assertThat(report.status()).isEqualTo(SolveStatus.LIMIT_FAILS);
    assertThat(report.failedLimits())
        .extracting(LimitFailure::limit)
        .containsExactly("l1", "l0", "l3", "l4");
    assertThat(report.failedLimits().get(0).shortfallMm()).isCloseTo(7, offset(1e-6));
    assertThat(report.failedLimits().get(1).shortfallMm()).isCloseTo(3, offset(1e-6));
    assertThat(report.failedLimits().get(3).shortfallMm()).isCloseTo(2e-7, offset(1e-8));
    assertThat(report.activeLimits()).containsExactly("l2");
    assertThat(report.failedTies()).isEmpty();
    assertThat(report.maxResidualMm()).isCloseTo(0, offset(1e-7));
  }

  /** A limit of several rooms fails by the least of them and is not active as well. */
  @Test
  void aLimitFailsByItsLeastRoom() {
    Problem.Builder b = Problem.builder();
    Quantity x = var(b, "x", 10);
    b.tie("x", Relations.fix(x, 10));
    b.limit("three", List.of(Relations.fix(x, 10), Relations.fix(x, 16), Relations.fix(x, 12)));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.failedLimits()).hasSize(1);
    assertThat(report.failedLimits().get(0).shortfallMm()).isCloseTo(6, offset(1e-6));
    assertThat(report.activeLimits()).isEmpty();
  }

  /** 2 x is to be 10 and 14: halfway it is off by 2 each way, though x would have to go 1. */
  @Test
  void tiesAreOffInTheirOwnMillimetres() {
    Problem.Builder b = Problem.builder();
    int x = b.variable("x", 0);
    Quantity twice =
        Quantity.formula(
            new int[] {x},
            (v, g) -> {
              if (g != null) {
                g[0] = 2;
              }
              return 2 * v[x];
            });
    b.tie("ten", Relations.equal(twice, Quantity.of(10)));
    b.tie("fourteen", Relations.equal(twice, Quantity.of(14)));
    b.tie("apart", Relations.fix(var(b, "y", 1), 3));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.maxResidualMm()).isCloseTo(2, offset(1e-5));
    assertThat(report.failedTies()).containsExactly("ten", "fourteen");
    assertThat(report.x()[0]).isCloseTo(6, offset(1e-5));
    assertThat(report.x()[1]).isCloseTo(3, offset(1e-9));
  }

  // --- values to begin at

  @Test
  void whatNothingTiesGoesToItsAnchorAndWhatIsFixedStays() {
    Problem.Builder b = Problem.builder();
    b.variable("free", 1);
    b.fixed("fixed", 2);
    b.tie("tied", Relations.fix(var(b, "tied", 3), 30));
    SolveSession session = new SolveSession(b.build(), SETTINGS);
    SolveReport report = session.solve(new double[] {1, 2, 3}, new double[] {7, 8, 9});
    assertThat(report.x()).containsExactly(new double[] {7, 2, 30}, offset(1e-9));
    assertThatThrownBy(() -> session.solve(new double[] {1, Double.NaN, 3}, new double[3]))
        .hasMessageContaining("'fixed'");
    assertThatThrownBy(
            () -> session.solve(new double[3], new double[] {0, 0, Double.POSITIVE_INFINITY}))
        .hasMessageContaining("'tied'");
  }

  /** From (100, 0) a circle about the origin is met where it is, wherever the anchor would be. */
  @Test
  void whereItHoldsIsAskedWithoutCareForWhatIsNear() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 130, 0);
    b.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    b.wish("up", 1, Relations.fix(p.z(), 70));
    Problem problem = b.build();
    double[] from = {130, 0};
    SolveReport anywhere = new SolveSession(problem, SETTINGS).hold(from);
    assertThat(anywhere.x()).containsExactly(new double[] {100, 0}, offset(1e-6));
    SolveReport nearby = new SolveSession(problem, SETTINGS).holdNearby(from);
    assertThat(nearby.x()).containsExactly(new double[] {100, 0}, offset(1e-6));
    SolveReport wished = new SolveSession(problem, SETTINGS).solve(from, from);
    assertThat(wished.x()[1]).isCloseTo(70, offset(1e-5));
  }

  /** Quick steps find nothing where a shaken start is needed; a session asked in full does. */
  @Test
  void quickWaysAreLeftAgain() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", -100, 0);
    b.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    b.limit("right", Relations.fix(p.x(), 50));
    Problem problem = b.build();
    double[] from = problem.start();
    SolveSession session = new SolveSession(problem, SETTINGS);
    assertThat(session.solveQuickly(from, from).status().holds()).isFalse();
    assertThat(session.solve().status()).isEqualTo(SolveStatus.SOLVED);
    double[] near = {60, 70};
    SolveReport quick = session.solveQuickly(near, near);
    assertThat(quick.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(Math.hypot(quick.x()[0], quick.x()[1])).isCloseTo(100, offset(1e-7));
    assertThat(session.holdNearby(from).status()).isEqualTo(SolveStatus.NOT_DECIDED);
    assertThat(session.hold(from).status()).isEqualTo(SolveStatus.SOLVED);
  }

  @Test
  void sessionsThatShareTheirWorkCountOn() {
    Problem.Builder b = Problem.builder();
    Ends.SOLVED.add.accept(b, "v");
    Problem problem = b.build();
    long once = Solver.solve(problem).work();
    Work shared = new Work(1_000);
    assertThat(new SolveSession(problem, SETTINGS, shared).solve().work()).isEqualTo(once);
    assertThat(shared.done()).isGreaterThanOrEqualTo(once);
    long twice = new SolveSession(problem, SETTINGS, shared).solve().work();
    assertThat(twice).isGreaterThanOrEqualTo(2 * once);
    assertThat(shared.done()).isGreaterThanOrEqualTo(twice);
  }

  // --- other problems

  /** x + z = 10 from 0 and 0; what is cheap goes farther, what is fixed not at all. */
  private static Problem sum(double scale, boolean fixed, boolean withThird) {
    Problem.Builder b = Problem.builder();
    int x = b.variable("x", 0);
    int z = b.variable(new Problem.Variable("z", 0, 0, scale, fixed));
    int w = b.variable("w", 4);
    b.tie(
        "sum",
        Relations.equal(
            Quantity.formula(
                withThird ? new int[] {x, z, w} : new int[] {x, z},
                (v, g) -> {
                  if (g != null) {
                    g[0] = 1;
                    g[1] = 1;
                    if (withThird) {
                      g[2] = 1;
                    }
                  }
                  return v[x] + v[z] + (withThird ? v[w] : 0);
                }),
            Quantity.of(10)));
    return b.build();
  }

  @Test
  void anotherScaleFixOrVariableIsAnotherStructure() {
    SolveSession session = new SolveSession(sum(1, false, false), SETTINGS);
    double[][] expected = {{5, 5, 4}, {1, 9, 4}, {10, 0, 4}, {2, 2, 6}, {5, 5, 4}};
    Problem[] asked = {
      sum(1, false, false),
      sum(3, false, false),
      sum(1, true, false),
      sum(1, false, true),
      sum(1, false, false)
    };
    for (int i = 0; i < asked.length; i++) {
      assertThat(session.solve(asked[i]).x()).containsExactly(expected[i], offset(1e-6));
    }
  }

  /** A knee that must bend the other way is told only where thigh and shank are links. */
  private static Problem knee(boolean links, double below) {
    Problem.Builder b = Problem.builder();
    Pt knee = b.pin("knee", 40, 30);
    Relation thigh = Relations.distance(Pt.at(0, 0), knee, 50);
    Relation shank = Relations.distance(knee, Pt.at(80, 0), 50);
    b.tie("thigh", links ? thigh : new Plain(thigh));
    b.tie("shank", links ? shank : new Plain(shank));
    b.limit("below", Relations.equal(Quantity.of(below), knee.z()));
    return b.build();
  }

  @Test
  void whatIsTurnedOverIsNamed() {
    SolveSession session = new SolveSession(knee(false, -10), SETTINGS);
    SolveReport plain = session.solve();
    assertThat(plain.x()).containsExactly(new double[] {40, -30}, offset(1e-6));
    assertThat(plain.turned()).isEmpty();
    SolveReport links = session.solve(knee(true, -10));
    assertThat(links.x()).containsExactly(new double[] {40, -30}, offset(1e-6));
    assertThat(links.turned()).containsExactly("knee.x");
    assertThat(session.solve(knee(true, 35)).turned()).isEmpty();
    assertThat(session.solve(knee(false, -10)).turned()).isEmpty();
  }

  /** Limits and wishes over other variables are another structure, ties being the same. */
  @ParameterizedTest
  @CsvSource({"true, true", "true, false", "false, true", "false, false"})
  void otherVariablesInLimitsAndWishesAreSeen(boolean limit, boolean first) {
    SolveSession session = new SolveSession(bent(limit, !first, 1), SETTINGS);
    session.solve();
    double[] x = session.solve(bent(limit, first, 1)).x();
    assertThat(x[first ? 0 : 1]).isCloseTo(60, offset(1e-5));
    assertThat(x[first ? 1 : 0]).isCloseTo(80, offset(1e-5));
    // one more room or one less, in the same limit
    x = session.solve(bent(limit, first, 2)).x();
    assertThat(x[first ? 0 : 1]).isCloseTo(limit ? 70 : 60, offset(1e-5));
    x = session.solve(bent(limit, first, 1)).x();
    assertThat(x[first ? 0 : 1]).isCloseTo(60, offset(1e-5));
  }

  /** A pin on a circle of 100 at 45 degrees, held or wished to 60 along one axis. */
  private static Problem bent(boolean limit, boolean first, int rooms) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", Math.sqrt(5000) * (first ? 0.7 : 1), Math.sqrt(5000) * (first ? 1 : 0.7));
    b.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    Quantity asked = first ? p.x() : p.z();
    if (limit) {
      b.limit(
          "from", Stream.of(60.0, 70.0).limit(rooms).map(at -> Relations.fix(asked, at)).toList());
    } else {
      b.wish("at", 1, Relations.fix(asked, 60));
    }
    return b.build();
  }
}
