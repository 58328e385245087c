package org.longlow.constraints.check.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;

/** Legal findings of whole layouts: what is missing is found, what is unknown never passes. */
class LawFindingsTest {

  /** Lamps of a machine that no rule finds fault with, by part name. */
  private static Map<String, String> lamps() {
    Map<String, String> lamps = new LinkedHashMap<>();
    lamps.put("head", lamp("headlamp", "nose", "0 mm", false, "85 mm", "70 mm"));
    lamps.put("position", lamp("front-position", "nose", "0 mm", false, "15 mm", "10 mm"));
    lamps.put("frontSignals", lamp("front-signal", "nose", "240 mm", true, "35 mm", "25 mm"));
    lamps.put("tailLamp", lamp("tail", "tailPin", "0 mm", false, "60 mm", "25 mm"));
    lamps.put("stopLamp", lamp("stop", "tailPin", "0 mm", false, "60 mm", "25 mm"));
    lamps.put("rearSignals", lamp("rear-signal", "tailPin", "190 mm", true, "35 mm", "25 mm"));
    lamps.put("reflector", lamp("rear-reflector", "platePin", "0 mm", false, "40 mm", "15 mm"));
    lamps.put("plateLight", lamp("plate-lamp", "tailPin", "0 mm", false, "20 mm", "8 mm"));
    lamps.put("plate", lamp("plate", "platePin", "0 mm", false, "90 mm", "70 mm"));
    lamps.put("frontSides", lamp("side-reflector", "nose", "280 mm", true, "5 mm", "20 mm"));
    lamps.put(
        "rearSides",
        lamp("side-reflector", "platePin", "120 mm", true, "5 mm", "20 mm")
            .replace("\"depth\"", "\"colour\": \"red\", \"depth\""));
    return lamps;
  }

  private static String lamp(
      String kind, String at, String y, boolean pair, String halfWidth, String halfHeight) {
    return "{\"kind\": \"lamp\", \"lamp\": \""
        + kind
        + "\", \"at\": \""
        + at
        + "\", \"y\": \""
        + y
        + "\", \"pair\": "
        + pair
        + ", \"halfWidth\": \""
        + halfWidth
        + "\", \"halfHeight\": \""
        + halfHeight
        + "\", \"depth\": \"20 mm\", \"mass\": \"0.2 kg\"}";
  }

  private static final String STAND =
      "{\"kind\": \"stand\", \"pivot\": \"standPivot\", \"foot\": \"standFoot\", \"stowed\":"
          + " \"standStowed\", \"y\": \"220 mm\", \"diameter\": \"20 mm\", \"lean\": \"10 deg\","
          + " \"mass\": \"1 kg\"}";

