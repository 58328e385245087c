package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.study.TestMachine;

/** A hot box over something that heat spoils, so far apart as it is drawn. */
class HeatFindingsTest {

  /**
   * A box of 40 mm, hot, far over the machine, with something of a kind so far below it.
   *
   * @param side 1 left, -1 right
   */
  private static TestMachine apart(String kind, double mm, int side) {
    String box = "'outline': {'points': [[0, 0], [40, 0], [40, 40], [0, 40]]}";
    String across = side > 0 ? "'left': 90, 'right': -50" : "'left': -50, 'right': 90";
    return TestMachine.runabout()
        .pin("stove", 700, 2000)
        .pin("below", 700, 2000 - 40 - mm)
        .with(
            "parts",
            "stove",
            "{'kind': 'box', 'frame': 'stove', 'hot': true, 'mass': 1, "
                + box
                + ", "
                + across
                + "}")
        .with(
            "parts",
            "spoilt",
            "{'kind': '"
                + kind
                + "', 'frame': 'below', 'mass': 1, "
                + (kind.equals("cowl") ? "'thickness': 3, " : "")
                + box
                + ", "
                + across
                + "}");
  }

  @ParameterizedTest
  @CsvSource({
    "tank, 99, 100, CAUTION", "tank, 101, 100,",
    "battery, 49, 50, CAUTION", "battery, 51, 50,",
    "cowl, 74, 75, CAUTION", "cowl, 76, 75,",
    "box, 30, 75,"
  })
  void eachHasItsOpenDistance(String kind, double mm, double limit, Verdict verdict) {
    for (int side : new int[] {1, -1}) {
      var found = apart(kind, mm, side).finding("heat.stove.spoilt");
      if (verdict == null) {
        assertThat(found).isEmpty();
      } else {
        assertThat(found.orElseThrow().verdict()).isEqualTo(verdict);
        assertThat(found.orElseThrow().value()).isCloseTo(mm, within(1e-6));
        assertThat(found.orElseThrow().limit()).isEqualTo(limit);
      }
    }
  }

  /** What is said to move does it, that way: what burns is over what it spoils. */
  @Test
  void itSaysWhatToMoveAndWhichWay() {
    Matcher said =
        Pattern.compile("100 mm are asked: move stove ([0-9.]+) mm up, or")
            .matcher(apart("tank", 30, 1).finding("heat.stove.spoilt").orElseThrow().text());
    assertThat(said.find()).isTrue();
    double up = Double.parseDouble(said.group(1));
    assertThat(up).isBetween(70.0, 70.2);
    assertThat(apart("tank", 30 + up, 1).finding("heat.stove.spoilt")).isEmpty();
  }

  @Test
  void whatTheLayoutAsksItselfFails() {
    TestMachine machine = apart("tank", 90, 1).with("demands", "openHeatFuel", "'90.5 mm'");
    assertThat(machine.verdict("heat.stove.spoilt")).isEqualTo(Verdict.FAIL);
    machine.with("demands", "openHeatFuel", "'90 mm'");
    assertThat(machine.finding("heat.stove.spoilt").map(Finding::verdict))
        .isNotEqualTo(java.util.Optional.of(Verdict.FAIL));
  }

  @Test
  void aShieldedGapHasALimitOfItsOwn() {
    TestMachine machine =
        apart("tank", 50, 1)
            .with("limits", "shield", "{'limit': 'gap', 'parts': ['stove', 'spoilt'], 'from': 40}");
    assertThat(machine.finding("heat.stove.spoilt")).isEmpty();
    assertThat(machine.verdict("heat")).isEqualTo(Verdict.PASS);
  }

  /** A limit that asks less than is asked behind a shield says of no shield: 25 mm of a tank. */
  @ParameterizedTest
  @CsvSource({"24.9, true", "25, false"})
  void aLimitOfItsOwnUnderWhatAShieldNeedsSaysSo(double own, boolean told) {
    String limit = "{'limit': 'gap', 'parts': ['stove', 'spoilt'], 'from': " + own + "}";
    var found = apart("tank", 50, 1).with("limits", "shield", limit).finding("heat.stove.spoilt");
    assertThat(found.isPresent()).isEqualTo(told);
    found.ifPresent(
        f -> {
          assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
          assertThat(f.text())
              .contains("100 mm are asked, and behind a shield 25 mm still, where")
              .contains("own limit has 24.9 mm");
        });
  }

