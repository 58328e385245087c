package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** An axle drawn at another height than its tyre's radius is said, on both sides of each limit. */
class AxleFindingsTest {

  private static final String DRAWN = "\"rearRadius\": {\"is\": \"265.8 mm\"";
  private static final String TYRE = "\"axle\": \"rearAxle\", \"tyre\": \"110/80-14 59P\"";

  private static Finding rear(String drawn, String wheel) {
    return TestMachine.replacing(
            "runabout",
            DRAWN,
            "\"rearRadius\": {\"is\": \"" + drawn + "\"",
            TYRE,
            "\"axle\": \"rearAxle\", " + wheel)
        .finding("axle.rearWheel")
        .orElseThrow();
  }

  // 14 inch rim and 80 % of 110 mm: 177.8 + 88 = 265.8 mm, section 88 mm
  @ParameterizedTest
  @CsvSource({
    "265.8 mm, PASS, 0",
    "266.7 mm, PASS, 0.9",
    "264.9 mm, PASS, 0.9",
    "266.9 mm, CAUTION, 1.1",
    "264.7 mm, CAUTION, 1.1",
    "268.6 mm, CAUTION, 2.8",
    "200 mm, CAUTION, 65.8",
    "178 mm, CAUTION, 87.8",
    "177.6 mm, FAIL, 88.2",
    "354 mm, FAIL, 88.2"
  })
  void heightIsHeldToTheRadius(String drawn, Verdict verdict, double off) {
    Finding f = rear(drawn, "\"tyre\": \"110/80-14\"");
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isCloseTo(off, within(1e-6));
  }

  @Test
  void sentenceSaysBothFiguresAndTheCure() {
    assertThat(rear("200 mm", "\"tyre\": \"110/80-14\"").text())
        .contains("200 mm")
        .contains("265.8 mm")
        .contains("65.8 mm higher than drawn")
        .contains("Draw the axle at 265.8 mm");
  }

  @Test
  void eitherCureWorks() {
    assertThat(rear("200 mm", "\"tyre\": \"110/80-14\", \"radius\": \"200 mm\"").verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(rear("265.8 mm", "\"tyre\": \"110/80-14\"").verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void withoutASizeTheTyreIsAsHighAsItIsWide() {
    String measured = "\"radius\": \"265.8 mm\", \"width\": \"60 mm\"";
    assertThat(rear("206 mm", measured).verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(rear("205 mm", measured).verdict()).isEqualTo(Verdict.FAIL);
  }
}
