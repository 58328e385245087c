package org.longlow.constraints.check.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;

/** Every row of the spacing tables, with both sides of its limit. */
class LawSpacingTest {

  private static final double REAR_END_MM = -400;

  /** A round lamp, or a rectangular one if height is given as different. */
  private static LampItem lamp(
      String part,
      LampPart.Kind kind,
      LampPart.Colour colour,
      double x,
      double y,
      double z,
      double half) {
    return new LampItem(part, false, kind, colour, x > 800, x, y, z, half, half, false);
  }

  private static List<LampItem> pair(
      LampPart.Kind kind, LampPart.Colour colour, double x, double y, double half) {
    LampItem left = lamp("pair", kind, colour, x, y, 800, half);
    return List.of(left, left.mirrored());
  }

  private static List<Finding> findings(RuleSet rules, List<LampItem> lamps) {
    return Rulings.findings(
        LawFindings.lampRulings(Set.of(rules), lamps, REAR_END_MM),
        Condition.empty(Stance.Kind.UNLADEN),
        Map.of());
  }

  private static Finding only(RuleSet rules, List<LampItem> lamps, String id) {
    List<Finding> those = findings(rules, lamps).stream().filter(f -> f.id().equals(id)).toList();
    assertThat(those).as(id).hasSize(1);
    return those.get(0);
  }

  private static void held(Finding f, double margin, Verdict verdict) {
    assertThat(f.margin()).as(f.text()).isCloseTo(margin, within(1e-9));
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
  }

