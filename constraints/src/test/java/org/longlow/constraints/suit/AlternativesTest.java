package org.longlow.constraints.suit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What places that were found rest against. */
class AlternativesTest {

  private static TestMachine ahead(TestMachine m, String measure, String of, String pin, int x) {
    return m.with("pins", pin, "['" + x + " mm', '1900 mm']")
        .with(
            "measures", measure, "{'is': '320 mm', 'free': true, 'from': '318 mm', 'to': '420 mm'}")
        .with(
            "ties",
            pin + "At",
            "{'tie': 'ahead', 'pins': ['" + of + "', '" + pin + "'], 'is': '" + measure + "'}");
  }

  /** A pin that hangs on another rests against the range of what holds it, and what holds that. */
  @Test
  void rangesOfFreeMeasuresThatMoveAPinAreLimits() {
    TestMachine m = TestMachine.runabout().pin("origin", 0, 1900);
    Study study =
        ahead(
                ahead(ahead(m, "near", "origin", "a", 320), "far", "a", "b", 640),
                "third",
                "origin",
                "c",
                320)
            .study();
    Problem problem = study.placed().problem().problem();
    double[] x = study.placed().report().x().clone();
    assertThat(new Alternatives(study, List.of("b")).at(x).atLimits()).isEmpty();
    x[problem.indexOf("far")] = 318;
    assertThat(new Alternatives(study, List.of("b")).at(x).atLimits())
        .containsExactly("far (at least)");
    x[problem.indexOf("near")] = 420;
    assertThat(new Alternatives(study, List.of("b")).at(x).atLimits())
        .containsExactlyInAnyOrder("far (at least)", "near (at most)");
  }
}
