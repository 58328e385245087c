package org.longlow.constraints.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.law.LawFinding.Verdict;

class LampRulesTest {

  private static final Set<RuleSet> US = Set.of(RuleSet.US_FEDERAL);
  private static final Set<RuleSet> UN = Set.of(RuleSet.UN_R53);

  private static LampItem lamp(
      LampKind kind, LampColour colour, double x, double y, double z, double radius) {
    return LampItem.round(kind.id() + " at " + y, kind, colour, x, y, z, radius);
  }

  private static List<LampItem> pair(
      LampKind kind, LampColour colour, double x, double y, double z, double radius) {
    return List.of(lamp(kind, colour, x, y, z, radius), lamp(kind, colour, x, -y, z, radius));
  }

  private static LawFinding only(List<LawFinding> findings, String id) {
    List<LawFinding> those = findings.stream().filter(f -> f.id().equals(id)).toList();
    assertThat(those).as(id).hasSize(1);
    return those.get(0);
  }

  private static List<LawFinding> all(List<LawFinding> findings, String id) {
    List<LawFinding> those = findings.stream().filter(f -> f.id().equals(id)).toList();
    assertThat(those).as(id).isNotEmpty();
    return those;
  }

  // Heights by plain subtraction from the listed limits: 559 and 1372, 381, 1524.
  @ParameterizedTest
  @CsvSource({
    "HEADLAMP, WHITE, 560, PASS, 559, 1",
    "HEADLAMP, WHITE, 558, FAIL, 559, -1",
    "HEADLAMP, WHITE, 559, PASS, 559, 0",
    "HEADLAMP, WHITE, 1373, FAIL, 1372, -1",
    "TAIL, RED, 380, FAIL, 381, -1",
    "STOP, RED, 380, FAIL, 381, -1",
    "REAR_REFLECTOR, RED, 1530, FAIL, 1524, -6",
    "REAR_REFLECTOR, RED, 900, PASS, 381, 519"
  })
  void usHeightsCountToTheCentre(
      LampKind kind, LampColour colour, double z, Verdict verdict, double limit, double margin) {
    LawFinding f =
        only(
            LampRules.check(US, List.of(lamp(kind, colour, 0, 0, z, 40))),
            "law.us." + kind.id() + ".height");
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isEqualTo(z);
    assertThat(f.limit()).isEqualTo(limit);
    assertThat(f.margin()).isCloseTo(margin, within(1e-9));
    assertThat(f.unit()).isEqualTo("mm");
    assertThat(f.text()).contains("centre");
    assertThat(f.source()).contains("571.108");
  }

  // Signals at ±y, headlamp lit radius 90, signal lit radius 25, same height.
  @ParameterizedTest
  @CsvSource({"200, FAIL, -6.4, FAIL, -16.6", "217, PASS, 27.6, PASS, 0.4"})
  void usFrontSignalsNeedDistance(
      double y, Verdict apart, double apartMargin, Verdict gap, double gapMargin) {
    List<LampItem> lamps =
        new ArrayList<>(pair(LampKind.FRONT_SIGNAL, LampColour.AMBER, 1500, y, 800, 25));
    lamps.add(lamp(LampKind.HEADLAMP, LampColour.WHITE, 1550, 0, 800, 90));
    List<LawFinding> findings = LampRules.check(US, lamps);
    LawFinding centres = only(findings, "law.us.front-signal.apart");
    assertThat(centres.verdict()).isEqualTo(apart);
    assertThat(centres.margin()).isCloseTo(apartMargin, within(1e-9));
    assertThat(all(findings, "law.us.front-signal.headlamp-gap"))
        .hasSize(2)
        .allSatisfy(
            f -> {
              assertThat(f.verdict()).isEqualTo(gap);
              assertThat(f.margin()).isCloseTo(gapMargin, within(1e-9));
            });
  }

