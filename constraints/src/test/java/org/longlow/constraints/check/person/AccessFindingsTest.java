package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

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
    Finding open = of(lidded("", 0.001), "get-out.Joss.out");
    Finding jammed = of(lidded("", 0.001), "get-out.Joss.out.canopy");
    assertThat(open.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(open.text()).contains("no way but through canopy: say wayOut of it");
    assertThat(jammed.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(jammed.text())
        .startsWith("With canopy jammed shut, Joss")
        .contains("nobody gets out");
  }

  /** The only way out is worth what opens it: a canopy that a hand lifts, and one it cannot. */
  @Test
  void aWayOutThatNoHandOpensIsNone() {
    Finding light = of(lidded(", 'wayOut': true", 0.001), "get-out.Joss.out");
    assertThat(light.verdict()).isEqualTo(Verdict.PASS);
    assertThat(light.text()).contains("no way but through canopy");
    TestMachine heavy = lidded(", 'wayOut': true", 120);
    Finding stuck = of(heavy, "get-out.Joss.out");
    Finding hand = of(heavy, "way-out.canopy");
    assertThat(hand.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(stuck.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(stuck.value()).isEqualTo(hand.value());
    assertThat(stuck.limit()).isEqualTo(hand.limit());
  }

  private static TestMachine lidded(String more, double kg) {
    return TestMachine.runabout()
        .pin("wallPin", 0, 0)
        .pin("canopyHinge", 1800, 1500)
        .with(
            "parts", "sides", plate(10, 1520, "'left': '420 mm', 'right': '-400 mm', 'both': true"))
        .with("parts", "roof", plate(1450, 1520, "'left': '420 mm', 'right': '420 mm'"))
        .part("roof", "mass", "'" + kg + " kg'")
        .with(
            "sections",
            "canopy",
            "{'parts': ['sides', 'roof'], 'pivot': 'canopyHinge', 'angle': '-85 deg'" + more + "}");
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
    assertThat(low.text()).contains("of the shoulder of Nell standing beside it");
    Finding far =
        of(
            TestMachine.runabout()
                .pin("holdPin", 2400, 880)
                .with(
                    "parts",
                    "hold",
                    "{'kind': 'handhold', 'at': 'holdPin', 'diameter': '25 mm', 'y': '250 mm',"
                        + " 'length': '60 mm', 'mass': '0.001 kg'}"),
            "step-over.Nell.step");
    assertThat(far.text()).containsPattern("[(]hold is [0-9.]+ mm too far for that[)]");
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

  /**
   * An arm's length from the shoulder as they sit, both sides of the limit; the shoulder is where
   * the posture has it, and so far out.
   */
  @ParameterizedTest
  @CsvSource({"-1, true", "1, false"})
  void aHandholdCountsWhereAnArmReachesIt(double more, boolean counts) {
    Sitting nell = TestMachine.asFiled("runabout").sitting("Nell", "rider").orElseThrow();
    double arm = nell.body().upperArmMm() + nell.body().elbowToGripMm();
    PointMm shoulder = nell.posture().orElseThrow().shoulder();
    double y = nell.posture().orElseThrow().across().shoulderMm();
    Layout layout =
        TestMachine.runabout()
            .pin("holdPin", shoulder.x(), shoulder.z() - arm - more)
            .with(
                "parts",
                "hold",
                "{'kind': 'handhold', 'at': 'holdPin', 'diameter': '25 mm', 'y': '"
                    + y
                    + " mm', 'length': '60 mm', 'mass': '0.001 kg'}")
            .layout();
    Places places =
        TestMachine.asFiled("runabout")
            .placed()
            .places()
            .withPins(Map.of("holdPin", new PointMm(shoulder.x(), shoulder.z() - arm - more)));
    assertThat(new Handholds(layout, places).seated(nell).isEmpty()).isEqualTo(!counts);
  }

  /** Whoever sits behind gets in and out too, and climbs. */
  @Test
  void aPassengerIsJudgedToo() {
    Study tourer = TestMachine.asFiled("tourer");
    for (String id :
        List.of(
            "legs-in.Runa.passenger.legs",
            "get-out.Runa.passenger.out",
            "rise.Runa.passenger.rise")) {
      assertThat(tourer.findings()).extracting(Finding::id).contains(id);
    }
    Finding step =
        tourer.findings().stream()
            .filter(f -> f.id().equals("step-over.Runa.passenger.step"))
            .findFirst()
            .orElseThrow();
    assertThat(step.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(step.text()).startsWith("Runa as passenger steps over").contains("climbs up");
    assertThat(tourer.findings())
        .filteredOn(f -> f.id().equals("rise.Runa.passenger.rise"))
        .filteredOn(f -> f.text().contains("none comes there"))
        .allMatch(f -> f.text().contains("past pillionPan") != f.text().contains("open a section"));
  }

  /** Nothing is drawn that a hand works: one line says so, and none once it is. */
  @Test
  void whatIsNotJudgedOfControlsIsSaidOnce() {
    Layout silent = TestMachine.asFiled("runabout").placed().layout();
    List<Sitting> crew = TestMachine.asFiled("runabout").sittings();
    assertThat(UnjudgedFindings.of(silent, crew).orElseThrow().text())
        .startsWith("No hand lever, switch or pedal is drawn");
    assertThat(UnjudgedFindings.of(silent, List.of()).orElseThrow().text())
        .startsWith("Nobody is seated to steer it");
    String lever =
        "{'kind': 'lever', 'frame': 'grip', 'outline': {'points': [['0 mm', '0 mm'], ['9 mm', '0"
            + " mm'], ['9 mm', '9 mm']]}, 'left': '1 mm', 'right': '1 mm'%s}";
    String worked = ", 'worked': {'by': 'fingers', 'pad': 'grip'}";
    Layout drawn =
        TestMachine.runabout().with("parts", "clutch", String.format(lever, "")).layout();
    assertThat(UnjudgedFindings.of(drawn, crew).orElseThrow().text())
        .contains("not said of clutch");
    Layout said =
        TestMachine.runabout().with("parts", "clutch", String.format(lever, worked)).layout();
    assertThat(UnjudgedFindings.of(said, crew)).isEmpty();
  }
}
