package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.check.road.OfStudy.finding;
import static org.longlow.constraints.check.road.OfStudy.only;
import static org.longlow.constraints.check.road.OfStudy.people;
import static org.longlow.constraints.check.road.OfStudy.standings;
import static org.longlow.constraints.check.road.OfStudy.tenths;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** How far springs are in at rest, worked out again from where the axles are. */
class SagFiguresTest {

  @ParameterizedTest
  @CsvSource({
    "tourer, front, frontAxle, 60, 45",
    "tourer, rear, rearAxle, 60, 50",
    "runabout, front, frontAxle, 50, 40",
    "runabout, rear, rearAxle, 50, 40"
  })
  void sagIsHowFarAWheelRoseFromHanging(
      String name, String end, String axle, double bump, double droop) {
    Study study = TestMachine.asFiled(name);
    double drawn = study.placed().places().pin(axle).z();
    for (Standing s : standings(study, Stance.Kind.UNLADEN, Stance.Kind.LADEN)) {
      double used = s.places().pin(axle).z() - (drawn - droop);
      Finding f = finding(study, "sag." + end + "." + people(s), s);
      assertThat(f.value()).isCloseTo(used, within(1e-6));
      assertThat(f.limit()).isCloseTo(bump + droop, within(1e-6));
      assertThat(f.verdict()).isEqualTo(Verdict.PASS);
      if (used < 1e-9) {
        continue; // on its stop, see below
      }
      assertThat(f.text())
          .isEqualTo(
              String.format(
                  "%s the %s wheel uses %s mm of its %s mm of travel at rest, %s %%.",
                  s.kind() == Stance.Kind.LADEN
                      ? "With " + s.condition().people()
                      : "With nobody on it",
                  end,
                  tenths(used),
                  tenths(bump + droop),
                  tenths(100 * used / (bump + droop))));
    }
  }

  @Test
  void stopsAreSaidAtEachEnd() {
    TestMachine stiff =
        TestMachine.runabout()
            .part("front", "preload", "'9000 N'")
            .part("swingarm", "preload", "'9000 N'");
    TestMachine soft =
        TestMachine.runabout()
            .part("front", "rate", "'1 N/mm'")
            .part("front", "preload", "'0 N'")
            .part("swingarm", "rate", "'1 N/mm'")
            .part("swingarm", "preload", "'0 N'");
    Study hard = stiff.study();
    Study weak = soft.study();
    for (String end : List.of("front", "rear")) {
      Finding hangs = only(hard, "sag." + end + ".Nell");
      assertThat(hangs.verdict()).isEqualTo(Verdict.CAUTION);
      assertThat(hangs.value()).isCloseTo(0, within(1e-9));
      assertThat(hangs.text())
          .startsWith("With Nell the " + end + " wheel hangs on its top-out stop")
          .contains("softer springs or less preload");
      Finding alone = only(hard, "sag." + end + ".unladen");
      assertThat(alone.verdict()).isEqualTo(Verdict.PASS);
      assertThat(alone.text())
          .startsWith("With nobody on it the " + end + " wheel hangs")
          .contains("only once somebody sits on it");
      Finding sits = only(weak, "sag." + end + ".Nell");
      assertThat(sits.verdict()).isEqualTo(Verdict.FAIL);
      assertThat(sits.value()).isCloseTo(90, within(1e-9));
      assertThat(sits.text())
          .startsWith("With Nell the " + end + " wheel sits on its bump stop")
          .contains("stiffer springs or more preload");
    }
    Study rigid =
        TestMachine.runabout()
            .part("front", "bump", "'0 mm'")
            .part("front", "droop", "'0 mm'")
            .study();
    assertThat(rigid.findings()).noneMatch(f -> f.id().startsWith("sag.front."));
    assertThat(rigid.findings()).anyMatch(f -> f.id().startsWith("sag.rear."));
  }
}
