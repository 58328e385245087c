package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.relation.Relations;

/** Rank, freedoms, gains and what is redundant, against what can be told of each by hand. */
class DiagnosisTest {

  private static final SolverSettings SETTINGS = SolverSettings.DEFAULT;

  private static Diagnosis of(Problem.Builder b) {
    return of(b.build(), SETTINGS);
  }

  private static Diagnosis of(Problem problem, SolverSettings settings) {
    return Solver.solveAndDiagnose(problem, settings).diagnosis().orElseThrow();
  }

  /** Sum of multiples of two variables. */
  private static Relation sum(int i, double a, int j, double c, double total) {
    return Relations.equal(
        Quantity.formula(
            new int[] {i, j},
            (v, g) -> {
              if (g != null) {
                g[0] = a;
                g[1] = c;
              }
              return a * v[i] + c * v[j];
            }),
        Quantity.of(total));
  }

  // --- gains

  /**
   * A knee over the middle of two legs of 100. A millimetre more in one leg, the other unchanged,
   * moves it by 100 over twice its height upwards and 100 over the span sideways.
   */
  private static Problem knee(double height, double rightOf) {
    double half = Math.sqrt(1e4 - height * height);
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("knee " + rightOf, rightOf + half, height);
    b.tie("thigh", Relations.distance(Pt.at(rightOf, 0), p, 100));
    b.tie("shank", Relations.distance(p, Pt.at(rightOf + 2 * half, 0), 100));
    return b.build();
  }

  @ParameterizedTest
  @CsvSource({"80", "60", "20", "0.6", "0.51"})
  void aGainIsTheMostThatAMillimetreMoves(double height) {
    double half = Math.sqrt(1e4 - height * height);
    Diagnosis d = of(knee(height, 0), SETTINGS);
    assertThat(d.largestGain()).isCloseTo(Math.max(50 / height, 50 / half), offset(1e-4));
    assertThat(d.rank()).isEqualTo(2);
    assertThat(d.degreesOfFreedom()).isZero();
    assertThat(d.freedoms()).isEmpty();
    assertThat(d.nearSingular()).isEmpty();
    assertThat(d.decided()).isTrue();
    // at another threshold it is told
    SolverSettings strict = new SolverSettings(1e-7, 1e-7, 200, 1e-7, 0.6, 12, true, 20_000_000);
    assertThat(of(knee(height, 0), strict).nearSingular())
        .hasSize(height > 62 && height < 79 ? 0 : 2);
  }

  @Test
  void aGainBeyondAHundredIsNearADeadPoint() {
    assertThat(of(knee(0.49, 0), SETTINGS).nearSingular())
        .containsExactlyInAnyOrder("thigh", "shank");
  }

  /** A slope of 4 in the tie moves its variable by a quarter; a scale counts the other way. */
  @Test
  void slopesAndScalesCountInGains() {
    Problem.Builder b = Problem.builder();
    int x = b.variable("x", 2);
    int y = b.variable("y", 3);
    b.tie("steep", sum(x, 4, y, 0, 8));
    b.tie("plain", sum(x, 0, y, 1, 3));
    assertThat(of(b).largestGain()).isCloseTo(1, offset(1e-9));
    Problem.Builder one = Problem.builder();
    int z = one.variable("z", 2);
    one.tie("steep", sum(z, 4, one.variable("w", 0), 0, 8));
    assertThat(of(one).largestGain()).isCloseTo(0.25, offset(1e-9));
    Problem.Builder cheap = Problem.builder();
    int c = cheap.variable(new Problem.Variable("c", 2, 2, 5, false));
    cheap.tie("c", Relations.fix(Quantity.variable(c), 2));
    assertThat(of(cheap).largestGain()).isCloseTo(0.2, offset(1e-9));
  }

  /** What is nearest to its dead point is named first, though its ties come last. */
  @Test
  void whatIsWeakestComesFirst() {
    Problem.Builder b = Problem.builder();
    double[] heights = {0.3, 30, 0.1, 0.2};
    for (int i = 0; i < heights.length; i++) {
      double half = Math.sqrt(1e4 - heights[i] * heights[i]);
      Pt p = b.pin("knee " + i, 300 * i + half, heights[i]);
      b.tie(
          "legs " + i,
          Relations.distance(Pt.at(300 * i, 0), p, 100),
          Relations.distance(p, Pt.at(300 * i + 2 * half, 0), 100));
    }
    Diagnosis d = of(b);
    assertThat(d.nearSingular()).containsExactly("legs 2", "legs 3", "legs 0");
    assertThat(d.largestGain()).isCloseTo(500, offset(0.1));
  }