  // 571.108 Table I-c: 16 in, 9 in and 4 in; 8 in printed as 200 mm (letters of 1998 and 2002);
  // R53: from memory; Sch. 4 of SI 1989/1796: from memory.
  @ParameterizedTest
  @CsvSource({
    "us, headlamp.pair-gap, 200, TRANSCRIBED",
    "us, front-signal.apart, 406.4, TRANSCRIBED",
    "us, rear-signal.apart, 228.6, TRANSCRIBED",
    "us, front-signal.headlamp-gap, 101.6, TRANSCRIBED",
    "us, rear-signal.tail-gap, 101.6, TRANSCRIBED",
    "us, rear-signal.stop-gap, 101.6, TRANSCRIBED",
    "un-r53, headlamp.pair-gap, 200, FROM_MEMORY",
    "un-r53, front-signal.edges-apart, 240, FROM_MEMORY",
    "un-r53, rear-signal.edges-apart, 180, FROM_MEMORY",
    "un-r53, front-signal.outside-headlamp, 0, FROM_MEMORY",
    "un-r53, front-signal.headlamp-gap, 75, FROM_MEMORY",
    "un-r53, rear-signal.ahead, 300, FROM_MEMORY",
    "un-r53, front-fog.below-headlamp, 0, FROM_MEMORY",
    "un-r53, rear-fog.stop-gap, 100, FROM_MEMORY",
    "uk, headlamp.pair-gap, 200, FROM_MEMORY"
  })
  void figuresAndHowWellTheyAreKnown(
      @ConvertWith(Sets.class) RuleSet rules, String name, double limit, Known status) {
    List<Row> spacing =
        LawTables.rows().stream()
            .filter(row -> row.asked().about() == Asked.Subject.SPACING)
            .toList();
    assertThat(spacing).hasSize(15);
    assertThat(spacing)
        .filteredOn(row -> row.rules() == rules && row.name().equals(name))
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.hasLeast() ? row.least() : row.most()).isEqualTo(limit);
              assertThat(row.sources().get(0).status()).isEqualTo(status);
            });
  }

  @ParameterizedTest
  @CsvSource({"us, us, PASS", "un-r53, un-r53, CAUTION", "uk, uk, CAUTION"})
  void headlampsSideBySideStandClose(
      @ConvertWith(Sets.class) RuleSet rules, String id, Verdict inside) {
    // 2 y - 2 · 60
    String what = "law." + id + ".headlamp.pair-gap.pair";
    List<LampItem> close = pair(LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1500, 160, 60);
    held(only(rules, close, what), 0, inside);
    List<LampItem> wide = pair(LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1500, 160.5, 60);
    held(only(rules, wide, what), -1, Verdict.FAIL);
    List<LampItem> stacked =
        List.of(
            lamp("low", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1500, 0, 700, 60),
            lamp("high", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1500, 0, 900, 60));
    assertThat(findings(rules, stacked)).noneMatch(f -> f.id().contains("pair-gap"));
  }

  @ParameterizedTest
  @CsvSource({
    "FRONT_SIGNAL, AMBER, 1500, 203.2, law.us.front-signal.apart.pair",
    "REAR_SIGNAL, AMBER, -200, 114.3, law.us.rear-signal.apart.pair"
  })
  void usSignalsStandApart(
      LampPart.Kind kind, LampPart.Colour colour, double x, double half, String id) {
    held(only(Sets.US_FEDERAL, pair(kind, colour, x, half, 25), id), 0, Verdict.PASS);
    held(only(Sets.US_FEDERAL, pair(kind, colour, x, half - 1, 25), id), -2, Verdict.FAIL);
  }

  @ParameterizedTest
  @CsvSource({
    "FRONT_SIGNAL, 1500, 240, law.un-r53.front-signal.edges-apart.pair",
    "REAR_SIGNAL, -200, 180, law.un-r53.rear-signal.edges-apart.pair"
  })
  void unIndicatorsStandApart(LampPart.Kind kind, double x, double limit, String id) {
    double y = limit / 2 + 25;
    held(only(Sets.UN_R53, pair(kind, LampPart.Colour.AMBER, x, y, 25), id), 0, Verdict.CAUTION);
    held(only(Sets.UN_R53, pair(kind, LampPart.Colour.AMBER, x, y - 1, 25), id), -2, Verdict.FAIL);
  }

  @Test
  void usFrontSignalsStandClearOfTheHeadlamp() {
    // signals at ±y with radius 25, headlamp radius 90 at the same height: y - 115 against 101.6
    String id = "law.us.front-signal.headlamp-gap.pair+head";
    for (double y : new double[] {200, 216.6, 217}) {
      List<LampItem> lamps =
          new ArrayList<>(pair(LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, y, 25));
      lamps.add(lamp("head", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1550, 0, 800, 90));
      held(
          only(Sets.US_FEDERAL, lamps, id),
          y - 115 - 101.6,
          y < 216.6 ? Verdict.FAIL : Verdict.PASS);
      // one beside the other headlamp is no excuse: off the centreline the worse side counts
      lamps.set(2, lamp("head", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1550, 10, 800, 90));
      assertThat(only(Sets.US_FEDERAL, lamps, id).margin())
          .isCloseTo(y - 125 - 101.6, within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({"TAIL, law.us.rear-signal.tail-gap", "STOP, law.us.rear-signal.stop-gap"})
  void usRedSignalsStandClearOfASingleLamp(LampPart.Kind kind, String id) {
    for (double y : new double[] {185.5, 186.6}) {
      List<LampItem> lamps =
          new ArrayList<>(pair(LampPart.Kind.REAR_SIGNAL, LampPart.Colour.RED, -200, y, 25));
      lamps.add(
          new LampItem(
              "rear", false, kind, LampPart.Colour.RED, false, -200, 0, 800, 60, 30, false));
      // y - 25 - 60 against 101.6
      held(
          only(Sets.US_FEDERAL, lamps, id + ".pair+rear"),
          y - 85 - 101.6,
          y < 186.6 ? Verdict.FAIL : Verdict.PASS);
    }
    List<LampItem> amber =
        new ArrayList<>(pair(LampPart.Kind.REAR_SIGNAL, LampPart.Colour.AMBER, -200, 115, 25));
    amber.add(lamp("rear", kind, LampPart.Colour.RED, -200, 0, 800, 60));
    assertThat(only(Sets.US_FEDERAL, amber, id).verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    // twins off the centreline: letter of 21 Nov 1984
    List<LampItem> twins =
        new ArrayList<>(pair(LampPart.Kind.REAR_SIGNAL, LampPart.Colour.RED, -200, 115, 25));
    LampItem twin = lamp("twin", kind, LampPart.Colour.RED, -200, 40, 800, 20);
    twins.addAll(List.of(twin, twin.mirrored()));
    assertThat(only(Sets.US_FEDERAL, twins, id).verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
  }

  @Test
  void unIndicatorsStandOutsideTheHeadlampAndHowFarDependsOnTheirLight() {
    for (double gap : new double[] {-1, 0, 10, 74.9, 75}) {
      List<LampItem> lamps =
          new ArrayList<>(
              pair(LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 1500, 80 + 25 + gap, 25));
      lamps.add(lamp("head", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1550, 0, 800, 80));
      held(
          only(Sets.UN_R53, lamps, "law.un-r53.front-signal.outside-headlamp.pair+head"),
          gap,
          gap < 0 ? Verdict.FAIL : Verdict.CAUTION);
      // 75 mm at 90 cd, 40 at 175, 20 at 250, less at 400: never fails, never passes
      Finding f = only(Sets.UN_R53, lamps, "law.un-r53.front-signal.headlamp-gap.pair+head");
      held(f, gap - 75, Verdict.CAUTION);
      assertThat(f.text().contains("less may be allowed")).isEqualTo(gap < 75);
    }
  }

  /** Beside twin headlamps, which need not be alike, each indicator is held to that on its side. */
  @Test
  void anIndicatorIsHeldToTheHeadlampOnItsSide() {
    List<LampItem> lamps =
        List.of(
            lamp(
                "leftSignal",
                LampPart.Kind.FRONT_SIGNAL,
                LampPart.Colour.AMBER,
                1500,
                200,
                800,
                25),
            lamp(
                "rightSignal",
                LampPart.Kind.FRONT_SIGNAL,
                LampPart.Colour.AMBER,
                1500,
                -124,
                800,
                25),
            lamp("leftHead", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1550, 100, 800, 60),
            lamp("rightHead", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1550, -40, 800, 60));
    String id = "law.un-r53.front-signal.outside-headlamp.";
    Finding left = only(Sets.UN_R53, lamps, id + "leftSignal+leftHead");
    held(left, 200 - 25 - 100 - 60, Verdict.CAUTION);
    assertThat(left.text())
        .contains("leftSignal, leftHead: distance outside the other's outer edge is 15 mm");
    held(only(Sets.UN_R53, lamps, id + "rightSignal+rightHead"), 124 - 25 - 40 - 60, Verdict.FAIL);
    assertThat(findings(Sets.UN_R53, lamps))
        .noneMatch(f -> f.id().equals(id + "leftSignal+rightHead"))
        .noneMatch(f -> f.id().equals(id + "rightSignal+leftHead"));
  }

  @ParameterizedTest
  @CsvSource({"-100, CAUTION", "-99.9, FAIL"})
  void unRearIndicatorsStandNearTheRearEnd(double x, Verdict verdict) {
    held(
        only(
            Sets.UN_R53,
            pair(LampPart.Kind.REAR_SIGNAL, LampPart.Colour.AMBER, x, 200, 25),
            "law.un-r53.rear-signal.ahead.pair"),
        300 - (x - REAR_END_MM),
        verdict);
  }

  @Test
  void unFogLampsKeepTheirPlace() {
    LampItem head = lamp("head", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1550, 0, 800, 80);
    LampItem stop = lamp("stop", LampPart.Kind.STOP, LampPart.Colour.RED, -200, 0, 700, 60);
    for (double over : new double[] {0, 0.1}) {
      // upper edges: fog z + 40 against 880; rear fog y - 30 - 60 against 100
      List<LampItem> lamps =
          List.of(
              head,
              stop,
              lamp("fog", LampPart.Kind.FRONT_FOG, LampPart.Colour.WHITE, 1500, 0, 840 + over, 40),
              lamp(
                  "rearFog",
                  LampPart.Kind.REAR_FOG,
                  LampPart.Colour.RED,
                  -200,
                  190 - over,
                  700,
                  30));
      Verdict verdict = over > 0 ? Verdict.FAIL : Verdict.CAUTION;
      held(
          only(Sets.UN_R53, lamps, "law.un-r53.front-fog.below-headlamp.fog+head"), -over, verdict);
      held(only(Sets.UN_R53, lamps, "law.un-r53.rear-fog.stop-gap.rearFog+stop"), -over, verdict);
      assertThat(findings(Sets.UN_R53, lamps))
          .anyMatch(f -> f.text().contains("height of the upper edge above the other's is "))
          .anyMatch(
              f -> f.text().contains("gap between the lit areas, seen along the machine is "));
    }
  }

  @Test
  void gapsBetweenLitAreasAreMeasuredInTheFrontView() {
    LampItem round = lamp("r", LampPart.Kind.HEADLAMP, LampPart.Colour.WHITE, 1500, 0, 800, 50);
    LampItem other =
        lamp("o", LampPart.Kind.FRONT_SIGNAL, LampPart.Colour.AMBER, 900, 300, 400, 50);
    // 3-4-5: 500 - 100, however far apart along the machine
    assertThat(round.frontViewGapMm(other)).isCloseTo(400, within(1e-9));
    LampItem box =
        new LampItem(
            "b", false, LampPart.Kind.TAIL, LampPart.Colour.RED, false, 0, 140, 920, 40, 20, false);
    // corner (100, 900) from centre (0, 800): 100 √2 - 50
    assertThat(round.frontViewGapMm(box)).isCloseTo(100 * Math.sqrt(2) - 50, within(1e-9));
    assertThat(box.frontViewGapMm(round)).isEqualTo(round.frontViewGapMm(box));
    assertThat(round.frontViewGapMm(round)).isNegative();
  }
}
