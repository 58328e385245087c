package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** People keep clear of what they do not rest on, of each other too. */
class PeopleGapsTest {

  private static final String SQUARE =
      "'outline': {'points': [['-12 mm', '-12 mm'], ['12 mm', '-12 mm'], ['12 mm', '12 mm'],"
          + " ['-12 mm', '12 mm']]}";

  private static final String LAYERS =
      "'layers': [{'thickness': '40 mm', 'density': '45 kg/m^3', 'ifd25': '225 N',"
          + " 'supportFactor': '2.7'}]";

  /** The runabout with a thing at the rider's thighs. */
  private static TestMachine thing(String json) {
    return TestMachine.runabout()
        .with("parts", "thing", "{" + json + "}")
        .pin("q1", 620, 690)
        .pin("q2", 660, 695);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "'kind': 'peg', 'seat': 'passenger', 'at': 'q1', 'diameter': '25 mm', 'y': '100 mm',"
            + " 'length': '200 mm'",
        "'kind': 'grip', 'seat': 'passenger', 'at': 'q1', 'diameter': '25 mm', 'y': '100 mm',"
            + " 'length': '200 mm'",
        "'kind': 'footboard', 'seat': 'passenger', 'at': 'q1', 'to': 'q2', 'diameter': '12 mm',"
            + " 'y': '100 mm', 'length': '200 mm'",
        "'kind': 'peg', 'at': 'q1', 'diameter': '25 mm', 'y': '100 mm', 'length': '200 mm'",
        "'kind': 'lever', 'frame': 'q1', 'left': '150 mm', 'right': '150 mm', " + SQUARE,
        "'kind': 'cushion', 'role': 'head', 'from': 'q1', 'to': 'q2', 'board': '12 mm', 'left': '90"
            + " mm', 'right': '90 mm', "
            + LAYERS,
        "'kind': 'cushion', 'role': 'pan', 'seat': 'passenger', 'from': 'q1', 'to': 'q2', 'board':"
            + " '12 mm', 'left': '90 mm', 'right': '90 mm', "
            + LAYERS
      })
  void nothingGoesThroughThighs(String json) {
    Finding f = thing(json).finding("gap.thing.Nell").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isNegative();
  }

  // the thighs reach 282 mm to the side at most
  @Test
  void pegBesideTheThighsIsClear() {
    String peg =
        "'kind': 'peg', 'seat': 'passenger', 'at': 'q1', 'diameter': '25 mm', 'y': '400 mm',"
            + " 'length': '90 mm'";
    assertThat(thing(peg).finding("gap.thing.Nell")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"pan", "back", "boards", "grips"})
  void whatSomebodyRestsOnIsNoFault(String part) {
    assertThat(TestMachine.runabout().findings())
        .filteredOn(f -> f.id().startsWith("gap." + part + "."))
        .allMatch(f -> f.verdict() == Verdict.PASS);
  }

  // each side of 10 mm; farther out, the passenger's knees pass beside the rider
  @ParameterizedTest
  @CsvSource({"240, FAIL", "280, CAUTION", "300, PASS"})
  void peopleKeepClearOfEachOther(int pegMm, Verdict verdict) {
    Finding f =
        TestMachine.tourer()
            .part("pillionPegs", "y", "'" + pegMm + " mm'")
            .finding("gap.people.Runa.passenger.Bram")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.limit()).isEqualTo(10);
    assertThat(f.stanceWords()).isEqualTo("laden, Bram and Runa");
    if (verdict != Verdict.PASS) {
      assertThat(f.text()).contains("move the passenger's seat back, by ");
    }
    assertThat(f.source()).contains("judgement");
  }

  @Test
  void aPassengerInTheRidersBackRestFails() {
    Finding f =
        TestMachine.tourer()
            .part("back", "left", "'250 mm'")
            .finding("gap.back.Runa.passenger")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
  }
}
