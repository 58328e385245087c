package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** What only the placed outline tells: holes on pins, smooth runs, edges through pins. */
class EdgeFindingsTest {

  private static TestMachine with(String outline) {
    return TestMachine.runabout()
        .pin("plateAt", 300, 1500)
        .pin("bolt", 330, 1530)
        .with(
            "parts",
            "plate",
            "{'kind': 'box', 'frame': 'plateAt', 'left': 5, 'right': 5, 'mass': 1, 'outline': "
                + outline
                + "}");
  }

  /** A plate of 100 by 60 whose bolt hole is on a pin 30 mm from two of its edges. */
  @ParameterizedTest
  @CsvSource({"20, 20", "54, 3", "54.2, 2.9", "59, 0.5", "60, 0", "70, -5"})
  void aHoleOnAPinKeepsItsWeb(double diameter, double web) {
    Finding f =
        with("{'points': [[0, 0], [100, 0], [100, 60], [0, 60]], 'holes': [{'hole': 'round',"
                + " 'at': 'bolt', 'diameter': "
                + diameter
                + "}]}")
            .finding("holes.plate")
            .orElseThrow();
    assertThat(f.verdict())
        .isEqualTo(web >= 3 ? Verdict.PASS : web > 0 ? Verdict.CAUTION : Verdict.FAIL);
    assertThat(f.text().contains("tears out")).isEqualTo(web > 0 && web < 3);
    assertThat(f.value()).isCloseTo(web, within(1e-6));
    assertThat(f.text())
        .contains(
            web > 0
                ? String.format(
                    Locale.ROOT, "keeps %.1f mm %s", web, web < 3 ? "between" : "at least")
                : "nothing is left between hole 1 and the edge");
  }

  /**
   * Sheet of 3 folded round 3, so the fold ends 6 from the heel, on both legs. A hole of 6 keeps 9
   * to the heel and 3 * 1.5 to the edges, and its own half.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 9.1, PASS",
    "20, 8.9, CAUTION",
    "20, 1, FAIL",
    "20, -10, FAIL",
    "9.1, 20, PASS",
    "8.9, 20, CAUTION",
    "20, 39, FAIL"
  })
  void aHoleKeepsOffTheFoldOfItsLeg(double onPlate, double onLeg, Verdict verdict) {
    String hole = "[{'hole': 'round', 'at': [50, %s], 'diameter': 6}]";
    Finding f =
        TestMachine.runabout()
            .pin("plateAt", 300, 1500)
            .with(
                "parts",
                "plate",
                "{'kind': 'bracket', 'frame': 'plateAt', 'left': 20, 'right': 20, 'material':"
                    + " 'steel', 'outline': {'points': [[0, 0], [100, 0], [100, 60], [0, 60]],"
                    + " 'holes': "
                    + hole.formatted(onPlate)
                    + "}, 'angle': {'sheet': 3, 'holes': "
                    + hole.formatted(onLeg)
                    + "}}")
            .finding("holes.plate")
            .orElseThrow();
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text().contains("and the heel")).isEqualTo(onLeg < 39);
  }

  /** Pins that lie in one place as the solver leaves them: no fault of the file. */
  @Test
  void aLegAlongAnEdgeWithoutLengthFails() {
    TestMachine machine =
        TestMachine.runabout()
            .pin("plateAt", 300, 1500)
            .with(
                "parts",
                "plate",
                "{'kind': 'bracket', 'frame': 'plateAt', 'left': 20, 'right': 20, 'material':"
                    + " 'steel', 'outline': {'points': [[0, 0], [0, 0], [100, 60], [0, 60]]},"
                    + " 'angle': {'edge': 1, 'sheet': 3}}");
    assertThat(machine.verdict("folds.plate")).isEqualTo(Verdict.FAIL);
    assertThat(machine.finding("folds.plate").orElseThrow().text())
        .contains("second leg of plate", "has no length");
  }

  /** A plate of 10 by 10 with a hole of 4: 5 mm all round, 3 between hole and edge, 2 in it. */
  @ParameterizedTest
  @CsvSource({
    "0.5, ''",
    "1.9, ''",
    "2.1, outside",
    "-1.4, ''",
    "-1.6, inside",
    "-5, inside",
    "-20, inside"
  })
  void anAllowanceLeavesAPieceWithItsHoles(double mm, String side) {
    Optional<Finding> f =
        TestMachine.runabout()
            .pin("plateAt", 300, 1500)
            .with(
                "parts",
                "plate",
                "{'kind': 'bracket', 'frame': 'plateAt', 'left': 2, 'right': 2, 'material':"
                    + " 'steel', 'allowance': "
                    + mm
                    + ", 'outline': {'points': [[0, 0], [10, 0], [10, 10], [0, 10]], 'holes':"
                    + " [{'hole': 'round', 'at': [5, 5], 'diameter': 4}]}}")
            .finding("edge.plate");
    assertThat(f.map(Finding::verdict))
        .isEqualTo(side.isEmpty() ? Optional.empty() : Optional.of(Verdict.FAIL));
    f.ifPresent(x -> assertThat(x.text()).contains(side + " its net outline"));
  }

