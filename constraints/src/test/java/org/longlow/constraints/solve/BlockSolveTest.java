package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.block.BlockOrder;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverLimit;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.constraints.solve.relation.Relations;

/** Groups solved by their blocks answer as the same groups solved whole. */
class BlockSolveTest {
  private static final double SAME_MM = 1e-6;
  private static final int PER_BATCH = 40;

  /** So many of each batch are tried, all in a long run. */
  private static final int TRIED = Boolean.getBoolean("longlow.long") ? PER_BATCH : 16;

  static LongStream batches() {
    return LongStream.range(0, 20);
  }

  /** A report and whether blocks gave it. */
  private record Answer(SolveReport report, int inBlocks) {}

  private static Answer solve(Problem problem, boolean inBlocks) {
    SolveSession session = new SolveSession(problem, SolverSettings.DEFAULT, inBlocks);
    SolveReport report = session.solve();
    return new Answer(report, session.solvedInBlocks());
  }

  private static void assertSame(
      Problem problem, SolveReport blocks, SolveReport whole, boolean byBlocks, String what) {
    if (byBlocks) {
      // The blocks only ever answer for a plain success.
      assertThat(blocks.status()).as(what).isEqualTo(SolveStatus.SOLVED);
      assertThat(blocks.turned()).as(what).isEmpty();
      assertThat(blocks.shaken()).as(what).isEmpty();
      assertHolds(problem, blocks.x(), what);
      assertThat(whole.status().holds()).as(what + " " + whole.status()).isTrue();
      if (whole.status() == SolveStatus.SOLVED_ROUGHLY
          || !whole.turned().isEmpty()
          || !whole.shaken().isEmpty()) {
        // The whole is content with less than the blocks found.
        return;
      }
    }
    assertThat(blocks.status()).as(what).isEqualTo(whole.status());
    assertThat(blocks.failedTies()).as(what).isEqualTo(whole.failedTies());
    assertThat(blocks.activeLimits()).as(what).isEqualTo(whole.activeLimits());
    assertThat(blocks.failedLimits()).as(what).isEqualTo(whole.failedLimits());
    assertThat(blocks.shaken()).as(what).isEqualTo(whole.shaken());
    assertThat(blocks.turned()).as(what).isEqualTo(whole.turned());
    assertThat(blocks.x()).as(what).containsExactly(whole.x(), offset(SAME_MM));
  }

  private static void assertHolds(Problem problem, double[] x, String what) {
    for (SolverTie tie : problem.ties()) {
      for (Relation relation : tie.relations()) {
        assertThat(relation.evaluate(x, null)).as(what).isCloseTo(0, offset(SAME_MM));
      }
    }
    for (SolverLimit limit : problem.limits()) {
      assertThat(limit.roomMm(x)).as(what).isGreaterThan(-SAME_MM);
    }
  }

  /** Solves both ways and compares; whether blocks did it. */
  private static boolean compare(Problem problem, String what) {
    Answer blocks = solve(problem, true);
    Answer whole = solve(problem, false);
    assertThat(whole.inBlocks()).isZero();
    boolean byBlocks = blocks.inBlocks() > 0;
    assertSame(problem, blocks.report(), whole.report(), byBlocks, what);
    return byBlocks;
  }