  @Test
  void usAmberRearSignalsAreSparedTheFourInchGap() {
    List<LampItem> lamps =
        new ArrayList<>(pair(LampKind.REAR_SIGNAL, LampColour.AMBER, -200, 115, 700, 25));
    lamps.add(tail());
    List<LawFinding> findings = LampRules.check(US, lamps);
    LawFinding centres = only(findings, "law.us.rear-signal.apart");
    assertThat(centres.verdict()).isEqualTo(Verdict.PASS);
    assertThat(centres.value()).isEqualTo(230);
    assertThat(centres.margin()).isCloseTo(1.4, within(1e-9));
    assertThat(all(findings, "law.us.rear-signal.lamp-gap"))
        .allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.NOT_APPLICABLE));
  }

  private static LampItem tail() {
    return LampItem.box("tail", LampKind.TAIL, LampColour.RED, -200, 0, 700, 60, 30);
  }

  @Test
  void usRedRearSignalsNeedTheFourInchGap() {
    List<LampItem> lamps =
        new ArrayList<>(pair(LampKind.REAR_SIGNAL, LampColour.RED, -200, 115, 700, 25));
    lamps.add(tail());
    assertThat(all(LampRules.check(US, lamps), "law.us.rear-signal.lamp-gap"))
        .hasSize(2)
        .allSatisfy(
            f -> {
              assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
              assertThat(f.value()).isCloseTo(30, within(1e-9));
              assertThat(f.margin()).isCloseTo(-71.6, within(1e-9));
            });
    // Twin lamps off the centreline: the rule is not applied.
    lamps.remove(lamps.size() - 1);
    lamps.addAll(pair(LampKind.TAIL, LampColour.RED, -200, 40, 700, 20));
    assertThat(all(LampRules.check(US, lamps), "law.us.rear-signal.lamp-gap"))
        .allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.NOT_APPLICABLE));
  }

  @Test
  void unIndicatorHeightCountsToTheEdge() {
    // Lowest lit point 345 against 350 (from memory).
    LawFinding f =
        all(
                LampRules.check(
                    UN, pair(LampKind.FRONT_SIGNAL, LampColour.AMBER, 1500, 250, 370, 25)),
                "law.un-r53.front-signal.height")
            .get(0);
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isEqualTo(345);
    assertThat(f.limit()).isEqualTo(350);
    assertThat(f.margin()).isEqualTo(-5);
    assertThat(f.text()).contains("lower edge");
    assertThat(f.source()).contains("from memory");
  }

  private static List<LampItem> complete() {
    List<LampItem> lamps = new ArrayList<>();
    lamps.add(lamp(LampKind.HEADLAMP, LampColour.WHITE, 1550, 0, 800, 80));
    lamps.add(lamp(LampKind.FRONT_POSITION, LampColour.WHITE, 1550, 0, 800, 20));
    lamps.addAll(pair(LampKind.FRONT_SIGNAL, LampColour.AMBER, 1500, 230, 800, 25));
    lamps.addAll(pair(LampKind.REAR_SIGNAL, LampColour.AMBER, -250, 160, 700, 25));
    lamps.add(tail());
    lamps.add(LampItem.box("stop", LampKind.STOP, LampColour.RED, -200, 0, 700, 60, 45));
    lamps.add(lamp(LampKind.REAR_REFLECTOR, LampColour.RED, -200, 0, 500, 30));
    lamps.addAll(pair(LampKind.FRONT_SIDE_REFLECTOR, LampColour.AMBER, 1400, 90, 500, 20));
    lamps.addAll(pair(LampKind.REAR_SIDE_REFLECTOR, LampColour.RED, 100, 90, 500, 20));
    lamps.add(lamp(LampKind.PLATE, LampColour.WHITE, -260, 0, 620, 10));
    return lamps;
  }

  @Test
  void aFullSetOfLampsPassesEveryRuleSet() {
    List<LawFinding> findings =
        LampRules.check(EnumSet.allOf(RuleSet.class), complete(), new LawFacts(false, -300.0));
    assertThat(findings).hasSizeGreaterThan(60);
    assertThat(findings)
        .allSatisfy(
            f -> assertThat(f.verdict()).as(f.text()).isIn(Verdict.PASS, Verdict.NOT_APPLICABLE));
    assertThat(findings).filteredOn(f -> f.id().endsWith("rear-signal.ahead")).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    "HEADLAMP, us un-r53 uk",
    "FRONT_POSITION, un-r53 uk",
    "FRONT_SIGNAL, us un-r53",
    "REAR_SIGNAL, us un-r53",
    "TAIL, us un-r53",
    "STOP, us un-r53",
    "REAR_REFLECTOR, us un-r53",
    "FRONT_SIDE_REFLECTOR, us",
    "REAR_SIDE_REFLECTOR, us",
    "PLATE, us un-r53"
  })
  void aMissingLampIsReported(LampKind kind, String sets) {
    List<LampItem> lamps = complete();
    lamps.removeIf(l -> l.kind() == kind);
    List<String> failed =
        LampRules.check(EnumSet.allOf(RuleSet.class), lamps).stream()
            .filter(f -> f.verdict() == Verdict.FAIL)
            .map(LawFinding::id)
            .toList();
    assertThat(failed)
        .containsExactlyInAnyOrder(
            java.util.Arrays.stream(sets.split(" "))
                .map(s -> "law." + s + "." + kind.id() + ".count")
                .toArray(String[]::new));
  }

  @Test
  void noLampsAtAllMeansEveryRequiredOneIsMissing() {
    List<LawFinding> us = LampRules.check(US, List.of());
    assertThat(us).hasSize(9).allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.FAIL));
    assertThat(us.get(0).text()).contains("missing");
    assertThat(LampRules.check(Set.of(), List.of())).isEmpty();
  }

  @Test
  void slowMotorDrivenCyclesNeedNoSignals() {
    List<LampItem> lamps = complete();
    lamps.removeIf(l -> l.kind() == LampKind.FRONT_SIGNAL || l.kind() == LampKind.REAR_SIGNAL);
    List<LawFinding> findings = LampRules.check(US, lamps, new LawFacts(true, null));
    assertThat(findings).noneMatch(f -> f.verdict() == Verdict.FAIL);
    assertThat(only(findings, "law.us.front-signal.count").verdict())
        .isEqualTo(Verdict.NOT_APPLICABLE);
  }

  @Test
  void wrongColourOffCentreAndLopsidedFail() {
    List<LampItem> lamps = complete();
    lamps.replaceAll(
        l ->
            switch (l.kind()) {
              case TAIL -> LampItem.box(l.name(), l.kind(), LampColour.AMBER, -200, 0, 700, 60, 30);
              case STOP -> LampItem.box(l.name(), l.kind(), LampColour.RED, -200, 5, 700, 60, 30);
              case REAR_SIGNAL -> l.yMm() > 0 ? lamp(l.kind(), l.colour(), -250, 160, 720, 25) : l;
              case FRONT_SIGNAL -> lamp(l.kind(), l.colour(), 1500, 230 + l.yMm() / 100, 800, 25);
              default -> l;
            });
    List<LawFinding> findings = LampRules.check(US, lamps);
    assertThat(only(findings, "law.us.tail.colour").verdict()).isEqualTo(Verdict.FAIL);
    LawFinding stop = only(findings, "law.us.stop.placement");
    assertThat(stop.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(stop.value()).isEqualTo(5);
    LawFinding rear = only(findings, "law.us.rear-signal.placement");
    assertThat(rear.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(rear.value()).isEqualTo(20);
    assertThat(only(findings, "law.us.front-signal.placement").text())
        .contains("2 on the left and 0 on the right");
  }

  @Test
  void headlampPairsStaySymmetricAndClose() {
    List<LampItem> close = pair(LampKind.HEADLAMP, LampColour.WHITE, 1500, 150, 800, 60);
    assertThat(only(LampRules.check(US, close), "law.us.headlamp.pair-gap").margin())
        .isCloseTo(20, within(1e-9));
    assertThat(only(LampRules.check(US, close), "law.us.headlamp.placement").verdict())
        .isEqualTo(Verdict.PASS);
    List<LampItem> wide = pair(LampKind.HEADLAMP, LampColour.WHITE, 1500, 170, 800, 60);
    assertThat(only(LampRules.check(UN, wide), "law.un-r53.headlamp.pair-gap").verdict())
        .isEqualTo(Verdict.FAIL);
    List<LampItem> stacked =
        List.of(
            lamp(LampKind.HEADLAMP, LampColour.WHITE, 1500, 0, 700, 60),
            lamp(LampKind.HEADLAMP, LampColour.WHITE, 1500, 0, 900, 60));
    assertThat(LampRules.check(US, stacked)).noneMatch(f -> f.id().endsWith("pair-gap"));
    assertThat(only(LampRules.check(US, stacked), "law.us.headlamp.placement").verdict())
        .isEqualTo(Verdict.PASS);
  }

  // Intensity decides between 20 and 75 mm (from memory), so that is a caution.
  @ParameterizedTest
  @CsvSource({"19, FAIL", "20, CAUTION", "74, CAUTION", "75, PASS"})
  void unIndicatorGapToThePassingBeamGrades(double gap, Verdict verdict) {
    List<LampItem> lamps =
        new ArrayList<>(
            pair(LampKind.FRONT_SIGNAL, LampColour.AMBER, 1500, 80 + 25 + gap, 800, 25));
    lamps.add(lamp(LampKind.HEADLAMP, LampColour.WHITE, 1550, 0, 800, 80));
    assertThat(all(LampRules.check(UN, lamps), "law.un-r53.front-signal.headlamp-gap"))
        .hasSize(2)
        .allSatisfy(f -> assertThat(f.verdict()).isEqualTo(verdict));
  }

  @Test
  void unFogLampsKeepTheirPlace() {
    List<LampItem> lamps = complete();
    lamps.add(lamp(LampKind.FRONT_FOG, LampColour.WHITE, 1500, 0, 850, 40));
    lamps.add(lamp(LampKind.REAR_FOG, LampColour.RED, -200, 150, 700, 30));
    List<LawFinding> findings = LampRules.check(UN, lamps);
    // 850 + 40 against 800 + 80.
    assertThat(only(findings, "law.un-r53.front-fog.below-headlamp").margin())
        .isCloseTo(-10, within(1e-9));
    // 150 − 60 − 30 = 60 against 100.
    assertThat(only(findings, "law.un-r53.rear-fog.stop-gap").margin())
        .isCloseTo(-40, within(1e-9));
  }

  @Test
  void ukHeadlampTopAndPositionLampHaveTheirLimits() {
    List<LawFinding> findings =
        LampRules.check(
            Set.of(RuleSet.UK),
            List.of(
                lamp(LampKind.HEADLAMP, LampColour.WHITE, 1500, 0, 1150, 60),
                lamp(LampKind.FRONT_POSITION, LampColour.WHITE, 1500, 0, 200, 20)));
    LawFinding head = only(findings, "law.uk.headlamp.height");
    assertThat(head.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(head.value()).isEqualTo(1210);
    assertThat(head.limit()).isEqualTo(1200);
    // No least height for the position lamp.
    LawFinding position = only(findings, "law.uk.front-position.height");
    assertThat(position.verdict()).isEqualTo(Verdict.PASS);
    assertThat(position.limit()).isEqualTo(1500);
  }

  @Test
  void gapsBetweenLitAreasAreMeasuredInTheFrontView() {
    LampItem round = lamp(LampKind.HEADLAMP, LampColour.WHITE, 1500, 0, 800, 50);
    LampItem other = lamp(LampKind.FRONT_SIGNAL, LampColour.AMBER, 900, 300, 400, 50);
    // 3-4-5: 500 − 100, however far apart along the machine.
    assertThat(round.frontViewGapMm(other)).isCloseTo(400, within(1e-9));
    LampItem box = LampItem.box("b", LampKind.TAIL, LampColour.RED, 0, 140, 920, 40, 20);
    // Corner (100, 900) from centre (0, 800): 100√2 − 50.
    assertThat(round.frontViewGapMm(box)).isCloseTo(100 * Math.sqrt(2) - 50, within(1e-9));
    assertThat(box.frontViewGapMm(round)).isEqualTo(round.frontViewGapMm(box));
    assertThat(round.frontViewGapMm(round)).isNegative();
  }

  @Test
  void steeredLampsAreJudgedStraightAhead() {
    LampItem steered =
        new LampItem("head", LampKind.HEADLAMP, LampColour.WHITE, 1500, 0, 800, 60, 60, true, true);
    assertThat(only(LampRules.check(US, List.of(steered)), "law.us.headlamp.height").text())
        .contains("wheel straight ahead");
  }

  @Test
  void nonsenseLampsAreRefused() {
    assertThatThrownBy(() -> lamp(LampKind.TAIL, LampColour.RED, 0, Double.NaN, 500, 20))
        .hasMessageContaining("centre y mm");
    assertThatThrownBy(() -> lamp(LampKind.TAIL, LampColour.RED, 0, 0, 500, 0))
        .hasMessageContaining("half width mm");
    assertThatThrownBy(() -> lamp(LampKind.TAIL, null, 0, 0, 500, 20))
        .hasMessageContaining("colour");
    assertThatThrownBy(
            () -> new LampItem("x", LampKind.TAIL, LampColour.RED, 0, 0, 500, 20, 30, true, false))
        .hasMessageContaining("round");
    assertThatThrownBy(() -> new LawFacts(false, Double.NaN)).hasMessageContaining("rearmost");
  }

  @Test
  void theCautionSaysWhoDecides() {
    assertThat(LampRules.CAUTION).contains("not legal advice").contains("licensed inspection");
  }
}
