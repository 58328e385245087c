package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** Getting in and out of machines that are open, walled at one side, and lidded. */
class AccessFindingsTest {

  /** Worked number of the reference on effort and control, section 8. */
  @Test
  void kneesBearWhatLeavesTheSeat() {
    assertThat(Rising.kneeNm(85, 0.20)).isCloseTo(73.187029, within(1e-6));
    assertThat(Rising.kneeNm(85, 0.20) / 85).isCloseTo(0.861024, within(1e-6));
  }

  private static String plate(double z0, double z1, String breadth) {
    return "{'kind': 'box', 'frame': 'wallPin', 'outline': {'points': [['-400 mm', '"
        + z0
        + " mm'], ['1800 mm', '"
        + z0
        + " mm'], ['1800 mm', '"
        + z1
        + " mm'], ['-400 mm', '"
        + z1
        + " mm']]}, "
        + breadth
        + ", 'mass': '0.001 kg'}";
  }

  private static Finding of(TestMachine machine, String id) {
    return machine.finding(id).orElseThrow();
  }

  /** A wall along one side: in and out by the other, and the mirror image likewise. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void whoIsWalledAtOneSideLeavesByTheOther(boolean wallAtLeft) {
    TestMachine walled =
        TestMachine.runabout()
            .pin("wallPin", 0, 0)
            .with(
                "parts",
                "wall",
                plate(
                    10,
                    1520,
                    wallAtLeft
                        ? "'left': '420 mm', 'right': '-400 mm'"
                        : "'left': '-400 mm', 'right': '420 mm'"));
    String open = wallAtLeft ? "right" : "left";
    Finding plain = of(TestMachine.runabout(), "step-over.Joss.step");
    Finding step = of(walled, "step-over.Joss.step");
    assertThat(step.text())
        .contains("get in from the " + open)
        .contains("not at all from the " + (wallAtLeft ? "left" : "right"));
    assertThat(step.value()).isEqualTo(plain.value());
    assertThat(of(walled, "get-out.Joss.out").text()).contains("gets out to the " + open);
    assertThat(of(walled, "legs-in.Joss.legs").text()).contains("in from the " + open);
  }

  /** A lid all round: open it lets its rider out, jammed nobody gets out. */
  @Test
  void nobodyLeavesThroughALidThatIsJammed() {
    TestMachine lidded =
        TestMachine.runabout()
            .pin("wallPin", 0, 0)
            .pin("canopyHinge", 1800, 1500)
            .with(
                "parts",
                "sides",
                plate(10, 1520, "'left': '420 mm', 'right': '-400 mm', 'both': true"))
            .with("parts", "roof", plate(1450, 1520, "'left': '420 mm', 'right': '420 mm'"))
            .with(
                "sections",
                "canopy",
                "{'parts': ['sides', 'roof'], 'pivot': 'canopyHinge', 'angle': '-85 deg'}");
    Finding open = of(lidded, "get-out.Joss.out");
    Finding jammed = of(lidded, "get-out.Joss.out.canopy");
    assertThat(open.verdict()).isEqualTo(Verdict.PASS);
    assertThat(jammed.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(jammed.text())
        .startsWith("With canopy jammed shut, Joss")
        .contains("nobody gets out");
  }

  /**
   * A box between the feet and the seat is stepped over; one as high again is stepped over higher.
   */
  @Test
  void aHigherSillIsSteppedOverHigherAndAHandholdHelps() {
    Finding low = of(TestMachine.runabout(), "step-over.Nell.step");
    Finding held =
        of(
            TestMachine.runabout()
                .pin("holdPin", 150, 880)
                .with(
                    "parts",
                    "hold",
                    "{'kind': 'handhold', 'at': 'holdPin', 'diameter': '25 mm', 'y': '250 mm',"
                        + " 'length': '60 mm', 'mass': '0.001 kg'}"),
            "step-over.Nell.step");
    assertThat(low.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(held.verdict()).isEqualTo(Verdict.PASS);
    assertThat(held.value()).isEqualTo(low.value());
    Finding high =
        of(
            TestMachine.runabout()
                .pin("wallPin", 0, 0)
                .with("parts", "wall", plate(10, 1000, "'left': '420 mm', 'right': '420 mm'")),
            "step-over.Nell.step");
    assertThat(high.verdict()).isNotEqualTo(Verdict.PASS);
  }
}