  /** Neither a pin that they share nor what it is said to touch lets heat at what it spoils. */
  @Test
  void noJointExcusesHeat() {
    TestMachine machine = apart("battery", 20, -1).part("spoilt", "frame", "'stove'");
    String low = "{'points': [[0, -60], [40, -60], [40, -20], [0, -20]]}";
    machine.part("spoilt", "outline", low).part("spoilt", "touches", "['stove']");
    Finding gap = machine.finding("gap.spoilt.stove").orElseThrow();
    assertThat(gap.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(gap.value()).isCloseTo(20, within(1e-6));
    assertThat(gap.limit()).isEqualTo(25);
    assertThat(machine.finding("heat.stove.spoilt").orElseThrow().limit()).isEqualTo(50);
    // what heat does not spoil may hang on it
    assertThat(machine.part("spoilt", "kind", "'box'").finding("gap.spoilt.stove")).isEmpty();
  }

  /** An engine that is said to touch the rider burns them all the same. */
  @Test
  void anEngineSaidToTouchRidersIsHeldOffThem() {
    for (String touches : new String[] {"[]", "['rider']"}) {
      TestMachine machine = apart("engine", 1000, 1);
      var pan = TestMachine.asFiled("runabout").shapes().get("pan").centre();
      machine.pin("below", pan.x(), pan.z() + 60).part("spoilt", "touches", touches);
      assertThat(machine.findings())
          .filteredOn(f -> f.id().startsWith("heat.spoilt.") && f.who().isPresent())
          .isNotEmpty();
      assertThat(machine.findings())
          .filteredOn(f -> f.id().startsWith("gap.spoilt.") && f.who().isPresent())
          .isNotEmpty();
    }
  }

  /** A tyre, 50 mm open and 25 behind a shield; the front wheel's is as broad on both sides. */
  @ParameterizedTest
  @CsvSource({"51, , PASS", "49, CAUTION, PASS", "24.9, CAUTION, FAIL"})
  void aTyreIsKeptFromHeat(double mm, Verdict heat, Verdict gap) {
    for (int side : new int[] {1, -1}) {
      TestMachine machine = apart("box", 500, side);
      var places = machine.study().placed().places();
      var wheel = machine.layout().parts(WheelPart.class).filter(w -> w.end() == Part.End.REAR);
      WheelPart rear = wheel.findFirst().orElseThrow();
      double beside = Tyres.of(rear, places).widthMm() / 2 + mm;
      var axle = places.pin(rear.axle());
      machine
          .pin("stove", axle.x() - 250, axle.z() + 5)
          .part("stove", "left", String.valueOf(side > 0 ? beside + 40 : -beside))
          .part("stove", "right", String.valueOf(side > 0 ? -beside : beside + 40));
      String id = "stove." + rear.name();
      assertThat(machine.finding("heat." + id).map(Finding::verdict).orElse(null)).isEqualTo(heat);
      assertThat(
              machine.findings().stream()
                  .filter(f -> f.id().equals("gap." + rear.name() + ".stove"))
                  .map(Finding::verdict)
                  .findFirst()
                  .orElse(Verdict.PASS))
          .isEqualTo(gap);
    }
  }

  /** An engine burns skin, and nothing else is asked to keep so far from it. */
  @Test
  void anEngineIsKeptFromPeopleOnly() {
    assertThat(TestMachine.asFiled("tourer").findings())
        .filteredOn(f -> f.id().startsWith("heat.engine"))
        .allMatch(f -> f.who().isPresent() && f.stance().isPresent());
    assertThat(TestMachine.asFiled("runabout").findings())
        .as("nothing burns on it")
        .noneMatch(f -> f.id().startsWith("heat."));
  }

  /** A pipe low under a tank has no room below: the move is told with what it leaves. */
  @Test
  void nothingIsMovedDownIntoTheRoad() {
    String box = "'outline': {'points': [[0, 0], [40, 0], [40, 40], [0, 40]]}";
    String across = "'left': 390, 'right': -350, 'mass': 1, ";
    for (double up : new double[] {130, 900}) {
      TestMachine machine =
          TestMachine.runabout()
              .pin("stove", 2600, up)
              .pin("over", 2600, up + 40 + 30)
              .with(
                  "parts",
                  "stove",
                  "{'kind': 'box', 'frame': 'stove', 'hot': true, " + across + box + "}")
              .with("parts", "spoilt", "{'kind': 'tank', 'frame': 'over', " + across + box + "}");
      String text = machine.finding("heat.stove.spoilt").orElseThrow().text();
      assertThat(text)
          .contains("put a shield")
          .satisfies(
              t ->
                  assertThat(t.contains("over the road, where 100 mm are asked, so put a shield"))
                      .as(t)
                      .isEqualTo(up < 200))
          .satisfies(t -> assertThat(t.contains("move stove")).as(t).isEqualTo(up > 200));
    }
  }
}
