package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.solve.Conflict;
import org.longlow.constraints.solve.DragSession;
import org.longlow.constraints.solve.LimitFailure;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverLimit;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.Study;

/**
 * A gap asked for between a part and whoever sits on the machine, kept by the solver. Gaps are
 * measured here by JTS on people seated anew, not by what the solver itself uses.
 */
class PersonGapTest {

  /** The solver's promise, and the rounding of two ways to measure. */
  private static final double TRUE_MM = 1e-6;

  private static Layout trestle(String limits, String... changes) {
    try (InputStream in =
        PersonGapTest.class.getResourceAsStream("/org/longlow/constraints/suit/trestle.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      text = text.replace("\"limits\": {", "\"limits\": {" + limits + ",");
      for (int i = 0; i < changes.length; i += 2) {
        assertThat(text).contains(changes[i]);
        text = text.replace(changes[i], changes[i + 1]);
      }
      ReadResult result = LayoutReader.read(text, null);
      assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
      return ((ReadResult.Read) result).layout();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String room(double mm) {
    return "\"knees\": {\"limit\": \"gap\", \"parts\": [\"hoodPlate\", \"rider\"], \"from\": \"%s mm\"}"
        .formatted(mm);
  }

  /** Least distance of two sets of prisms by JTS, mm; 0 where they meet. */
  private static double apartMm(List<Prism> some, List<Prism> others) {
    double least = Double.POSITIVE_INFINITY;
    for (Prism p : some) {
      for (Prism q : others) {
        double across = Math.max(0, p.across().gap(q.across()));
        Geometry a = p.outline();
        least = Math.min(least, Math.hypot(across, a.distance(q.outline())));
      }
    }
    return least;
  }

  private static double gapMm(Layout layout, Places places, String part, String person) {
    return gapMm(layout, places, part, Seats.of(layout, places), person);
  }

  private static double gapMm(
      Layout layout, Places places, String part, List<Sitting> sittings, String person) {
    Sitting sitting =
        sittings.stream().filter(s -> s.person().equals(person)).findFirst().orElseThrow();
    return apartMm(sitting.prisms(), Shapes.of(layout.parts().get(part), places, false).prisms());
  }

  @Test
  void kneesComeClearOfTheHood() {
    Layout free = trestle("\"spare\": {\"limit\": \"height\", \"pins\": [\"grip\"], \"from\": 1}");
    double before = gapMm(free, Placer.place(free).places(), "hoodPlate", "Tor");
    double asked = before + 60;
    Layout layout = trestle(room(asked));
    Placed placed = Placer.place(layout);
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(gapMm(layout, placed.places(), "hoodPlate", "Tor"))
        .isCloseTo(asked, within(TRUE_MM));
    assertThat(gapMm(layout, placed.places(), "hoodPlate", "Mara")).isGreaterThan(asked - TRUE_MM);
  }

  @Test
  void aLimitThatCannotHoldSaysForWhomAndHowFar() {
    // the pegs may move only so far, and the hood not at all
    Layout layout = trestle(room(600));
    Placed placed = Placer.place(layout);
    SolveReport report = placed.report();
    assertThat(report.status()).isEqualTo(SolveStatus.LIMIT_FAILS);
    assertThat(report.failedLimits())
        .extracting(LimitFailure::limit)
        .contains("knees (Mara)", "knees (Tor)");
    for (LimitFailure failure : report.failedLimits()) {
      if (failure.limit().startsWith("knees")) {
        String who = failure.limit().replaceAll(".*\\((.*)\\)", "$1");
        double gap = gapMm(layout, placed.places(), "hoodPlate", who);
        assertThat(failure.shortfallMm()).as(who).isCloseTo(600 - gap, within(1e-3));
      }
    }
    assertThat(report.diagnosis().orElseThrow().contradiction())
        .anyMatch(n -> n.startsWith("knees"));
  }

  static DoubleStream missed() {
    return Boolean.getBoolean("longlow.long") ? DoubleStream.of(450, 600) : DoubleStream.of(450);
  }

  /** A fifth of the work allowed for the solve, and for the explanation a fifth again. */
  @ParameterizedTest(name = "{0} mm")
  @MethodSource("missed")
  void aGapThatCannotHoldIsExplainedWithLittleWork(double mm) {
    Layout layout = trestle(room(mm));
    LayoutProblem posed = LayoutProblem.of(layout);
    SolverSettings little =
        Changed.with(
            SolverSettings.DEFAULT,
            Map.of("workAllowed", SolverSettings.DEFAULT.workAllowed() / 5));
    SolveReport report = Solver.solveAndDiagnose(posed.problem(), little);
    assertThat(report.status()).isEqualTo(SolveStatus.LIMIT_FAILS);
    assertThat(report.diagnosis().orElseThrow().decided()).isTrue();
    Conflict conflict = report.diagnosis().orElseThrow().conflict().orElseThrow();
    assertThat(conflict.missed()).startsWith("knees");
    assertThat(conflict.missMm()).isPositive();
    // ties and the other limits are kept where the gap fails
    assertThat(report.failedTies()).isEmpty();
    assertThat(report.failedLimits()).allMatch(f -> f.limit().startsWith("knees"));
    List<String> open = new ArrayList<>(conflict.names());
    List<double[]> starts = new ArrayList<>(List.of(posed.problem().start(), report.x()));
    // a seat turns over far away: what holds without one is looked for where it does without
    // another
    for (int i = 0; i < starts.size() && !open.isEmpty(); i++) {
      double[] start = starts.get(i);
      open.removeIf(
          name -> {
            SolveReport without = without(posed, conflict.names(), name, start);
            if (without.status().holds()) {
              starts.add(without.x());
            }
            return without.status().holds();
          });
    }
    assertThat(open).isEmpty();
  }

  /** Nobody sits on a pan turned over: a gap is no number there, not one that is kept. */
  @Test
  void nobodyIsThrownOffToKeepAGap() {
    LayoutProblem posed = LayoutProblem.of(trestle(room(450)));
    double[] x = posed.problem().start();
    int rear = posed.variables("panRear")[0];
    int front = posed.variables("panFront")[0];
    double kept = x[rear];
    x[rear] = x[front];
    x[front] = kept;
    for (SolverLimit limit : posed.problem().limits()) {
      if (limit.name().startsWith("knees")) {
        assertThat(limit.roomMm(posed.problem().start())).isFinite();
        assertThat(limit.roomMm(x)).as(limit.name()).isNaN();
      }
    }
  }

  /** Feet stand on the pegs, and those are beside the hood: the seat has no part in it. */
  @Test
  void anExplanationNamesNoSeatThatDoesNotMatter() {
    LayoutProblem posed = LayoutProblem.of(trestle(room(450)));
    SolveReport report = Solver.solveAndDiagnose(posed.problem(), SolverSettings.DEFAULT);
    assertThat(report.diagnosis().orElseThrow().contradiction())
        .containsExactlyInAnyOrder("knees (Tor)", "pegPlace (at least)", "pegUp (at least)");
  }

  /** The members of a conflict but one, solved anew from a start; the nearest is not wanted. */
  private static SolveReport without(
      LayoutProblem posed, List<String> names, String left, double[] start) {
    Problem all = posed.problem();
    Problem some =
        all.withTies(
                all.ties().stream()
                    .filter(t -> names.contains(t.name()) && !t.name().equals(left))
                    .toList())
            .withLimits(
                all.limits().stream()
                    .filter(l -> names.contains(l.name()) && !l.name().equals(left))
                    .toList())
            .withWishes(List.of())
            .withStart(start);
    return Solver.solve(
        some,
        Changed.with(
            SolverSettings.DEFAULT, Map.of("keepTurns", false, "workAllowed", 1_000_000L)));
  }

  @Test
  void theFindingNamesWhatTheGapCannotHoldTogetherWith() {
    Study study = Study.of(trestle(room(600)));
    List<Finding> limits =
        study.findings().stream().filter(f -> f.id().startsWith("limit.knees")).toList();
    assertThat(limits).isNotEmpty().allMatch(f -> f.verdict() == Verdict.FAIL);
    assertThat(limits).allMatch(f -> f.margin() < -0.05);
    assertThat(limits)
        .anyMatch(f -> f.text().contains("Without any one of these the rest can hold"));
    assertThat(limits).noneMatch(f -> f.text().contains("short by 0 mm"));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void slopesAreThoseOfSeatingAnew(long seed) {
    Layout layout = trestle(room(100));
    LayoutProblem posed = LayoutProblem.of(layout);
    SplittableRandom random = new SplittableRandom(seed);
    double[] x = Placer.place(layout).report().x();
    for (int i = 0; i < x.length; i++) {
      x[i] += random.nextDouble(-15, 15);
    }
    int checked = 0;
    for (SolverLimit limit : posed.problem().limits()) {
      if (!limit.name().startsWith("knees")) {
        continue;
      }
      Relation least = limit.gaps().get(0);
      for (Relation row : limit.gaps()) {
        least = row.evaluate(x, null) < least.evaluate(x, null) ? row : least;
      }
      double[] gradient = new double[least.variables().length];
      least.evaluate(x, gradient);
      for (int i = 0; i < gradient.length; i++) {
        double wide = slope(limit, x, least.variables()[i], 0.02);
        double narrow = slope(limit, x, least.variables()[i], 0.01);
        if (Math.abs(wide - narrow) < 1e-5) {
          assertThat(gradient[i]).as(limit.name() + " " + i).isCloseTo(narrow, within(1e-5));
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThan(20);
  }

  private static double slope(SolverLimit limit, double[] x, int variable, double step) {
    double[] y = x.clone();
    y[variable] = x[variable] + step;
    double more = limit.roomMm(y);
    y[variable] = x[variable] - step;
    return (more - limit.roomMm(y)) / (2 * step);
  }

  @Test
  void draggedPegStopsWhereAKneeComesTooNear() {
    Layout layout = trestle(room(123));
    Placed placed = Placer.place(layout);
    LayoutProblem posed = placed.problem();
    int[] peg = posed.variables("peg");
    DragSession drag =
        Solver.drag(posed.problem(), placed.report().x(), SolverSettings.DEFAULT, peg);
    double px = placed.report().x()[peg[0]];
    double pz = placed.report().x()[peg[1]];
    boolean stopped = false;
    for (int mm = 1; mm <= 120; mm++) {
      SolveReport report = drag.moveTo(px - mm, pz + mm);
      assertThat(report.status().holds()).as("at " + mm).isTrue();
      Places places = posed.places(report.x());
      List<Sitting> sittings = Seats.of(layout, places);
      for (String who : List.of("Mara", "Tor")) {
        assertThat(gapMm(layout, places, "hoodPlate", sittings, who)).isGreaterThan(123 - TRUE_MM);
      }
      stopped |= report.activeLimits().stream().anyMatch(n -> n.startsWith("knees"));
    }
    assertThat(stopped).isTrue();
  }

  /** The pointer goes under the knee to where the peg could be too, but not by that way. */
  @Test
  void aDraggedPegDoesNotLeapPastWhereAKneeWouldComeTooNear() {
    Layout layout =
        trestle(
            room(100),
            "\"panUp\": {",
            "\"panStays\": {\"tie\": \"nailed\", \"pins\": [\"panRear\"]}, \"panUp\": {",
            "\"from\": \"1390 mm\", \"to\": \"1750 mm\"",
            "\"from\": \"100 mm\"",
            "\"from\": \"380 mm\", \"to\": \"450 mm\"",
            "\"from\": \"50 mm\"");
    Placed placed = Placer.place(layout);
    LayoutProblem posed = placed.problem();
    int[] peg = posed.variables("peg");
    double px = placed.report().x()[peg[0]];
    double pz = placed.report().x()[peg[1]];
    double[][] ends = new double[2][];
    for (int run = 0; run < 2; run++) {
      int steps = run == 0 ? 148 : 37;
      DragSession drag =
          Solver.drag(posed.problem(), placed.report().x(), SolverSettings.DEFAULT, peg);
      double[] at = {px, pz};
      for (int k = 1; k <= steps; k++) {
        SolveReport report = drag.moveTo(px - 727.0 * k / steps, pz + 128.0 * k / steps);
        assertThat(report.status().holds()).isTrue();
        double[] now = {report.x()[peg[0]], report.x()[peg[1]]};
        assertThat(Math.hypot(now[0] - at[0], now[1] - at[1])).isLessThan(4 * 740.0 / steps);
        at = now;
      }
      // a finger that rests lets it come to rest too
      for (int k = 0; k < 60; k++) {
        SolveReport report = drag.moveTo(px - 727, pz + 128);
        at = new double[] {report.x()[peg[0]], report.x()[peg[1]]};
      }
      ends[run] = at;
    }
    assertThat(ends[1]).containsExactly(ends[0], within(0.5));
  }
}
