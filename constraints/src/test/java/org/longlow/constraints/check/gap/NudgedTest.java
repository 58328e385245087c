package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** Two boxes one over the other, behind everything else: what a move of one leaves to the other. */
class NudgedTest {

  private static final String BOX =
      "{'kind': 'box', 'frame': '%s', 'outline': {'points': [['0 mm', '0 mm'], ['200 mm', '0 mm'],"
          + " ['200 mm', '50 mm'], ['0 mm', '50 mm']]}, 'left': '60 mm', 'right': '60 mm',"
          + " 'mass': '1e-3 kg'}";

  private static final double LOW_MM = 20;

  private static Finding lowest(double gapMm) {
    return TestMachine.tourer()
        .pin("sledPin", -1500, LOW_MM)
        .pin("roofPin", -1500, LOW_MM + 50 + gapMm)
        .with("parts", "sled", BOX.formatted("sledPin"))
        .with("parts", "roof", BOX.formatted("roofPin"))
        .finding("clearance.laden")
        .orElseThrow();
  }

  /** It is to be raised by what it lacks, in tenths and no less; 3 mm are asked between parts. */
  @ParameterizedTest
  @CsvSource({"-1, true", "0.5, true", "2.8, true", "3.2, false", "40, false"})
  void whatARaisedPartComesNearIsSaidWithIt(double left, boolean said) {
    Finding alone = lowest(500);
    assertThat(alone.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(alone.text()).contains("sled is the lowest").doesNotContain("But");
    double raised = Math.ceil(-alone.margin() * 10 - 1e-6) / 10;
    String text = lowest(raised + left).text();
    assertThat(text.contains("But raised so it ")).as(text).isEqualTo(said);
    if (said) {
      assertThat(text)
          .contains(
              left < 0
                  ? "it runs into roof."
                  : "it is %.1f mm from roof, where 3 mm are asked.".formatted(left));
    }
  }
}
