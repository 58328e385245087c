package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Faults put into the whole machines, one at a time, and what is said about them. */
class MachineFaultsTest {

  private static Verdict verdict(TestMachine spoilt, String id) {
    return spoilt.finding(id).orElseThrow().verdict();
  }

  // --- springs whose rate nobody knows

  @Test
  void travelCountsWithoutARate() {
    Study known = TestMachine.runabout().study();
    Study study = TestMachine.runabout().without("swingarm", "rate", "preload").study();
    for (Stance.Kind kind : List.of(Stance.Kind.FULL_BUMP, Stance.Kind.FULL_DROOP)) {
      Condition stance = Condition.empty(kind);
      assertThat(study.standing(stance).orElseThrow().rearTravelMm())
          .isEqualTo(known.standing(stance).orElseThrow().rearTravelMm())
          .isNotZero();
    }
    List<Finding> sag =
        study.findings().stream().filter(f -> f.id().equals("sag.unknown")).toList();
    assertThat(sag).hasSize(1);
    assertThat(sag.get(0).verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(sag.get(0).text()).contains("swingarm", "rate");
    assertThat(study.findings())
        .filteredOn(
            f ->
                List.of("load.Nell", "lean.left", "clearance.laden", "trail.Nell").contains(f.id()))
        .hasSize(4)
        .allMatch(f -> f.verdict() != Verdict.PASS)
        .allMatch(f -> f.text().contains("rate of swingarm is not known"));
    assertThat(study.findings())
        .filteredOn(f -> f.id().equals("clearance.bump"))
        .allMatch(f -> f.verdict() == Verdict.PASS);
  }

  @Test
  void noTravelIsRigid() {
    TestMachine rigid =
        TestMachine.runabout()
            .without("swingarm", "rate", "preload")
            .part("swingarm", "bump", "'0 mm'")
            .part("swingarm", "droop", "'0 mm'");
    assertThat(rigid.finding("sag.unknown")).isEmpty();
    assertThat(verdict(rigid, "load.Nell")).isEqualTo(Verdict.PASS);
  }

  // --- cushions beside the rider

  @ParameterizedTest
  @CsvSource({"-300, FAIL", "0, FAIL", "49, CAUTION", "50, PASS"})
  void backCarriesBothSides(int rightMm, Verdict verdict) {
    Optional<Finding> f =
        TestMachine.runabout()
            .part("back", "left", "'640 mm'")
            .part("back", "right", "'" + rightMm + " mm'")
            .finding("seat.Nell.back.across");
    assertThat(f.map(Finding::verdict).orElse(Verdict.PASS)).isEqualTo(verdict);
    f.ifPresent(x -> assertThat(x.text()).contains("farther to the right"));
  }

  @Test
  void panBesideTheRiderFails() {
    TestMachine beside =
        TestMachine.runabout().part("pan", "left", "'700 mm'").part("pan", "right", "'-340 mm'");
    assertThat(verdict(beside, "seat.Joss.pan.across")).isEqualTo(Verdict.FAIL);
  }

  // --- twins

  @ParameterizedTest
  @CsvSource({"59.5, true", "60, false"})
  void gripsAreNotInEachOther(double yMm, boolean fails) {
    Optional<Finding> f =
        TestMachine.runabout().part("grips", "y", "'" + yMm + " mm'").finding("gap.grips.grips");
    assertThat(f.isPresent()).isEqualTo(fails);
    f.ifPresent(
        x -> {
          assertThat(x.verdict()).isEqualTo(Verdict.FAIL);
          assertThat(x.value()).isEqualTo(-1);
          assertThat(x.text()).contains("0.5 mm farther out");
        });
  }

  /** What lies on the middle plane would have to go out by its own breadth: it is one part. */
  @Test
  void whatLiesAcrossTheMiddleIsNotSentOut() {
    Finding f =
        TestMachine.runabout()
            .part("grips", "y", "'0 mm'")
            .finding("gap.grips.grips")
            .orElseThrow();
    assertThat(f.text()).doesNotContain("farther out").contains("make it one part");
  }

  @Test
  void aBoxOnBothSidesIsNotInItself() {
    String box =
        "{'kind': 'box', 'frame': 'bx', 'outline': {'points': [['0 mm', '0 mm'], ['60 mm', '0 mm'],"
            + " ['60 mm', '60 mm']]}, 'left': '100 mm', 'right': '60 mm', 'both': true}";
    TestMachine spoilt = TestMachine.runabout().with("parts", "box", box).pin("bx", -150, 670);
    assertThat(spoilt.finding("gap.box.box").orElseThrow().value()).isEqualTo(-120);
  }

  @ParameterizedTest
  @CsvSource({"70, true", "76, false"})
  void aPairOfLampsIsNotInItself(int yMm, boolean fails) {
    TestMachine spoilt =
        TestMachine.runabout()
            .part("headlamp", "y", "'" + yMm + " mm'")
            .part("headlamp", "pair", "true");
    assertThat(spoilt.finding("gap.headlamp.headlamp").isPresent()).isEqualTo(fails);
  }

  @Test
  void twoLampsOnOnePinAreNotInOnePlace() {
    String lamp =
        "{'kind': 'lamp', 'lamp': 'tail', 'at': 'tailPin', 'halfWidth': '10 mm', 'halfHeight': '9"
            + " mm', 'depth': '20 mm'}";
    TestMachine spoilt = TestMachine.runabout().with("parts", "again", lamp);
    assertThat(verdict(spoilt, "joint.again.tailLamp")).isEqualTo(Verdict.FAIL);
  }

  // --- the side stand

  @ParameterizedTest
  @CsvSource({
    "6.5, PASS, at 11.5",
    "20, CAUTION, over the road at the lean",
    "-60, FAIL, under the road with the machine upright"
  })
  void theFootStandsOnTheRoad(double zMm, Verdict verdict, String words) {
    TestMachine spoilt = TestMachine.runabout().pin("standFoot", 560, zMm);
    Finding f = spoilt.finding("stand.sideStand").orElseThrow();
    assertThat(f.verdict()).isEqualTo(verdict);
    if (verdict != Verdict.PASS) {
      assertThat(f.text()).contains(words);
    }
  }

  // parked 205.7 mm in side view, the foot up to 235 mm out: stowed 205.7 to 312.3 mm
  @ParameterizedTest
  @CsvSource({"385, 165, PASS", "585, 240, FAIL", "394, 165, PASS", "396, 165, CAUTION"})
  void aLegKeepsItsLength(double xMm, double zMm, Verdict verdict) {
    Optional<Finding> f =
        TestMachine.runabout().pin("standStowed", xMm, zMm).finding("stand.sideStand.leg");
    assertThat(f.map(Finding::verdict).orElse(Verdict.PASS)).isEqualTo(verdict);
  }

  @Test
  void aLegIsNotLongerStowed() {
    TestMachine spoilt = TestMachine.runabout().pin("standStowed", 270, 165);
    assertThat(verdict(spoilt, "stand.sideStand.leg")).isEqualTo(Verdict.CAUTION);
  }

  // --- heat

  @Test
  void exhaustIsHotUnlessItIsSaidNotToBe() {
    TestMachine spoilt = TestMachine.tourer().without("header", "hot").without("silencer", "hot");
    assertThat(spoilt.layout()).isEqualTo(TestMachine.tourer().layout());
    TestMachine cold = TestMachine.tourer().part("header", "hot", "false");
    assertThat(verdict(cold, "gap.header.cold")).isEqualTo(Verdict.CAUTION);
    String written = LayoutWriter.toJson(cold.layout());
    ReadResult.Read again = (ReadResult.Read) LayoutReader.read(written, null);
    assertThat(again.layout().parts().get("header").base().hot()).isFalse();
    assertThat(again.layout().parts().get("silencer").base().hot()).isTrue();
  }

  // --- what a machine must have

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void wholeMachinesAreComplete(String name) {
    assertThat(TestMachine.asFiled(name).findings())
        .filteredOn(f -> f.id().equals("completeness.machine"))
        .singleElement()
        .matches(f -> f.verdict() == Verdict.PASS);
  }

  @ParameterizedTest
  @CsvSource({
    "swingarm, nothing holds the rear wheel",
    "front, nothing holds the front wheel",
    "bars, on nothing that steers",
    "grips, no grips",
    "motor, nothing drives it",
    "sideStand, nothing to stand on"
  })
  void whatIsMissingIsSaid(String part, String words) {
    Finding f = TestMachine.runabout().lacking(part).finding("completeness.machine").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains(words);
    assertThat(f.value()).isEqualTo(1);
  }

  @Test
  void aMachineNeedsAFrameAndSteeredBars() {
    TestMachine bare =
        TestMachine.runabout().lacking("floorRail", "backRail", "seatRail", "tailRail");
    assertThat(bare.finding("completeness.machine").orElseThrow().text()).contains("no frame");
    TestMachine stiff = TestMachine.runabout().part("grips", "steered", "false");
    assertThat(stiff.finding("completeness.machine").orElseThrow().text())
        .contains("grips do not turn with the steering");
    TestMachine loose = TestMachine.runabout().part("tailRail", "y", "'300 mm'");
    assertThat(loose.finding("completeness.machine").orElseThrow().text())
        .contains("tailRail hangs on nothing");
  }

  // --- rake

  @ParameterizedTest
  @CsvSource({
    "-10, FAIL, false",
    "14, CAUTION, false",
    "16, CAUTION, true",
    "44, CAUTION, true",
    "47, CAUTION, false"
  })
  void rakeIsJudgedByMemory(int deg, Verdict verdict, boolean inside) {
    TestMachine spoilt = TestMachine.runabout().with("measures", "rake", "'" + deg + " deg'");
    assertThat(verdict(spoilt, "rake.unladen")).isEqualTo(verdict);
    assertThat(spoilt.finding("rake.unladen").orElseThrow().margin() >= 0).isEqualTo(inside);
  }

  // --- joints

  private static TestMachine box(int halfMm) {
    String box =
        String.format(
            "{'kind': 'box', 'frame': 'swingPivot', 'outline': {'points': [['-%1$d mm', '-%1$d"
                + " mm'], ['%1$d mm', '-%1$d mm'], ['%1$d mm', '%1$d mm'], ['-%1$d mm', '%1$d"
                + " mm']]}, 'left': '140 mm', 'right': '140 mm'}",
            halfMm);
    return TestMachine.runabout().with("parts", "box", box);
  }

  @Test
  void aBoxOverAPivotIsNoJoint() {
    assertThat(verdict(box(60), "joint.box.swingarm")).isEqualTo(Verdict.FAIL);
    assertThat(box(40).finding("joint.box.swingarm")).isEmpty();
  }

  // --- limits from a thing to itself

  @Test
  void aLimitFromAPinToItselfLimitsNothing() {
    TestMachine self =
        TestMachine.runabout()
            .with(
                "limits",
                "x",
                "{'limit': 'distance', 'pins': ['tailPin', 'tailPin'], 'to': '5 mm'}");
    assertThat(verdict(self, "redundant.x")).isEqualTo(Verdict.CAUTION);
    TestMachine two =
        TestMachine.runabout()
            .with(
                "limits",
                "x",
                "{'limit': 'distance', 'pins': ['tailPin', 'stopPin'], 'to': '500 mm'}");
    assertThat(two.finding("redundant.x")).isEmpty();
  }

  // --- remedies

  @Test
  void partsSaidToTouchAreNotToldToBe() {
    TestMachine limit =
        TestMachine.runabout()
            .with(
                "limits",
                "x",
                "{'limit': 'gap', 'parts': ['apron', 'frontSignals'], 'from': '50 mm'}");
    assertThat(limit.finding("gap.apron.frontSignals").orElseThrow().text())
        .contains("drop the limit")
        .doesNotContain("list it under touches");
  }
}
