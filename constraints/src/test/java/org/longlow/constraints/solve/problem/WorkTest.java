package org.longlow.constraints.solve.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.StillPin;
import org.longlow.constraints.solve.relation.Relations;
import org.longlow.constraints.study.Changed;

/** The work of a solve is counted, bounded, and the same wherever and however often it is done. */
class WorkTest {

  /** A chain of pins in a row, each pair held together by one demand. */
  private static Problem chain(int links, String kind, double asked, boolean heldAtBothEnds) {
    Problem.Builder builder = Problem.builder();
    Pt last = StillPin.in(builder, "p0", 0, 0);
    for (int i = 1; i <= links; i++) {
      Pt next =
          heldAtBothEnds && i == links
              ? StillPin.in(builder, "p" + i, 10.0 * i, 0)
              : builder.pin("p" + i, 10.0 * i, 3 * (i % 2));
      Relation apart = Relations.distance(last, next, asked);
      switch (kind) {
        case "ties" -> builder.tie("d" + i, apart);
        case "least" -> builder.limit("d" + i, apart);
        case "most" -> builder.limit("d" + i, Relations.negative(apart));
        default -> builder.wish("d" + i, 1, apart);
      }
      last = next;
    }
    return builder.build();
  }

  static Stream<Arguments> chains() {
    return Stream.of(
        Arguments.of("ties", 12.0, false, 300),
        Arguments.of("least", 12.0, false, 300),
        Arguments.of("most", 9.0, false, 40),
        Arguments.of("wishes", 12.0, false, 300),
        Arguments.of("least", 12.0, true, 100));
  }

  @ParameterizedTest(name = "{3} {0} of {1}, held at both ends: {2}")
  @MethodSource("chains")
  void hundredsInAChainTakeASmallPartOfTheWorkAllowed(
      String kind, double asked, boolean held, int links) {
    SolveReport report =
        Solver.solveAndDiagnose(chain(links, kind, asked, held), SolverSettings.DEFAULT);
    assertThat(report.status().holds()).isTrue();
    assertThat(report.work()).isPositive().isLessThan(SolverSettings.DEFAULT.workAllowed() / 2);
  }

  @Test
  void aContradictoryChainIsExplainedWithinTheWorkAllowed() {
    for (String kind : List.of("ties", "most")) {
      SolveReport report =
          Solver.solveAndDiagnose(chain(60, kind, 9, true), SolverSettings.DEFAULT);
      Diagnosis diagnosis = report.diagnosis().orElseThrow();
      assertThat(diagnosis.decided()).as(kind).isTrue();
      assertThat(diagnosis.contradiction()).as(kind).hasSize(60);
    }
  }

  @Test
  void theSameWorkIsDoneEveryTimeAndInEveryThread() {
    Problem problem = chain(40, "most", 9, true);
    SolveReport once = Solver.solve(problem);
    List<SolveReport> others =
        IntStream.range(0, 8).parallel().mapToObj(i -> Solver.solve(problem)).toList();
    for (SolveReport other : others) {
      assertThat(other.work()).isEqualTo(once.work());
      assertThat(other.x()).containsExactly(once.x());
    }
  }

  @Test
  void whatIsNotDecidedWithinTheWorkAllowedSaysSoAndNeverHolds() {
    Problem problem = chain(40, "most", 9, true);
    SolverSettings least = Changed.with(SolverSettings.DEFAULT, Map.of("workAllowed", 500L));
    SolveReport report = Solver.solveAndDiagnose(problem, least);
    assertThat(report.status()).isEqualTo(SolveStatus.NOT_DECIDED);
    assertThat(report.status().holds()).isFalse();
    assertThat(report.failedLimits()).isNotEmpty();
    assertThat(report.diagnosis().orElseThrow().decided()).isFalse();
    assertThat(report.diagnosis().orElseThrow().conflict()).isEmpty();
    assertThat(report.x()).doesNotContain(Double.NaN);
  }

  @Test
  void aConflictThatWasNotTriedToTheEndIsNotReported() {
    Problem problem = chain(40, "most", 9, true);
    SolveReport report = Solver.solve(problem);
    assertThat(report.status()).isEqualTo(SolveStatus.LIMIT_FAILS);
    SolverSettings little =
        Changed.with(SolverSettings.DEFAULT, Map.of("workAllowed", report.work() / 20));
    Diagnosis diagnosis = Solver.diagnose(problem, report, little);
    assertThat(diagnosis.decided()).isFalse();
    assertThat(diagnosis.conflict()).isEmpty();
  }
}