  private static String text(Map<String, String> parts, String rules) {
    try {
      Path file =
          Path.of(
              LawFindingsTest.class
                  .getResource("/org/longlow/constraints/suit/trestle.json")
                  .toURI());
      String more =
          parts.entrySet().stream()
              .map(e -> "\"" + e.getKey() + "\": " + e.getValue() + ",\n")
              .collect(Collectors.joining());
      return Files.readString(file)
          .replace("\"parts\": {", "\"parts\": {" + more)
          .replace(
              "\"pins\": {",
              "\"pins\": {\"nose\": {\"at\": [\"1950 mm\", \"700 mm\"], \"nailed\": true},"
                  + " \"tailPin\": {\"at\": [\"-250 mm\", \"650 mm\"], \"nailed\": true},"
                  + " \"platePin\": {\"at\": [\"-280 mm\", \"500 mm\"], \"nailed\": true},"
                  + " \"standPivot\": {\"at\": [\"700 mm\", \"200 mm\"], \"nailed\": true},"
                  + " \"standFoot\": {\"at\": [\"660 mm\", \"0 mm\"], \"nailed\": true},"
                  + " \"standStowed\": {\"at\": [\"500 mm\", \"190 mm\"], \"nailed\": true},")
          .replace("\"limits\": {", "\"demands\": {\"rules\": [" + rules + "]}, \"limits\": {");
    } catch (IOException | java.net.URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  private static Study study(Map<String, String> parts, String rules) {
    return study(text(parts, rules));
  }

  private static Study study(String text) {
    ReadResult result = LayoutReader.read(text, null);
    assertThat(result).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout());
  }

  private static List<Finding> law(Study study) {
    return study.findings().stream()
        .filter(f -> f.id().equals("law") || f.id().startsWith("law."))
        .toList();
  }

  private static Finding only(List<Finding> findings, String id) {
    List<Finding> those = findings.stream().filter(f -> f.id().equals(id)).toList();
    assertThat(those).as(id).hasSize(1);
    return those.get(0);
  }

  private static List<String> failing(Study study) {
    return law(study).stream().filter(f -> f.verdict() == Verdict.FAIL).map(Finding::id).toList();
  }

  @Test
  void aMachineWithoutLampsFailsInTheUnitedKingdom() {
    Study study = study(Map.of(), "\"uk\"");
    assertThat(failing(study))
        .containsExactly(
            "law.uk.headlamp.count",
            "law.uk.front-position.count",
            "law.uk.stop.count",
            "law.uk.tail.count",
            "law.uk.front-signal.count",
            "law.uk.rear-signal.count",
            "law.uk.rear-reflector.count",
            "law.uk.plate-lamp.count",
            "law.uk.plate.count");
    // nothing passes of a machine that has nothing
    assertThat(law(study)).noneMatch(f -> f.verdict() == Verdict.PASS);
    assertThat(law(study))
        .extracting(Finding::id)
        .contains(
            "law.uk.tail.not-covered",
            "law.uk.front-signal.not-covered",
            "law.uk.rear-signal.not-covered",
            "law.uk.rear-reflector.not-covered",
            "law.uk.plate.not-covered",
            "law.uk.not-covered.main-beam",
            "law.uk.not-covered.other-lamps",
            "law.uk.not-covered.machine",
            "law.uk.not-covered.angles");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"us\"", "\"un-r53\"", "\"uk\"", "\"us\", \"un-r53\", \"uk\""})
  void aFullSetOfLampsHasNoFault(String rules) {
    assertThat(failing(study(lamps(), rules))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "head, headlamp, us+un-r53+uk",
    "position, front-position, un-r53 uk",
    "frontSignals, front-signal, us+un-r53 uk",
    "tailLamp, tail, us+un-r53 uk",
    "stopLamp, stop, us+un-r53 uk",
    "rearSignals, rear-signal, us+un-r53 uk",
    "reflector, rear-reflector, us+un-r53 uk",
    "plateLight, plate-lamp, us+un-r53+uk",
    "plate, plate, us+un-r53+uk",
    "frontSides, front-side-reflector, us",
    "rearSides, rear-side-reflector, us"
  })
  void eachMissingLampIsFoundByEverySetThatAsksForIt(String part, String name, String sets) {
    Map<String, String> parts = lamps();
    parts.remove(part);
    Set<String> asking = new java.util.TreeSet<>();
    for (String id : failing(study(parts, "\"us\", \"un-r53\", \"uk\""))) {
      assertThat(id).endsWith("." + name + ".count");
      asking.addAll(List.of(id.substring(4, id.length() - name.length() - 7).split("[+]")));
    }
    assertThat(asking).containsExactlyInAnyOrder(sets.split("[+ ]"));
  }

