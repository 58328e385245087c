package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** Grips against the hand breadth that somebody says of themselves. */
class GripFindingsTest {

  private static Finding grip(double handMm, double lengthMm, double thickMm) {
    return TestMachine.runabout()
        .part("grips", "length", "'" + lengthMm + " mm'")
        .part("grips", "diameter", "'" + thickMm + " mm'")
        .field("crew", "Nell", "measured", "{'handbreadth': '" + handMm + " mm'}")
        .finding("grip.Nell.grips")
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"78, 84.1, PASS", "78, 83.9, CAUTION", "84, 89, CAUTION", "74, 81, PASS"})
  void aGripIsAsLongAsTheHandIsBroad(double hand, double length, Verdict verdict) {
    Finding f = grip(hand, length, 32);
    assertThat(f.value()).isCloseTo(length, within(1e-9));
    assertThat(f.limit()).isCloseTo(hand + 6, within(1e-6)); // gloves of 3 mm
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text().contains("make them longer")).isEqualTo(verdict != Verdict.PASS);
  }

  @ParameterizedTest
  @CsvSource({
    "25.9, CAUTION, at least 26 mm",
    "26.1, PASS, 26.1 mm thick.",
    "41.9, PASS, 41.9 mm thick.",
    "42.1, CAUTION, at most 42 mm"
  })
  void handsCloseRoundIt(double thick, Verdict verdict, String words) {
    Finding f = grip(85, 120, thick);
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text()).contains(words);
  }

  /** Whoever sits behind holds on, and steers nothing. */
  @Test
  void onlyWhoeverRidesHasGrips() {
    assertThat(TestMachine.asFiled("tourer").findings())
        .filteredOn(f -> f.kind() == GripFindings.GRIP)
        .isNotEmpty()
        .allMatch(f -> f.who().get().rides());
  }
}
