package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.Study;

/** What could not be decided within the work allowed is a finding that fails and names it. */
class NotDecidedTest {

  private static Layout layout(double most) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "a": [500, 500], "b": [900, 520]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120}},
         "limits": {"near": {"limit": "distance", "pins": ["rear", "a"], "to": %s},
           "middle": {"limit": "distance", "pins": ["a", "b"], "to": %s},
           "far": {"limit": "distance", "pins": ["b", "front"], "to": %s}}}
        """
            .formatted(most, most, most);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) result).layout();
  }

  private static Study study(Layout layout, SolverSettings settings) {
    LayoutProblem problem = LayoutProblem.of(layout);
    SolveReport report = Solver.solveAndDiagnose(problem.problem(), settings);
    return Study.of(new Placed(problem, report, problem.places(report.x())));
  }

  @Test
  void limitsThatWereNotDecidedFailAndAreNamed() {
    Study study =
        study(layout(400), Changed.with(SolverSettings.DEFAULT, Map.of("workAllowed", 20L)));
    assertThat(study.placed().report().status()).isEqualTo(SolveStatus.NOT_DECIDED);
    List<Finding> open = study.findings().stream().filter(f -> f.id().equals("undecided")).toList();
    assertThat(open).hasSize(1);
    assertThat(open.get(0).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(open.get(0).text()).startsWith("Not decided: whether ").contains("work allowed");
    study
        .placed()
        .report()
        .failedLimits()
        .forEach(f -> assertThat(open.get(0).subject()).contains(f.limit()));
    assertThat(study.placed().report().failedLimits()).isNotEmpty();
    assertThat(study.failing()).isPositive();
    assertThat(study.findings()).noneMatch(f -> f.id().equals("ties"));
  }

  @Test
  void withTheUsualWorkTheSameLimitsAreDecided() {
    Study fails = Study.of(Placer.place(layout(400)));
    assertThat(fails.contradicts()).isTrue();
    assertThat(fails.placed().report().diagnosis().orElseThrow().contradiction())
        .containsExactlyInAnyOrder("near", "middle", "far");
    assertThat(fails.findings()).filteredOn(f -> f.id().startsWith("limit.")).hasSize(3);
    assertThat(Study.of(Placer.place(layout(520))).contradicts()).isFalse();
  }
}