  @Test
  void aHoleInABulgeOnlyChordsWouldRefuse() {
    // the smooth corner bulges beyond the chord from (0, 60) to (100, 60)
    String bulge =
        "{'points': [[0, 0], [100, 0], [100, 60, 'smooth'], [0, 60, 'smooth']], 'holes':"
            + " [{'hole': 'round', 'at': [50, %s], 'diameter': 4}]}";
    assertThat(with(bulge.formatted("61")).verdict("holes.plate")).isEqualTo(Verdict.PASS);
    assertThat(with(bulge.formatted("90")).verdict("holes.plate")).isEqualTo(Verdict.FAIL);
  }

  @Test
  void holesThatMeetByTheirPinsAreFound() {
    String outline =
        "{'points': [[0, 0], [100, 0], [100, 60], [0, 60]], 'holes': [{'hole': 'round', 'at':"
            + " 'bolt', 'diameter': 20}, {'hole': 'round', 'at': [%s, 30], 'diameter': 20}]}";
    assertThat(with(outline.formatted("54")).verdict("holes.plate")).isEqualTo(Verdict.PASS);
    Finding f = with(outline.formatted("49")).finding("holes.plate").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).contains("hole 1 and hole 2");
  }

  @Test
  void anEdgeThatCrossesItselfByItsPinsIsFound() {
    String outline = "{'points': [[0, 0], [100, 0], 'bolt', [0, 60]]}";
    assertThat(with(outline).finding("edge.plate")).isEmpty();
    Optional<Finding> crossed = with(outline).pin("bolt", 330, 1450).finding("edge.plate");
    assertThat(crossed.map(Finding::verdict)).contains(Verdict.FAIL);
    assertThat(crossed.get().text()).contains("crosses or touches itself near x");
    assertThat(crossed.get().where()).isPresent();
  }

  private static TestMachine withHead(String outline) {
    return TestMachine.runabout()
        .pin("crank", 300, 1500)
        .with(
            "parts",
            "motor",
            "{'kind': 'engine', 'frame': 'crank', 'left': 50, 'right': 50, 'mass': 9, 'outline':"
                + " {'points': [[0, 0], [100, 0], [100, 60], [0, 60]]}, 'bodies': [{'name': 'head',"
                + " 'left': 80, 'right': -50, 'both': true, 'outline': "
                + outline
                + "}]}");
  }

  /** A hole of 20 mm, 14 mm from the edge of a further body, leaves 4 mm; one of 24 leaves 2. */
  @Test
  void furtherBodiesAreLookedAtToo() {
    String holed =
        "{'points': [[0, 60], [80, 60], [80, 140], [0, 140]], 'holes': [{'hole': 'round', 'at':"
            + " [14, 100], 'diameter': %s}]}";
    Finding wide = withHead(holed.formatted("20")).finding("holes.motor.body 2").orElseThrow();
    assertThat(wide.verdict()).isEqualTo(Verdict.PASS);
    assertThat(wide.value()).isCloseTo(4, within(1e-6));
    Finding thin = withHead(holed.formatted("24")).finding("holes.motor.body 2").orElseThrow();
    assertThat(thin.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(thin.value()).isCloseTo(2, within(1e-6));
    assertThat(thin.text()).startsWith("head of motor keeps 2.0 mm");
    String through = "{'points': [[0, 60], [80, 60], [80, 140], 'crown']}";
    TestMachine crossed = withHead(through).pin("crown", 340, 1540);
    assertThat(crossed.verdict("edge.motor.body 2")).isEqualTo(Verdict.FAIL);
    assertThat(withHead(through).pin("crown", 300, 1640).finding("edge.motor.body 2")).isEmpty();
  }

  private static Finding bolted(String material, String holes) {
    return TestMachine.runabout()
        .pin("plateAt", 300, 1500)
        .with(
            "parts",
            "plate",
            "{'kind': 'bracket', 'frame': 'plateAt', 'left': 5, 'right': 5, 'mass': 1, 'material': '"
                + material
                + "', 'outline': {'points': [[0, 0], [200, 0], [200, 160], [0, 160]], 'holes': "
                + holes
                + "}}")
        .finding("holes.plate")
        .orElseThrow();
  }

  /** What lacks most is told, though less stands elsewhere. */
  @Test
  void theOneThatLacksMostIsTold() {
    String holes =
        "[{'hole': 'round', 'at': [100, 24], 'diameter': 40}, {'hole': 'round', 'at': [20, 120],"
            + " 'diameter': 12}, {'hole': 'round', 'at': [190, 80], 'diameter': 10}]";
    Finding f = bolted("steel", holes);
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("plate keeps 5.0 mm between hole 3 and the edge", "leave 10 mm");
    assertThat(f.limit()).isCloseTo(10, within(1e-9));
  }
}
