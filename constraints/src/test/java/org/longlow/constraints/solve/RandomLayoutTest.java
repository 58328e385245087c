package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
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

/**
 * Ten thousand small layouts whose verdict is known from how they are built, from 1e-3 mm to 1e5
 * mm.
 */
class RandomLayoutTest {
  private static final int BATCHES = 50;
  private static final int PER_BATCH = 29;

  /** So many of each batch are tried, all in a long run. */
  private static final int TRIED = Boolean.getBoolean("longlow.long") ? PER_BATCH : 9;

  /**
   * One in so many contradictions is explained; the search for the smallest set takes most of the
   * time.
   */
  private static final int EXPLAINED = 4;

  /**
   * Frameworks worse than this are left out: their verdict would hang on tolerances instead of
   * geometry.
   */
  private static final double POOREST = 3e-3;

  static IntStream batches() {
    return IntStream.range(0, BATCHES);
  }

  private static double size(SplittableRandom random) {
    return Math.pow(10, random.nextDouble(-3, 5));
  }

  private static Framework framework(SplittableRandom random) {
    while (true) {
      Framework f = new Framework(random, 3 + random.nextInt(6), size(random));
      if (f.quality() > POOREST) {
        return f;
      }
    }
  }

  private static void sound(SolveReport report, String what) {
    for (double v : report.x()) {
      assertThat(v).as(what).isFinite();
    }
    assertThat(report.maxResidualMm()).as(what).isNotNaN();
  }