  // --- freedoms

  /** Along 2 x + z = 10 a millimetre of x is two of z back; which leads depends on the scale. */
  @ParameterizedTest
  @CsvSource({"1, z, -0.5, 1", "4, x, 1, -2", "2, x, 1, -2"})
  void aFreedomSaysHowVariablesMoveTogether(double scale, String lead, double x, double z) {
    Problem.Builder b = Problem.builder();
    int vx = b.variable("x", 3);
    int vz = b.variable(new Problem.Variable("z", 4, 4, scale, false));
    b.tie("sum", sum(vx, 2, vz, 1, 10));
    Diagnosis d = of(b);
    assertThat(d.rank()).isEqualTo(1);
    assertThat(d.degreesOfFreedom()).isEqualTo(1);
    Freedom f = d.freedoms().get(0);
    assertThat(f.lead()).isEqualTo(lead);
    assertThat(f.moves().get("x")).isCloseTo(x, offset(1e-9));
    assertThat(f.moves().get("z")).isCloseTo(z, offset(1e-9));
    assertThat(f.lasting()).isTrue();
    assertThat(d.nearSingular()).isEmpty();
  }

  @Test
  void whatNothingTiesIsFreeAloneAndWhatIsFixedIsNot() {
    Problem.Builder b = Problem.builder();
    b.variable("free", 1);
    b.fixed("fixed", 2);
    b.tie("tied", Relations.fix(Quantity.variable(b.variable("tied", 3)), 3));
    Diagnosis d = of(b);
    assertThat(d.rank()).isEqualTo(1);
    assertThat(d.degreesOfFreedom()).isEqualTo(1);
    assertThat(d.freedoms()).containsExactly(new Freedom("free", Map.of("free", 1.0), true));
    Diagnosis none = of(Problem.builder().build(), SETTINGS);
    assertThat(none.largestGain()).isZero();
    assertThat(none.degreesOfFreedom()).isZero();
    assertThat(none.decided()).isTrue();
  }

  // --- what is redundant

