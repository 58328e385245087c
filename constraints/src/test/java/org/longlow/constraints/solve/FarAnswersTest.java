package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.relation.Relations;

/** Answers that do not lie where the search begins, and what is said of them and of freedoms. */
class FarAnswersTest {

  private static final SolverSettings SETTINGS = SolverSettings.DEFAULT;

  /** A pin on a circle of 100 mm about the origin that must lie right of a wall. */
  private static Problem onCircle(double x, double z, double wall) {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", x, z);
    b.tie("round", Relations.distance(Pt.at(0, 0), p, 100));
    b.limit("right", Relations.equal(p.x(), Quantity.of(wall)));
    return b.build();
  }

  /** At the far side neither circle nor wall shows the way; a shaken start finds it. */
  @Test
  void theOtherSideOfACircleIsFound() {
    SolveReport report = Solver.solve(onCircle(-100, 0, 50));
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(report.x()[0]).isGreaterThanOrEqualTo(50 - 1e-6);
    assertThat(Math.hypot(report.x()[0], report.x()[1])).isCloseTo(100, offset(1e-6));
    assertThat(report.shaken()).containsExactlyInAnyOrder("p.x", "p.z");
    assertThat(report.iterations()).isPositive();
    SolveReport near = Solver.solve(onCircle(-3, 100, 50));
    assertThat(near.status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(near.shaken()).isEmpty();
    // the nearest of the arc that is allowed is its end
    assertThat(near.x()[0]).isCloseTo(50, offset(1e-6));
    assertThat(near.x()[1]).isCloseTo(Math.sqrt(7500), offset(1e-6));
  }

  /** No point of the circle is right of 150: the rightmost is 50 short. */
  @ParameterizedTest
  @CsvSource({"-99, 9", "-60, -80", "3, 100", "100, 1"})
  void aLimitThatCannotHoldFailsByTheLeast(double x, double z) {
    SolveReport report = Solver.solve(onCircle(x, z, 150));
    assertThat(report.status()).isEqualTo(SolveStatus.LIMIT_FAILS);
    assertThat(report.failedLimits()).hasSize(1);
    assertThat(report.failedLimits().get(0).limit()).isEqualTo("right");
    assertThat(report.failedLimits().get(0).shortfallMm()).isCloseTo(50, offset(1e-3));
    assertThat(report.x()[0]).isCloseTo(100, offset(1e-3));
    assertThat(report.failedTies()).isEmpty();
  }

  /** The nearest point of an ellipse-like linkage is one where nothing beside it is nearer. */
  @Test
  void twoLinksReachTheirNearestPlace() {
    // shoulder at 0, elbow and hand; the hand on a rail at z = 30
    Problem.Builder b = Problem.builder();
    Pt elbow = b.pin("elbow", 40, 80);
    Pt hand = b.pin("hand", 190, 90);
    b.tie("upper", Relations.distance(Pt.at(0, 0), elbow, 100));
    b.tie("lower", Relations.distance(elbow, hand, 80));
    b.tie("rail", Relations.fix(hand.z(), 30));
    SolveReport report = Solver.solve(b.build());
    assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
    double best = Double.POSITIVE_INFINITY;
    for (double deg = -180; deg < 180; deg += 0.01) {
      double ex = 100 * Math.cos(Math.toRadians(deg));
      double ez = 100 * Math.sin(Math.toRadians(deg));
      double across = 80 * 80 - (30 - ez) * (30 - ez);
      for (int side = -1; side <= 1 && across >= 0; side += 2) {
        double hx = ex + side * Math.sqrt(across);
        best =
            Math.min(
                best,
                Math.sqrt(
                    (ex - 40) * (ex - 40)
                        + (ez - 80) * (ez - 80)
                        + (hx - 190) * (hx - 190)
                        + 60 * 60));
      }
    }
    double[] x = report.x();
    double is =
        Math.sqrt(
            (x[0] - 40) * (x[0] - 40)
                + (x[1] - 80) * (x[1] - 80)
                + (x[2] - 190) * (x[2] - 190)
                + (x[3] - 90) * (x[3] - 90));
    assertThat(is).isBetween(best - 0.01, best + 1e-6);
  }

  /**
   * x + y + w = 10 and w = 4 is wished: x and y go from 2 and 6 by 1 to 9, as y is 3 times as
   * cheap.
   */
  @Test
  void scalesCountBesideAWish() {
    Problem.Builder b = Problem.builder();
    int x = b.variable("x", 2);
    int y = b.variable(new Problem.Variable("y", 6, 6, 3, false));
    int w = b.variable("w", 0);
    b.tie(
        "sum",
        Relations.equal(
            Quantity.formula(
                new int[] {x, y, w},
                (v, g) -> {
                  if (g != null) {
                    g[0] = 1;
                    g[1] = 1;
                    g[2] = 1;
                  }
                  return v[x] + v[y] + v[w];
                }),
            Quantity.of(10)));
    b.wish("w", 1, Relations.fix(Quantity.variable(w), 4));
    assertThat(Solver.solve(b.build()).x())
        .containsExactly(new double[] {1.8, 4.2, 4}, offset(1e-6));
  }

  // --- redundancy and freedoms beside a contradiction or a scale

  /**
   * A hub with its place given twice, once wrongly, and an arm that swings: what contradicts is
   * redundant to first order, and the arm's freedom is a circle about the hub.
   */
  @Test
  void anArmSwingsAlthoughItsHubIsTiedTwice() {
    Problem.Builder b = Problem.builder();
    Pt hub = b.pin("hub", 10, 20);
    Pt end = b.pin("end", 40, 60);
    b.tie("x", Relations.fix(hub.x(), 10));
    b.tie("z", Relations.fix(hub.z(), 20));
    b.tie("x again", Relations.fix(hub.x(), 14));
    b.tie("arm", Relations.distance(hub, end, 50));
    SolveReport report = Solver.solveAndDiagnose(b.build(), SETTINGS);
    assertThat(report.status()).isEqualTo(SolveStatus.CONTRADICTS);
    Diagnosis d = report.diagnosis().orElseThrow();
    assertThat(d.rank()).isEqualTo(3);
    assertThat(d.degreesOfFreedom()).isEqualTo(1);
    assertThat(d.redundant()).containsExactly(new Redundancy("x again", List.of("x"), true));
    assertThat(d.contradiction()).containsExactly("x", "x again");
    Freedom swing = d.freedoms().get(0);
    assertThat(swing.lasting()).isTrue();
    double[] x = report.x();
    Map<String, Double> moves = swing.moves();
    assertThat(moves).containsOnlyKeys("end.x", "end.z");
    assertThat(moves.get("end.x") * (x[2] - x[0]) + moves.get("end.z") * (x[3] - x[1]))
        .isCloseTo(0, offset(1e-6));
    assertThat(moves.get(swing.lead())).isEqualTo(1);
  }

  /** Several redundant ties are named in the order of the ties, not of their groups. */
  @Test
  void redundantTiesComeInTheirOrder() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 1, 2);
    Pt q = b.pin("q", 3, 4);
    b.tie("q.z", Relations.fix(q.z(), 4));
    b.tie("p.x", Relations.fix(p.x(), 1));
    b.tie("q.z again", Relations.fix(q.z(), 4));
    b.tie("p.x again", Relations.fix(p.x(), 1));
    Diagnosis d = Solver.solveAndDiagnose(b.build(), SETTINGS).diagnosis().orElseThrow();
    assertThat(d.redundant()).extracting(Redundancy::tie).containsExactly("q.z again", "p.x again");
  }

  // --- a session goes on with other problems

  private static Problem rod(double length, boolean fixed, boolean level) {
    Problem.Builder b = Problem.builder();
    int x = b.variable(new Problem.Variable("a.x", 0, 0, 1, fixed));
    int z = b.variable(new Problem.Variable("a.z", 0, 0, 1, fixed));
    Pt a = Pt.variables(x, z);
    Pt c = b.pin("c", 30, 40);
    b.tie("rod", Relations.distance(a, c, length));
    if (level) {
      b.tie("level", Relations.fix(c.z(), 0));
    } else {
      b.tie("level", Relations.fix(c.x(), 0));
    }
    return b.build();
  }

  /** Whatever was solved before, the answer is that of a solver that begins anew. */
  @Test
  void aSessionTakesProblemsOfAnyStructure() {
    SolveSession session = new SolveSession(rod(50, true, true), SETTINGS);
    double[][] asked = {{50, 1, 1}, {70, 1, 1}, {70, 0, 1}, {70, 0, 0}, {60, 1, 0}, {60, 1, 1}};
    for (double[] ask : asked) {
      Problem next = rod(ask[0], ask[1] == 1, ask[2] == 1);
      double[] is = session.solve(next).x();
      assertThat(is).containsExactly(Solver.solve(next).x(), offset(1e-9));
      assertThat(Math.hypot(is[2] - is[0], is[3] - is[1])).isCloseTo(ask[0], offset(1e-6));
      assertThat(ask[2] == 1 ? is[3] : is[2]).isCloseTo(0, offset(1e-6));
      // from values of our own it goes to what is nearest to those
      double[] own = {0, 0, -30, -40};
      double[] other = session.solve(next, own, own).x();
      assertThat(ask[2] == 1 ? other[2] - other[0] : other[3] - other[1]).isNegative();
    }
  }

  /** A longer list of ties, limits or wishes is another structure too. */
  @Test
  void aSessionSeesWhatIsAdded() {
    Problem base = rod(50, true, true);
    SolveSession session = new SolveSession(base, SETTINGS);
    Problem.Builder b = Problem.builder();
    int x = b.variable(new Problem.Variable("a.x", 0, 0, 1, true));
    int z = b.variable(new Problem.Variable("a.z", 0, 0, 1, true));
    Pt c = b.pin("c", 30, 40);
    b.tie("rod", Relations.distance(Pt.variables(x, z), c, 50));
    b.wish("low", 1, Relations.fix(c.z(), -20));
    assertThat(session.solve(base).x()[3]).isCloseTo(0, offset(1e-6));
    assertThat(session.solve(b.build()).x()[3]).isCloseTo(-20, offset(1e-6));
    b.limit("high", Relations.equal(c.z(), Quantity.of(14)));
    assertThat(session.solve(b.build()).x()[3]).isCloseTo(14, offset(1e-6));
    assertThat(session.solve(base).x()[3]).isCloseTo(0, offset(1e-6));
  }
}