  @Test
  void plateAndItsLampAreToldApart() {
    Map<String, String> noPlate = lamps();
    noPlate.remove("plate");
    Finding plate = only(law(study(noPlate, "\"us\"")), "law.us.plate.count");
    assertThat(plate.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(plate.text()).startsWith("number plate: none given");
    assertThat(only(law(study(noPlate, "\"us\"")), "law.us.plate-lamp.count").verdict())
        .isEqualTo(Verdict.PASS);
    Map<String, String> noLamp = lamps();
    noLamp.remove("plateLight");
    Finding lamp = only(law(study(noLamp, "\"uk\"")), "law.uk.plate-lamp.count");
    assertThat(lamp.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(lamp.text()).startsWith("plate lamp: none given");
    assertThat(only(law(study(noLamp, "\"uk\"")), "law.uk.plate.count").verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void nothingFromMemoryPasses() {
    // all of R53 is from memory; the US and UK sets have some rules that were read
    assertThat(law(study(lamps(), "\"un-r53\""))).noneMatch(f -> f.verdict() == Verdict.PASS);
    for (String rules : List.of("\"us\"", "\"uk\"", "\"us\", \"un-r53\", \"uk\"")) {
      List<Finding> passing =
          law(study(lamps(), rules)).stream().filter(f -> f.verdict() == Verdict.PASS).toList();
      assertThat(passing).isNotEmpty().noneMatch(f -> f.source().contains("from memory"));
    }
  }

  @Test
  void aRuleThatTwoSetsShareIsSaidOnce() {
    List<Finding> findings = law(study(lamps(), "\"us\", \"un-r53\""));
    Finding signals = only(findings, "law.us+un-r53.front-signal.count");
    assertThat(signals.text()).contains("US federal, UN R53").contains("from memory for UN R53");
    assertThat(signals.source()).contains("571.108").contains("UN R53 6.3");
    // it passes by the one and is from memory by the other
    assertThat(signals.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(findings)
        .extracting(Finding::id)
        .doesNotContain("law.us.front-signal.count", "law.un-r53.front-signal.count");
    // limits that differ are said apart
    only(findings, "law.us.tail.height.tailLamp");
    only(findings, "law.un-r53.tail.height.tailLamp");
  }

  @Test
  void idsAreUniqueAndNoTwoFindingsReadTheSame() {
    Random random = new Random(20260711);
    List<String> names = new ArrayList<>(lamps().keySet());
    for (int round = 0; round < 6; round++) {
      Map<String, String> parts = lamps();
      Collections.shuffle(names, random);
      names.subList(0, random.nextInt(4)).forEach(parts::remove);
      // a second one of some kind, and lamps that only some sets speak of
      parts.put("more", lamps().get(names.get(5)));
      parts.put("fog", lamp("front-fog", "nose", "0 mm", false, "40 mm", "30 mm"));
      parts.put("day", lamp("daytime", "nose", "0 mm", false, "40 mm", "30 mm"));
      parts.put("stand", STAND);
      List<Finding> findings = law(study(parts, "\"us\", \"un-r53\", \"uk\""));
      assertThat(findings).extracting(Finding::id).doesNotHaveDuplicates();
      assertThat(findings).extracting(Finding::text).doesNotHaveDuplicates();
      assertThat(findings).allSatisfy(f -> assertThat(f.source()).as(f.id()).isNotBlank());
    }
  }

  @Test
  void aLampThatNoRowSpeaksOfIsNamed() {
    Map<String, String> parts = lamps();
    parts.put("fog", lamp("rear-fog", "tailPin", "0 mm", false, "40 mm", "30 mm"));
    Finding f =
        only(
            law(study(parts, "\"us\", \"un-r53\", \"uk\"")), "law.us+uk.not-covered.rear-fog-lamp");
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.subject()).isEqualTo("fog");
  }

  @Test
  void theRearEndIsThatOfTheMachine() {
    Finding f = only(law(study(lamps(), "\"un-r53\"")), "law.un-r53.rear-signal.ahead.rearSignals");
    assertThat(f.limit()).isEqualTo(300);
    // the rear tyre reaches 300 mm behind the axle, the signals 250
    assertThat(f.value()).isCloseTo(50, within(1.0));
  }

  @Test
  void aStateThatDiffersIsSaid() {
    // Oklahoma 47-12-603: tail lamp 15 to 60 in, 381 to 1524 mm
    String id = "law.us.tail-lamp.state-height.Oklahoma.tailLamp";
    for (double z : new double[] {380.9, 381, 1524, 1524.1}) {
      LampItem tail =
          new LampItem(
              "tailLamp",
              false,
              LampPart.Kind.TAIL,
              LampPart.Colour.RED,
              false,
              -200,
              0,
              z,
              60,
              30,
              false);
      Finding f =
          only(
              Rulings.findings(
                  LawFindings.lampRulings(Set.of(Sets.US_FEDERAL), List.of(tail), -300),
                  Condition.empty(Stance.Kind.UNLADEN),
                  Map.of()),
              id);
      assertThat(f.verdict()).isEqualTo(z < 381 || z > 1524 ? Verdict.CAUTION : Verdict.PASS);
      assertThat(f.text()).contains("Oklahoma");
    }
  }

  @Test
  void theStandIsSaidToFoldAsDrawnAndNeverPasses() {
    Map<String, String> parts = lamps();
    parts.put("prop", STAND);
    List<Finding> findings = law(study(parts, "\"us\", \"uk\""));
    assertThat(only(findings, "law.us.stand.prop").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(only(findings, "law.uk.stand.prop").verdict()).isEqualTo(Verdict.CAUTION);
    String forward =
        text(parts, "\"us\"").replace("[\"500 mm\", \"190 mm\"]", "[\"900 mm\", \"190 mm\"]");
    Finding f = only(law(study(forward)), "law.us.stand.prop");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).contains("does not fold rearward and upward");
    Finding none = only(law(study(lamps(), "\"us\", \"uk\"")), "law.us+uk.stand");
    assertThat(none.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
  }

  @Test
  void footRestsAreAskedForEachSeat() {
    Finding pegs = only(law(study(lamps(), "\"us\"")), "law.us.foot-rest.rider");
    assertThat(pegs.verdict()).isEqualTo(Verdict.PASS);
    assertThat(pegs.subject()).isEqualTo("pegs");
    Map<String, String> two = lamps();
    two.put(
        "rearPan",
        "{\"kind\": \"cushion\", \"role\": \"pan\", \"seat\": \"pillion\", \"from\": \"tailPin\","
            + " \"to\": \"panRear\", \"board\": \"12 mm\", \"left\": \"150 mm\", \"right\": \"150"
            + " mm\", \"layers\": [{\"thickness\": \"60 mm\", \"density\": \"48 kg/m^3\","
            + " \"ifd25\": \"245 N\", \"supportFactor\": \"2.5\"}]}");
    assertThat(only(law(study(two, "\"us\"")), "law.us.foot-rest.pillion").verdict())
        .isEqualTo(Verdict.FAIL);
    two.put(
        "rearPegs",
        "{\"kind\": \"peg\", \"seat\": \"pillion\", \"at\": \"standPivot\", \"diameter\": \"25"
            + " mm\", \"y\": \"250 mm\", \"length\": \"90 mm\"}");
    // that a passenger's fold is not in a layout
    assertThat(only(law(study(two, "\"us\"")), "law.us.foot-rest.pillion").verdict())
        .isEqualTo(Verdict.CAUTION);
  }

  @Test
  void mirrorsAreNotInALayoutAndSoDoNotPass() {
    List<Finding> findings = law(study(lamps(), "\"us\", \"uk\""));
    Finding us = only(findings, "law.us.mirror");
    assertThat(us.verdict()).isEqualTo(Verdict.CAUTION);
    // 12.5 and 10 square inches, exactly
    assertThat(us.text()).contains("8064.5 mm2").contains("6451.6 mm2");
    assertThat(12.5 * 25.4 * 25.4).isCloseTo(8064.5, within(1e-9));
    assertThat(10 * 25.4 * 25.4).isCloseTo(6451.6, within(1e-9));
    assertThat(only(findings, "law.uk.mirror").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
  }

  @Test
  void theHandlebarIsMeasuredFromTheSeatUnderTheRider() {
    Study study = study(lamps(), "\"us\"");
    Finding f = only(law(study), "law.us.handlebar");
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("varies by state");
    // 15 in; by hand for whoever sits deepest, wheels of a rigid machine staying where they are
    assertThat(f.limit()).isEqualTo(381);
    double highest = 0;
    for (Sitting sitting : study.sittings()) {
      Standing laden = study.standing(Condition.laden(List.of(sitting.occupant()))).orElseThrow();
      var pan = sitting.seated().orElseThrow().pan();
      double seat = laden.ground().heightMm(pan.centre()) + pan.remainingMm();
      double grip = laden.ground().heightMm(study.placed().places().pin("grip")) + 33.0 / 2;
      highest = Math.max(highest, grip - seat);
    }
    assertThat(f.value()).isCloseTo(highest, within(1e-6));
    assertThat(f.value()).isBetween(200.0, 430.0);
    String bare = text(lamps(), "\"us\"").replace("\"kind\": \"grip\"", "\"kind\": \"peg\"");
    Finding none = only(law(study(bare)), "law.us.handlebar");
    assertThat(none.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(none.value()).isNaN();
  }

  @Test
  void aMachineThatDoesNotStandIsNotPassedInSilence() {
    List<Finding> findings =
        LawFindings.of(study(lamps(), "\"us\"").layout(), List.of(), List.of());
    assertThat(findings).singleElement().extracting(Finding::verdict).isEqualTo(Verdict.CAUTION);
    assertThat(law(study(lamps(), ""))).isEmpty();
  }

  @Test
  void theCautionSaysWhoDecides() {
    assertThat(only(law(study(lamps(), "\"us\"")), "law").text())
        .contains("not legal advice")
        .contains("licensed inspection");
  }

  @Test
  void nonsenseLampsAreRefused() {
    assertThatThrownBy(() -> item(Double.NaN, 20)).hasMessageContaining("centre y mm");
    assertThatThrownBy(() -> item(0, 0)).hasMessageContaining("half width mm");
  }

  private static LampItem item(double y, double half) {
    return new LampItem(
        "x", false, LampPart.Kind.TAIL, LampPart.Colour.RED, false, 0, y, 500, half, 20, false);
  }

  @Test
  void lampsThatSteerAreJudgedStraightAhead() {
    Map<String, String> parts = lamps();
    parts.computeIfPresent(
        "head", (k, v) -> v.replace("\"depth\"", "\"steered\": true, \"depth\""));
    assertThat(only(law(study(parts, "\"us\"")), "law.us.headlamp.height.head").text())
        .contains("wheel straight ahead");
  }

  /** A bag to 230 mm behind the stop lamp, from 60 mm to the left of it: atan(60 / 230). */
  @Test
  void aLampBehindBodyworkIsNotSeen() {
    Map<String, String> parts = lamps();
    Finding open = only(law(study(parts, "\"uk\"")), "law.uk.stop.seen.stopLamp");
    assertThat(open.verdict()).isEqualTo(Verdict.PASS);
    assertThat(open.text()).contains("to either side its centre is seen to 55° or more");
    parts.put("bag", bag("60 mm"));
    Finding hidden = only(law(study(parts, "\"uk\"")), "law.uk.stop.seen.stopLamp");
    assertThat(hidden.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(hidden.figures().value()).isCloseTo(14.62, within(0.01));
    assertThat(hidden.text())
        .contains(
            "towards the left its centre is seen to 14.6° off straight behind", "hidden by bag");
    // 300 mm: atan(300 / 230), and atan(240 / 230) = 46.2 deg from the left edge of the face
    parts.put("bag", bag("300 mm"));
    Finding seen = only(law(study(parts, "\"uk\"")), "law.uk.stop.seen.stopLamp");
    assertThat(seen.verdict()).isEqualTo(Verdict.PASS);
    assertThat(seen.figures().value()).isCloseTo(52.52, within(0.01));
    // 250 mm: the centre is seen to 47.4 deg, the left edge of the face only to 39.6
    parts.put("bag", bag("250 mm"));
    Finding partly = only(law(study(parts, "\"uk\"")), "law.uk.stop.seen.stopLamp");
    assertThat(partly.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(partly.text()).contains("part of its face is hidden by bag");
  }

  private static String bag(String fromY) {
    return """
        {"kind": "tank", "frame": "tailPin", "outline": {"points": [["-200 mm", "-300 mm"],
         ["-230 mm", "-300 mm"], ["-230 mm", "300 mm"], ["-200 mm", "300 mm"]]},
         "left": "600 mm", "right": "-%s", "mass": "1 kg"}"""
        .formatted(fromY);
  }

  @Test
  void everyNotCoveredRowIsAFinding() {
    for (RuleSet rules : LawTables.sets()) {
      List<Finding> findings = law(study(Map.of(), "\"" + rules.id() + "\""));
      LawTables.rows().stream()
          .filter(row -> row.rules() == rules && row.asked() == Asked.NOT_COVERED)
          .forEach(
              none -> {
                Finding f = only(findings, "law." + rules.id() + ".not-covered." + none.name());
                assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
                assertThat(f.text()).startsWith("Not covered: ");
              });
    }
  }
}
