package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** Masses that no road holds up: nothing that rests on them passes, and all is said in words. */
class ImpossibleLoadsTest {

  private static TestMachine lump(double xMm, double zMm, double yMm, String kg) {
    return TestMachine.tourer()
        .pin("lumpPin", xMm, zMm)
        .with(
            "parts",
            "lump",
            String.format(
                java.util.Locale.ROOT,
                "{'kind': 'box', 'frame': 'lumpPin', 'outline': {'points': [[0, 0], [60, 0], [60, 60],"
                    + " [0, 60]]}, 'left': %f, 'right': %f, 'mass': '%s'}",
                yMm + 30,
                30 - yMm,
                kg));
  }

  private static Finding finding(TestMachine machine, String id) {
    return machine.finding(id).orElseThrow();
  }

  @Test
  void aMassBehindTheWheelsLiftsTheFrontWithNobodyOnIt() {
    TestMachine behind = lump(-3000, 400, 0, "2000 kg");
    assertThat(finding(behind, "lift.unladen").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(finding(behind, "lift.unladen").text()).contains("front wheel lifts at rest");
    assertThat(behind.finding("load.unladen")).isEmpty();
    TestMachine ahead = lump(4800, 400, 0, "2000 kg");
    assertThat(finding(ahead, "lift.unladen").text()).contains("rear wheel lifts at rest");
  }

  @Test
  void aMassUnderTheRoadHoldsNothing() {
    TestMachine under = lump(700, -2500, 0, "2000 kg");
    assertThat(finding(under, "lift.unladen").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(finding(under, "lift.unladen").text()).contains("in the road");
    assertThat(under.findings())
        .filteredOn(f -> f.kind().word().equals("ramp"))
        .anySatisfy(f -> assertThat(f.text()).contains("lump lies in the road"));
  }

  @Test
  void aMachineThatFallsOverItsStandSaysSo() {
    Finding stand = finding(lump(700, 600, 600, "200 kg"), "stand.sideStand");
    assertThat(stand.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(stand.value()).isNegative();
    assertThat(stand.text()).contains("falls over by itself").doesNotContain("-");
  }

  @Test
  void whatStandsIsLoadedAsBefore() {
    assertThat(TestMachine.tourer().verdict("load.unladen")).isEqualTo(Verdict.PASS);
    assertThat(TestMachine.tourer().finding("lift.unladen")).isEmpty();
  }
}
