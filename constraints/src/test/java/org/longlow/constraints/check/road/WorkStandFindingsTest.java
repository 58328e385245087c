package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Levers and moments about the edges of a triangle, by hand from the centre of mass. */
class WorkStandFindingsTest {

  private static final double G = 9.80665;

  private static TestMachine machine(double aside) {
    return TestMachine.runabout()
        .part("battery", "left", "'" + (95 + aside) + " mm'")
        .part("battery", "right", "'" + (95 - aside) + " mm'");
  }

  private static Finding in(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"rearWheel, 0", "frontWheel, 0", "rearWheel, 60", "rearWheel, -60", "frontWheel, 60"})
  void theHookCarriesItsAxleAndTheFeetHoldTheMass(String wheel, double aside) {
    Study study = machine(aside).study();
    var load = study.standing(Condition.empty(Stance.Kind.UNLADEN)).orElseThrow().load();
    double kg = load.total().massKg();
    double base = load.axles().wheelbaseMm();
    double ahead = load.axles().total().at().x();
    double up = load.axles().total().at().z();
    double y = load.total().yMm();
    double share = wheel.equals("rearWheel") ? 1 - ahead / base : ahead / base;
    Finding lift = in(study, "work-stand." + wheel + ".lift");
    assertThat(lift.value()).isCloseTo(kg * G * share / 4, within(1e-6));
    assertThat(lift.verdict()).isEqualTo(Verdict.PASS);
    // the edge from the tyre to a foot is as far out at the mass as its share on the stand
    double edge = Math.atan2(175, base);
    double least = (175 * share - Math.abs(y)) * Math.cos(edge);
    Finding tip = in(study, "work-stand." + wheel + ".tip");
    assertThat(tip.value()).isCloseTo(Math.toDegrees(Math.atan(least / up)), within(1e-6));
    assertThat(tip.text())
        .contains(
            Math.abs(y) < 0.5 ? "to either side" : y > 0 ? "to the left and" : "to the right and");
  }

  @ParameterizedTest
  @CsvSource({"-1, CAUTION, longer handle", "1, PASS, asked at most."})
  void handsPressNoMoreThanIsAsked(double spare, Verdict verdict, String words) {
    double force = in(machine(0).study(), "work-stand.rearWheel.lift").value();
    Finding f =
        machine(0)
            .with("demands", "heave", "'" + (force + spare) + " N'")
            .finding("work-stand.rearWheel.lift")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).contains(words);
    assertThat(
            machine(0)
                .with("demands", "workLever", "'8'")
                .finding("work-stand.rearWheel.lift")
                .orElseThrow()
                .value())
        .isCloseTo(force / 2, within(1e-9));
  }

  @Test
  void narrowFeetAskForCare() {
    Finding f =
        machine(0)
            .with("demands", "workFeet", "'200 mm'")
            .finding("work-stand.rearWheel.tip")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("feet farther apart");
  }

  /** No lever and no feet are refused in words, not worked out. */
  @ParameterizedTest
  @CsvSource({"workLever, 0", "workFeet, 0 mm"})
  void noLeverAndNoFeetAreSaid(String demand, String none) {
    assertThat(machine(0).with("demands", demand, "'" + none + "'").findings())
        .filteredOn(f -> f.kind() == WorkStandFindings.WORK_STAND)
        .singleElement()
        .matches(f -> f.verdict() == Verdict.FAIL)
        .matches(f -> f.text().startsWith("This cannot be worked out"));
  }
}