  /**
   * A rigid frame, arms that swing on it, and struts between arms and frame; places, limits and
   * wishes over both.
   *
   * @param oddity 0 none, 1 a bar too many that fits, 2 one that does not, 3 a limit on the frame
   *     that cannot hold, 4 an arm at its dead point
   */
  private static Problem chassis(SplittableRandom random, int oddity) {
    Framework f;
    do {
      f = new Framework(random, 4 + random.nextInt(6), 1000);
    } while (f.quality() < 0.01);
    // Far starts turn some chain over and are for the whole; near ones are for the blocks.
    double spread = Math.pow(10, random.nextDouble(-1, 1.4));
    Problem.Builder b = f.pins(random, spread);
    f.hold(b);
    for (int[] bar : f.bars) {
      f.bar(b, bar, 1);
    }
    int[] extra = f.missing(random);
    if (extra != null && (oddity == 1 || oddity == 2)) {
      f.bar(b, extra, oddity == 1 ? 1 : 1.03);
    }
    List<Pt> arms = new ArrayList<>();
    List<Integer> roots = new ArrayList<>();
    int count = 3 + random.nextInt(5);
    for (int k = 0; k < count; k++) {
      int root = random.nextInt(f.pins());
      double angle = random.nextDouble(-Math.PI, Math.PI);
      double length = random.nextDouble(150, 400);
      double stretch = oddity == 4 && k == 0 ? 1 : random.nextDouble(0.95, 1);
      Pt end =
          b.pin(
              "arm " + k,
              f.px[root] + length * Math.cos(angle),
              f.pz[root] + length * Math.sin(angle));
      b.tie("arm " + k, Relations.distance(f.pin(root), end, stretch * length));
      if (oddity == 4 && k == 0) {
        // Stretched out straight to a place just as far away.
        Pt far = Pt.at(f.px[root] + 2 * length, f.pz[root]);
        b.tie("stretched", Relations.distance(end, far, length));
      }
      arms.add(end);
      roots.add(root);
    }
    for (int k = 0; k + 1 < count; k++) {
      switch (random.nextInt(6)) {
        case 0 ->
            b.limit(
                "apart " + k, Relations.distance(arms.get(k), arms.get(k + 1), Quantity.of(300)));
        case 1 ->
            b.limit(
                "high " + k,
                Relations.equal(arms.get(k).z(), Quantity.of(f.pz[roots.get(k)] + 20)),
                Relations.distance(
                    arms.get(k), f.pin((roots.get(k) + 1) % f.pins()), Quantity.of(100)));
        case 2 ->
            b.wish(
                "level " + k,
                random.nextDouble(0.1, 10),
                Relations.vertical(arms.get(k), f.pin(random.nextInt(f.pins())), Quantity.of(30)));
        case 3 -> b.wish("frame " + k, 3, Relations.fix(f.pin(roots.get(k)).x(), 77));
        case 4 ->
            b.tie(
                "coupler " + k,
                Relations.distance(
                    arms.get(k),
                    arms.get(k + 1),
                    apart(b.build().start(), arms.get(k), arms.get(k + 1))
                        * random.nextDouble(0.98, 1.02)));
        default ->
            b.limit("frame " + k, Relations.equal(f.pin(k % f.pins()).x(), Quantity.of(-50)));
      }
    }
    if (oddity == 3) {
      b.limit("no room", Relations.equal(Quantity.of(f.px[1] - 20), f.pin(1).x()));
    }
    return b.build();
  }