  /** Of a pin's place one half is given before: the tie is redundant in part. */
  @Test
  void aTieMayBeRedundantInPart() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 3, 4);
    Pt q = b.pin("q", 30, 40);
    b.tie("x", Relations.fix(p.x(), 3));
    b.tie("place", Relations.fix(p, 3, 4));
    b.tie("other place", Relations.fix(q, 30, 40));
    b.tie(
        "apart",
        Relations.horizontal(p, q, Quantity.of(27)),
        Relations.vertical(p, q, Quantity.of(36)));
    Diagnosis d = of(b);
    assertThat(d.redundant())
        .containsExactly(
            new Redundancy("place", List.of("x"), false),
            new Redundancy("apart", List.of("x", "place", "other place"), true));
    assertThat(d.rank()).isEqualTo(4);
    assertThat(d.degreesOfFreedom()).isZero();
    assertThat(d.nearSingular()).isEmpty();
  }

  /**
   * A third leg of a bar that swings on two: parallel to them it follows; of another length, as
   * good to first order where all stand upright, it does not.
   */
  @ParameterizedTest
  @CsvSource({"100, true", "160, false"})
  void whatDoesNotFollowAMotionIsNotRedundant(double length, boolean follows) {
    Problem.Builder b = Problem.builder();
    Pt left = b.pin("left", 0, 100);
    Pt right = b.pin("right", 200, 100);
    b.tie("bar", Relations.distance(left, right, 200));
    Pt middle = b.pin("middle", 80, 100);
    b.tie("on it", Relations.horizontal(left, middle, Quantity.of(80)));
    b.tie("level", Relations.vertical(left, middle, Quantity.of(0)));
    b.tie("one leg", Relations.distance(Pt.at(0, 0), left, 100));
    b.tie("other leg", Relations.distance(Pt.at(200, 0), right, 100));
    b.tie("third leg", Relations.distance(Pt.at(80, 100 - length), middle, length));
    Diagnosis d = of(b);
    if (follows) {
      assertThat(d.redundant()).extracting(Redundancy::tie).containsExactly("third leg");
      assertThat(d.nearSingular()).isEmpty();
      assertThat(d.freedoms()).hasSize(1);
      assertThat(d.freedoms().get(0).lasting()).isTrue();
    } else {
      assertThat(d.redundant()).isEmpty();
      assertThat(d.nearSingular()).containsExactly("third leg");
      assertThat(d.freedoms()).noneMatch(Freedom::lasting);
    }
    assertThat(d.rank()).isEqualTo(5);
  }

  // --- bounds

  /** Without work left, freedoms are counted and nothing more is said. */
  @Test
  void whatCouldNotBeWorkedOutIsNotDecided() {
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 10, 20);
    Pt q = b.pin("q", 30, 40);
    b.tie("apart", Relations.distance(p, q, Math.hypot(20, 20)));
    b.tie("apart again", Relations.distance(p, q, Math.hypot(20, 20)));
    Problem problem = b.build();
    SolveReport report = Solver.solve(problem, SETTINGS);
    SolverSettings little = new SolverSettings(1e-7, 1e-7, 200, 1e-7, 100, 12, true, 1);
    Diagnosis d = Solver.diagnose(problem, report, little);
    assertThat(d.decided()).isFalse();
    assertThat(d.redundant()).isEmpty();
    // four less two ties, as far as can be told without a look
    assertThat(d.degreesOfFreedom()).isEqualTo(2);
    Diagnosis whole = Solver.diagnose(problem, report, SETTINGS);
    assertThat(whole.decided()).isTrue();
    assertThat(whole.degreesOfFreedom()).isEqualTo(3);
    assertThat(whole.redundant()).hasSize(1);
  }

  /** A row of pins from a wall, each 10 from the last: from 100 variables on as before. */
  @ParameterizedTest
  @ValueSource(ints = {49, 50, 51, 60})
  void aLongRowIsDiagnosedAsAShortOneIs(int pins) {
    Problem.Builder b = Problem.builder();
    Pt before = Pt.at(0, 0);
    for (int i = 1; i <= pins; i++) {
      Pt p = b.pin("p" + i, 10 * i, 0);
      b.tie("level " + i, Relations.vertical(before, p, Quantity.of(0)));
      if (i != 7) {
        b.tie("next " + i, Relations.horizontal(before, p, Quantity.of(10)));
      }
      before = p;
    }
    Diagnosis d = of(b);
    assertThat(d.rank()).isEqualTo(2 * pins - 1);
    assertThat(d.degreesOfFreedom()).isEqualTo(1);
    // all behind the gap goes along it together
    assertThat(d.freedoms()).hasSize(1);
    assertThat(d.freedoms().get(0).moves()).hasSize(pins - 6);
    assertThat(d.freedoms().get(0).moves().values())
        .allSatisfy(m -> assertThat(m).isCloseTo(1, offset(1e-9)));
    assertThat(d.freedoms().get(0).lasting()).isTrue();
    assertThat(d.largestGain()).isCloseTo(1, offset(1e-9));
  }

  // --- freedoms of long, small and scaled machines

  /**
   * A parallelogram on three legs with a tie too many: its freedom lasts and that tie is redundant,
   * whatever the size, wherever it stands and whatever its variables are scaled by.
   */
  @ParameterizedTest
  @CsvSource({"1, 0, 1", "0.01, 0, 1", "40, 0, 1", "1, 5000, 1", "1, 0, 0.2", "1, 300, 7"})
  void aSwingThatLastsDoesSoAtAnySize(double size, double from, double scale) {
    Problem.Builder b = Problem.builder();
    Pt[] tops = new Pt[3];
    double[] at = {0, 80 * size, 200 * size};
    double lean = 30 * size;
    for (int i = 0; i < 3; i++) {
      double x = from + at[i] + lean;
      double z = 100 * size;
      tops[i] =
          Pt.variables(
              b.variable(new Problem.Variable("x" + i, x, x, scale, false)),
              b.variable(new Problem.Variable("z" + i, z, z, scale, false)));
      b.tie("leg " + i, Relations.distance(Pt.at(from + at[i], 0), tops[i], Math.hypot(lean, z)));
    }
    b.tie("near", Relations.horizontal(tops[0], tops[1], Quantity.of(at[1])));
    b.tie("level", Relations.vertical(tops[0], tops[1], Quantity.of(0)));
    b.tie("far", Relations.horizontal(tops[0], tops[2], Quantity.of(at[2])));
    Diagnosis d = of(b);
    assertThat(d.rank()).isEqualTo(5);
    assertThat(d.nearSingular()).isEmpty();
    // two legs alike and their tops so far apart: they are level
    assertThat(d.redundant())
        .containsExactly(new Redundancy("level", List.of("leg 0", "leg 1", "near"), true));
    assertThat(d.freedoms()).hasSize(1);
    assertThat(d.freedoms().get(0).lasting()).isTrue();
    // all three go along together, square to their legs
    Map<String, Double> moves = d.freedoms().get(0).moves();
    assertThat(moves).hasSize(6);
    for (int i = 0; i < 3; i++) {
      assertThat(moves.get("z" + i) / moves.get("x" + i)).isCloseTo(-0.3, offset(1e-6));
      assertThat(moves.get("x" + i)).isCloseTo(moves.get("x0"), offset(1e-6));
    }
  }

  /** The same with a leg of another length: stiff, and its freedom goes nowhere. */
  @ParameterizedTest
  @CsvSource({"1, 0, 1", "0.01, 0, 1", "40, 0, 1", "1, 5000, 1", "1, 0, 0.2", "1, 300, 7"})
  void aSwingThatDoesNotLastDoesNotAtAnySize(double size, double from, double scale) {
    Problem.Builder b = Problem.builder();
    Pt[] tops = new Pt[3];
    double[] at = {0, 80 * size, 200 * size};
    for (int i = 0; i < 3; i++) {
      double x = from + at[i];
      double z = 100 * size;
      tops[i] =
          Pt.variables(
              b.variable(new Problem.Variable("x" + i, x, x, scale, false)),
              b.variable(new Problem.Variable("z" + i, z, z, scale, false)));
      double length = i == 1 ? 150 * size : z;
      b.tie("leg " + i, Relations.distance(Pt.at(x, z - length), tops[i], length));
    }
    b.tie("near", Relations.horizontal(tops[0], tops[1], Quantity.of(at[1])));
    b.tie("level", Relations.vertical(tops[0], tops[1], Quantity.of(0)));
    b.tie("far", Relations.horizontal(tops[0], tops[2], Quantity.of(at[2])));
    Diagnosis d = of(b);
    assertThat(d.rank()).isEqualTo(5);
    assertThat(d.redundant()).isEmpty();
    assertThat(d.nearSingular()).hasSize(1);
    assertThat(d.freedoms()).hasSize(1);
    assertThat(d.freedoms().get(0).lasting()).isFalse();
  }

  /** A tie implies nothing of those that have nothing to do with it. */
  @Test
  void onlyWhatATieFollowsFromIsNamed() {
    Problem.Builder b = Problem.builder();
    int[] v = new int[5];
    for (int i = 0; i < 5; i++) {
      v[i] = b.variable("v" + i, i);
    }
    b.tie("a", sum(v[0], 1, v[1], 1, 1));
    b.tie("b", sum(v[1], 1, v[2], 1, 3));
    b.tie("c", sum(v[2], 1, v[3], 1, 5));
    b.tie("d", sum(v[3], 1, v[4], 1, 7));
    b.tie("a less c", sum(v[0], 2, v[1], 2, 2));
    Diagnosis d = of(b);
    assertThat(d.redundant()).containsExactly(new Redundancy("a less c", List.of("a"), true));
    assertThat(d.degreesOfFreedom()).isEqualTo(1);
    assertThat(d.freedoms().get(0).moves()).hasSize(5);
    assertThat(d.freedoms().get(0).moves().values())
        .allSatisfy(m -> assertThat(Math.abs(m)).isCloseTo(1, offset(1e-9)));
  }

  /** A look at a group costs about its rows times the square of its variables. */
  @Test
  void aLargeGroupIsNotLookedAtBeyondTheWorkAllowed() {
    Problem.Builder b = Problem.builder();
    Pt before = Pt.at(0, 0);
    for (int i = 1; i <= 30; i++) {
      Pt p = b.pin("p" + i, 10 * i, 0);
      b.tie("next " + i, Relations.distance(before, p, 10));
      before = p;
    }
    Problem problem = b.build();
    SolveReport report = Solver.solve(problem, SETTINGS);
    // 60 variables and 30 rows: some 54,000 products are 210 units
    for (long allowed : new long[] {150, 1_000}) {
      SolverSettings bounded = new SolverSettings(1e-7, 1e-7, 200, 1e-7, 100, 12, true, allowed);
      Diagnosis d = Solver.diagnose(problem, report, bounded);
      assertThat(d.decided()).isEqualTo(allowed == 1_000);
      assertThat(d.degreesOfFreedom()).isEqualTo(30);
      assertThat(d.freedoms()).hasSize(allowed == 1_000 ? 30 : 0);
      assertThat(d.rank()).isEqualTo(allowed == 1_000 ? 30 : 0);
    }
  }
}