  private static SolveReport solve(Problem problem, String what) {
    SolveReport report = Solver.solveAndDiagnose(problem, SolverSettings.DEFAULT);
    sound(report, what);
    return report;
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void rigidFrameworksAreSolvedAndSettled(int batch) {
    for (int k = 0; k < TRIED; k++) {
      long seed = 1_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      Framework f = framework(random);
      Problem.Builder b = f.pins(random, 0.05 * f.size);
      f.hold(b);
      f.bars.forEach(bar -> f.bar(b, bar, 1));
      SolveReport report = solve(b.build(), "seed " + seed);
      assertThat(report.status()).as("seed " + seed).isEqualTo(SolveStatus.SOLVED);
      Diagnosis d = report.diagnosis().orElseThrow();
      assertThat(d.rank()).as("seed " + seed).isEqualTo(2 * f.pins());
      assertThat(d.degreesOfFreedom()).as("seed " + seed).isZero();
      assertThat(d.redundant()).as("seed " + seed).isEmpty();
    }
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void barsLeftOutAreFreedoms(int batch) {
    for (int k = 0; k < TRIED; k++) {
      long seed = 2_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      Framework f = framework(random);
      int out = 1 + random.nextInt(f.bars.size());
      Collections.shuffle(f.bars, new java.util.Random(seed));
      Problem.Builder b = f.pins(random, 0.1 * f.size);
      boolean held = random.nextBoolean();
      if (held) {
        b.tie("place", Relations.fix(f.pin(0), f.px[0], f.pz[0]));
      }
      f.bars.subList(out, f.bars.size()).forEach(bar -> f.bar(b, bar, 1));
      Problem problem = b.build();
      SolveReport report = solve(problem, "seed " + seed);
      assertThat(report.status()).as("seed " + seed).isEqualTo(SolveStatus.SOLVED);
      Diagnosis d = report.diagnosis().orElseThrow();
      int free = 2 * f.pins() - (f.bars.size() - out) - (held ? 2 : 0);
      assertThat(d.degreesOfFreedom()).as("seed " + seed).isEqualTo(free);
      assertThat(d.freedoms()).as("seed " + seed).hasSize(free).allMatch(Freedom::lasting);
      assertThat(d.redundant()).isEmpty();
      for (Freedom freedom : d.freedoms()) {
        assertKeepsTies(problem, report.x(), freedom, "seed " + seed);
      }
      assertNearest(problem, report.x(), d, "seed " + seed);
    }
  }

  /** To first order, no tie changes along a freedom. */
  private static void assertKeepsTies(Problem problem, double[] x, Freedom freedom, String what) {
    double[] move = new double[x.length];
    freedom.moves().forEach((name, v) -> move[problem.indexOf(name)] = v);
    assertThat(freedom.moves().get(freedom.lead())).as(what).isEqualTo(1);
    for (SolverTie tie : problem.ties()) {
      for (Relation relation : tie.relations()) {
        int[] used = relation.variables();
        double[] g = new double[used.length];
        relation.evaluate(x, g);
        double sum = 0;
        double length = 0;
        for (int i = 0; i < used.length; i++) {
          sum += g[i] * move[used[i]];
          length += g[i] * g[i];
        }
        assertThat(sum / Math.sqrt(length)).as(what).isCloseTo(0, offset(1e-6));
      }
    }
  }

  /** First-order optimality: the way back to the start has no part along any freedom. */
  private static void assertNearest(Problem problem, double[] x, Diagnosis d, String what) {
    double[] start = problem.start();
    for (Freedom freedom : d.freedoms()) {
      double sum = 0;
      double length = 0;
      for (var entry : freedom.moves().entrySet()) {
        int i = problem.indexOf(entry.getKey());
        sum += entry.getValue() * (start[i] - x[i]);
        length += entry.getValue() * entry.getValue();
      }
      assertThat(sum / Math.sqrt(length)).as(what).isCloseTo(0, offset(1e-5));
    }
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void barsTooManyThatFitAreRedundant(int batch) {
    for (int k = 0; k < TRIED; k++) {
      long seed = 3_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      Framework f = framework(random);
      int[] extra = f.missing(random);
      if (extra == null) {
        continue;
      }
      Problem.Builder b = f.pins(random, 0.05 * f.size);
      f.hold(b);
      f.bars.forEach(bar -> f.bar(b, bar, 1));
      f.bar(b, extra, 1);
      SolveReport report = solve(b.build(), "seed " + seed);
      // From a shaken start the bars may first meet in a mirrored shape in which the extra one does
      // not fit; the
      // search must still find the shape in which it does.
      assertThat(report.status()).as("seed " + seed).isEqualTo(SolveStatus.SOLVED);
      Diagnosis d = report.diagnosis().orElseThrow();
      assertThat(d.degreesOfFreedom()).as("seed " + seed).isZero();
      assertThat(d.redundant()).as("seed " + seed).hasSize(1);
      assertThat(d.redundant().get(0).tie()).isEqualTo(Framework.name(extra));
      assertThat(d.redundant().get(0).wholly()).isTrue();
      // What it follows from is a set with which it makes a circuit of the rigidity matrix.
      List<int[]> circuit = barsNamed(f, extra, d.redundant().get(0).impliedBy());
      circuit.add(extra);
      assertIsCircuit(f, circuit, "seed " + seed);
    }
  }

  private static List<int[]> barsNamed(Framework f, int[] extra, List<String> names) {
    List<int[]> all = new ArrayList<>(f.bars);
    all.add(extra);
    List<int[]> found = new ArrayList<>();
    for (int[] bar : all) {
      if (names.contains(Framework.name(bar))) {
        found.add(bar);
      }
    }
    return found;
  }

  /** Dependent, and independent with any one left out: by singular values, not by the solver. */
  private static void assertIsCircuit(Framework f, List<int[]> circuit, String what) {
    assertThat(f.rankOf(circuit)).as(what).isEqualTo(circuit.size() - 1);
    for (int i = 0; i < circuit.size(); i++) {
      List<int[]> rest = new ArrayList<>(circuit);
      rest.remove(i);
      assertThat(f.rankOf(rest)).as(what).isEqualTo(rest.size());
    }
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void barsTooManyThatDoNotFitAreNamedWithTheirCircuit(int batch) {
    for (int k = 0; k < (TRIED + 5) / 6; k++) {
      long seed = 4_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      Framework f = framework(random);
      int[] extra = f.missing(random);
      if (extra == null) {
        continue;
      }
      Problem.Builder b = f.pins(random, 0.01 * f.size);
      f.hold(b);
      f.bars.forEach(bar -> f.bar(b, bar, 1));
      f.bar(b, extra, random.nextBoolean() ? 1.04 : 0.96);
      Problem problem = b.build();
      SolveReport report = solve(problem, "seed " + seed);
      if (report.status().holds()) {
        // A mirrored or flexed shape in which the wrong bar fits: true if every bar has its length.
        for (SolverTie tie : problem.ties()) {
          for (Relation relation : tie.relations()) {
            assertThat(relation.evaluate(report.x(), null))
                .as("seed " + seed)
                .isCloseTo(0, offset(1e-4));
          }
        }
        continue;
      }
      assertThat(report.status()).as("seed " + seed).isEqualTo(SolveStatus.CONTRADICTS);
      List<String> named = report.diagnosis().orElseThrow().contradiction();
      assertThat(named).as("seed " + seed).contains(Framework.name(extra));
      assertThat(named).as("seed " + seed).doesNotContain("place", "direction");
      List<int[]> bars = barsNamed(f, extra, named);
      assertThat(bars).as("seed " + seed).hasSameSizeAs(named);
      for (int i = 0; i < bars.size(); i++) {
        List<int[]> rest = new ArrayList<>(bars);
        rest.remove(i);
        assertCanHold(f, problem, rest, report.x(), "seed " + seed + " without " + named.get(i));
      }
      if (f.rankOf(bars) == bars.size()) {
        // Not a circuit to first order, so the bars do not reach: a search that knows nothing of
        // ours must fail too.
        assertThat(bestOfManyStarts(f, problem, bars, random))
            .as("seed " + seed)
            .isGreaterThan(1e-5 * f.size);
      }
    }
  }

  /** The bars that are left hold: shown by a layout that has their lengths. */
  private static void assertCanHold(
      Framework f, Problem problem, List<int[]> bars, double[] rest, String what) {
    List<String> names = bars.stream().map(Framework::name).toList();
    Problem some =
        problem.withTies(problem.ties().stream().filter(t -> names.contains(t.name())).toList());
    SolverSettings longSearch = SolverSettings.DEFAULT.withRestarts(60).withKeepTurns(false);
    SolveReport answer = Solver.solve(some, longSearch);
    if (!answer.status().holds()) {
      answer = Solver.solve(some.withStart(rest), longSearch);
    }
    double[] x = answer.x();
    for (SolverTie tie : some.ties()) {
      assertThat(tie.relations().get(0).evaluate(x, null))
          .as(what)
          .isCloseTo(0, offset(1e-6 + 1e-12 * f.size));
    }
  }

  /**
   * Least root of the sum of squares of bar errors that Hipparchus finds from many random starts.
   */
  private static double bestOfManyStarts(
      Framework f, Problem problem, List<int[]> bars, SplittableRandom random) {
    List<String> names = bars.stream().map(Framework::name).toList();
    List<Relation> relations =
        problem.ties().stream()
            .filter(t -> names.contains(t.name()))
            .map(t -> t.relations().get(0))
            .toList();
    double best = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 30; k++) {
      double[] start = new double[2 * f.pins()];
      for (int i = 0; i < start.length; i++) {
        start[i] = f.size * random.nextDouble(-0.5, 1.5);
      }
      best = Math.min(best, HipparchusReference.solve(relations, start).cost());
    }
    return best;
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void trianglesThatCannotCloseAreNamed(int batch) {
    for (int k = 0; k < TRIED; k++) {
      long seed = 5_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      double size = size(random);
      double a = size * random.nextDouble(0.2, 1);
      double c = size * random.nextDouble(0.2, 1);
      double tooLong = (a + c) * random.nextDouble(1.01, 3);
      Problem.Builder b = Problem.builder();
      Pt[] p = new Pt[4];
      for (int i = 0; i < 4; i++) {
        p[i] = b.pin("p" + i, size * random.nextDouble(), size * random.nextDouble());
      }
      b.tie("innocent", Relations.distance(p[0], p[3], size * random.nextDouble(0.1, 2)));
      b.tie("one", Relations.distance(p[0], p[1], a));
      b.tie("two", Relations.distance(p[1], p[2], c));
      b.tie("bystander", Relations.horizontal(p[0], p[3], Quantity.of(0)));
      b.tie("three", Relations.distance(p[2], p[0], tooLong));
      Problem problem = b.build();
      SolveReport report = Solver.solve(problem);
      sound(report, "seed " + seed);
      assertThat(report.status()).as("seed " + seed).isEqualTo(SolveStatus.CONTRADICTS);
      if (k % EXPLAINED == 0) {
        assertThat(Solver.diagnose(problem, report, SolverSettings.DEFAULT).contradiction())
            .as("seed " + seed)
            .containsExactly("one", "two", "three");
      }
    }
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void degenerateStartsAreSolvedAllTheSame(int batch) {
    for (int k = 0; k < TRIED; k++) {
      long seed = 6_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      double size = size(random);
      Problem.Builder b = Problem.builder();
      int kind = random.nextInt(4);
      Pt[] p = new Pt[4];
      for (int i = 0; i < 4; i++) {
        // All on one spot, on a level line, on a plumb line, or two on one spot.
        double x = kind == 0 || kind == 2 ? 0 : size * (kind == 3 && i == 1 ? 0 : i);
        double z = kind == 2 ? size * i : 0;
        p[i] = b.pin("p" + i, x, z);
      }
      // A rhombus with a brace: equilateral triangles.
      b.tie("place", Relations.fix(p[0], 0, 0));
      b.tie("a", Relations.distance(p[0], p[1], size));
      b.tie("b", Relations.distance(p[1], p[2], size));
      b.tie("c", Relations.distance(p[2], p[0], size));
      b.tie("d", Relations.distance(p[2], p[3], size));
      b.tie("e", Relations.distance(p[3], p[1], size));
      SolveReport report = solve(b.build(), "seed " + seed);
      assertThat(report.status().holds()).as("seed " + seed + " " + report.status()).isTrue();
      assertThat(report.shaken()).as("seed " + seed).isNotEmpty();
      assertThat(report.diagnosis().orElseThrow().degreesOfFreedom()).as("seed " + seed).isIn(1, 3);
    }
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void zeroLengthsAndParallelLinesAreSolved(int batch) {
    for (int k = 0; k < TRIED; k++) {
      long seed = 7_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      double size = size(random);
      Problem.Builder b = Problem.builder();
      Pt[] p = new Pt[6];
      for (int i = 0; i < 6; i++) {
        p[i] = b.pin("p" + i, size * random.nextDouble(), size * random.nextDouble());
      }
      double w = size * random.nextDouble(0.3, 1);
      double h = size * random.nextDouble(0.3, 1);
      // A rectangle from right angles and parallels, one of them too many, and a pin on top of a
      // corner.
      b.tie("base", Relations.distance(p[0], p[1], w));
      b.tie("side", Relations.distance(p[1], p[2], h));
      b.tie("square", Relations.perpendicular(p[0], p[1], p[1], p[2]));
      b.tie("top along", Relations.parallel(p[0], p[1], p[3], p[2]));
      b.tie("side along", Relations.parallel(p[1], p[2], p[0], p[3]));
      b.tie("square again", Relations.perpendicular(p[1], p[2], p[2], p[3]));
      b.tie("on top", Relations.coincide(p[2], p[4]));
      b.tie("no length", Relations.distance(p[5], p[3], 0));
      SolveReport report = solve(b.build(), "seed " + seed);
      assertThat(report.status().holds()).as("seed " + seed + " " + report.status()).isTrue();
      double[] x = report.x();
      assertThat(Math.hypot(x[10] - x[6], x[11] - x[7])).as("seed " + seed).isLessThan(1e-6);
      assertThat(report.diagnosis().orElseThrow().redundant())
          .as("seed " + seed)
          .extracting(Redundancy::tie)
          .contains("square again");
    }
  }

  @ParameterizedTest(name = "batch {0}")
  @MethodSource("batches")
  void limitsThatCanHoldDoHoldAndOthersFailByTheLeast(int batch) {
    for (int k = 0; k < TRIED; k++) {
      long seed = 8_000_000L + batch * PER_BATCH + k;
      SplittableRandom random = new SplittableRandom(seed);
      double size = size(random);
      double a = size * random.nextDouble(0.3, 1);
      double c = size * random.nextDouble(0.3, 1);
      double reach = a + c;
      double wanted = reach * random.nextDouble(0.5, 1.5);
      if (Math.abs(wanted / reach - 1) < 1e-3) {
        continue;
      }
      Problem.Builder b = Problem.builder();
      Pt elbow = b.pin("elbow", a * random.nextDouble(-1, 1), a * random.nextDouble(-1, 1));
      Pt hand = b.pin("hand", size * random.nextDouble(-1, 1), size * random.nextDouble(-1, 1));
      b.tie("upper", Relations.distance(Pt.at(0, 0), elbow, a));
      b.tie("fore", Relations.distance(elbow, hand, c));
      b.limit("out", Relations.equal(hand.x(), Quantity.of(wanted)));
      b.limit("up", Relations.equal(hand.z(), Quantity.of(-3 * size)));
      Problem problem = b.build();
      SolveReport report = Solver.solve(problem);
      sound(report, "seed " + seed);
      assertThat(report.failedTies()).as("seed " + seed).isEmpty();
      if (wanted < reach) {
        assertThat(report.status().holds()).as("seed " + seed + " " + report.status()).isTrue();
        assertThat(report.x()[2]).as("seed " + seed).isGreaterThan(wanted - 1e-6);
      } else {
        assertThat(report.status()).as("seed " + seed).isEqualTo(SolveStatus.LIMIT_FAILS);
        assertThat(report.failedLimits()).as("seed " + seed).hasSize(1);
        assertThat(report.failedLimits().get(0).limit()).isEqualTo("out");
        assertThat(report.failedLimits().get(0).shortfallMm())
            .as("seed " + seed)
            .isCloseTo(wanted - reach, offset(1e-5 * reach));
        if (k % EXPLAINED == 0) {
          assertThat(Solver.diagnose(problem, report, SolverSettings.DEFAULT).contradiction())
              .as("seed " + seed)
              .containsExactly("upper", "fore", "out");
        }
      }
    }
  }
}