  private static double apart(double[] x, Pt a, Pt b) {
    return Math.hypot(
        a.x().value(x, null) - b.x().value(x, null), a.z().value(x, null) - b.z().value(x, null));
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void chassisWithArmsLimitsAndWishesAnswerAsTheWhole(long batch) {
    int inBlocks = 0;
    for (int k = 0; k < TRIED; k++) {
      long seed = 30_000 + batch * PER_BATCH + k;
      inBlocks += compare(chassis(new SplittableRandom(seed), 0), "seed " + seed) ? 1 : 0;
    }
    assertThat(inBlocks).isGreaterThanOrEqualTo(TRIED / 4);
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void oddChassisAnswerAsTheWhole(long batch) {
    for (int k = 0; k < TRIED / 4; k++) {
      int oddity = 1 + k % 4;
      long seed = 50_000 + batch * PER_BATCH + k;
      String what = "seed " + seed + " odd " + oddity;
      boolean byBlocks = compare(chassis(new SplittableRandom(seed), oddity), what);
      if (oddity == 3) {
        assertThat(byBlocks).as(what).isFalse();
      }
    }
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void editsFromTheLastAnswerAnswerAsTheWhole(long batch) {
    // One session each way, one frame, its bars stretched a little in every step.
    SplittableRandom random = new SplittableRandom(70_000 + batch);
    Framework f;
    do {
      f = new Framework(random, 8, 1000);
    } while (f.quality() < 0.02);
    double[] x = null;
    SolveSession blocks = null;
    SolveSession whole = null;
    int inBlocks = 0;
    for (int k = 0; k < 20; k++) {
      Problem.Builder b = f.pins(new SplittableRandom(batch), 0);
      f.hold(b);
      for (int[] bar : f.bars) {
        f.bar(b, bar, 1 + 0.002 * random.nextDouble(-1, 1));
      }
      b.limit("above", Relations.equal(f.pin(7).z(), Quantity.of(-100)));
      b.wish("idle", 5, Relations.fix(f.pin(6).x(), -300));
      Problem problem = x == null ? b.build() : b.build().withStart(x);
      if (blocks == null) {
        blocks = new SolveSession(problem, SolverSettings.DEFAULT, true);
        whole = new SolveSession(problem, SolverSettings.DEFAULT, false);
      }
      SolveReport report = blocks.solve(problem);
      boolean byBlocks = blocks.solvedInBlocks() > 0;
      assertSame(problem, report, whole.solve(problem), byBlocks, "batch " + batch + " step " + k);
      inBlocks += byBlocks ? 1 : 0;
      assertThat(byBlocks ? report.iterations() : 1).isLessThan(10);
      x = report.x();
    }
    assertThat(inBlocks).isGreaterThan(10);
  }

  @Test
  void tieTooManyThatStructureCountsAsOneIsLeftToTheWhole() {
    // Three pins on one level by three ties, one of which follows from the others: the level itself
    // is open, though there are as many ties as unknowns and structure sees no gap.
    Problem.Builder b = Problem.builder();
    Pt p = b.pin("p", 10, 10);
    Pt q = b.pin("q", 90, 40);
    Pt r = b.pin("r", 190, 70);
    b.tie("pq", Relations.vertical(p, q, Quantity.of(0)));
    b.tie("qr", Relations.vertical(q, r, Quantity.of(0)));
    b.tie("pr", Relations.vertical(p, r, Quantity.of(0)));
    b.tie("place", Relations.fix(p.x(), 0));
    b.tie("near", Relations.distance(p, q, 100));
    b.tie("far", Relations.distance(q, r, 100));
    Problem problem = b.build();
    for (Group group : Group.split(problem)) {
      assertThat(BlockOrder.of(group, problem).blocks())
          .allMatch(block -> block.part() == BlockOrder.Part.SQUARE);
    }
    Answer blocks = solve(problem, true);
    assertThat(blocks.inBlocks()).isZero();
    assertSame(problem, blocks.report(), solve(problem, false).report(), false, "levels");
    // Nearest to the start: the level is the mean of the three heights.
    assertThat(blocks.report().x())
        .containsExactly(new double[] {0, 40, 100, 40, 200, 40}, offset(SAME_MM));
    Diagnosis d = Solver.diagnose(problem, blocks.report(), SolverSettings.DEFAULT);
    assertThat(d.degreesOfFreedom()).isEqualTo(1);
    assertThat(d.redundant()).extracting(Redundancy::tie).containsExactly("pr");
  }

  @Test
  void toggleOnTheVergeOfItsDeadPointIsLeftToTheWhole() {
    // The sine between the bars is 0.87 and 6e-5, on either side of what counts as regular.
    for (double height : new double[] {50, 0.003}) {
      Problem.Builder b = Problem.builder();
      double span = 2 * Math.sqrt(100 * 100 - height * height);
      Pt knee = b.pin("knee", span / 2, height);
      b.tie("thigh", Relations.distance(Pt.at(0, 0), knee, 100));
      b.tie("shank", Relations.distance(knee, Pt.at(span, 0), 100));
      assertThat(solve(b.build(), true).inBlocks()).isEqualTo(height > 1 ? 1 : 0);
    }
  }

  @Test
  void limitOnWhatTiesSettleChoosesTheOtherMeetingOfTheBars() {
    // The start is near the lower meeting of two bars, the limit wants the upper one.
    Problem.Builder b = Problem.builder();
    Pt a = StillPin.in(b, "a", 0, 0);
    Pt c = StillPin.in(b, "c", 160, 0);
    Pt p = b.pin("p", 80, -5);
    Pt arm = b.pin("arm", 80, 100);
    b.tie("left", Relations.distance(a, p, 100));
    b.tie("right", Relations.distance(c, p, 100));
    b.tie("arm", Relations.distance(p, arm, 50));
    b.limit("upper", Relations.equal(p.z(), Quantity.of(10)));
    Problem problem = b.build();
    Answer blocks = solve(problem, true);
    assertThat(blocks.inBlocks()).isZero();
    assertSame(problem, blocks.report(), solve(problem, false).report(), false, "bars");
    assertThat(blocks.report().x()[5]).isCloseTo(60, offset(SAME_MM));
  }

  @Test
  void blocksFindAnAnswerFromFarAwayThatTakesTheWholeLong() {
    // Each measure is a wavy formula of the one before: all together, steps from a start that is
    // wrong for the first say nothing about the last.
    Problem problem = inTurn(90, y -> 200 * Math.sin(y / 30), y -> 200.0 / 30 * Math.cos(y / 30));
    assertFoundInTurn(problem, 90, y -> 200 * Math.sin(y / 30));
    assertThat(solve(problem, false).report().iterations())
        .isGreaterThan(10 * solve(problem, true).report().iterations());
  }

  @Test
  void blockWhoseInputMovedIsSolvedAnewEvenWhereItsFirstSlopeIsNought() {
    // At the start every square is 0 with slope 0, so to first order nothing moves and all holds.
    assertFoundInTurn(inTurn(1.02, y -> y * y, y -> 2 * y), 1.02, y -> y * y);
  }

  /**
   * Twelve measures that start at 0: the first is tied to a value, each other to the one before.
   */
  private static Problem inTurn(
      double first, DoubleUnaryOperator formula, DoubleUnaryOperator slope) {
    Problem.Builder b = Problem.builder();
    for (int k = 0; k < 12; k++) {
      b.variable("m" + k, 0);
    }
    b.tie("m0", Relations.fix(Quantity.variable(0), first));
    for (int k = 1; k < 12; k++) {
      int from = k - 1;
      b.tie(
          "m" + k,
          Relations.equal(
              Quantity.variable(k),
              Quantity.formula(
                  new int[] {from},
                  (y, g) -> {
                    if (g != null) {
                      g[0] = slope.applyAsDouble(y[from]);
                    }
                    return formula.applyAsDouble(y[from]);
                  })));
    }
    return b.build();
  }

  private static void assertFoundInTurn(
      Problem problem, double first, DoubleUnaryOperator formula) {
    Answer blocks = solve(problem, true);
    assertThat(blocks.inBlocks()).isEqualTo(1);
    assertThat(blocks.report().status()).isEqualTo(SolveStatus.SOLVED);
    double expected = first;
    for (double value : blocks.report().x()) {
      assertThat(value).isCloseTo(expected, offset(SAME_MM));
      expected = formula.applyAsDouble(value);
    }
  }

  @Test
  void pointerOnSettledPinMovesNothingAndPointerOnAnArmMovesTheArmOnly() {
    Problem.Builder b = Problem.builder();
    Pt a = StillPin.in(b, "a", 0, 0);
    Pt c = StillPin.in(b, "c", 160, 0);
    Pt p = b.pin("p", 80, 60);
    Pt arm = b.pin("arm", 80, 110);
    Pt other = b.pin("other", 130, 60);
    b.tie("left", Relations.distance(a, p, 100));
    b.tie("right", Relations.distance(c, p, 100));
    b.tie("arm", Relations.distance(p, arm, 50));
    b.tie("other", Relations.distance(p, other, 50));
    b.wish("low", 1, Relations.fix(other.z(), 60));
    Problem problem = b.build();
    double[] begin = Solver.solve(problem).x();
    DragSession settled = Solver.drag(problem, begin, SolverSettings.DEFAULT, 4, 5);
    DragSession swung = Solver.drag(problem, begin, SolverSettings.DEFAULT, 6, 7);
    for (int k = 0; k < 20; k++) {
      SolveReport report = settled.moveTo(80 + 10 * k, 60 - 5 * k);
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      assertThat(report.x()).containsExactly(begin, offset(SAME_MM));
      double angle = 1.5 + 0.2 * k;
      report = swung.moveTo(80 + 70 * Math.cos(angle), 60 + 70 * Math.sin(angle));
      assertThat(report.status()).isEqualTo(SolveStatus.SOLVED);
      assertThat(report.x()[6]).isCloseTo(80 + 50 * Math.cos(angle), offset(1e-4));
      assertThat(report.x()[7]).isCloseTo(60 + 50 * Math.sin(angle), offset(1e-4));
      assertThat(report.x()[8]).isCloseTo(130, offset(SAME_MM));
    }
  }
}
