package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** A lip of 3 mm sheet, just long enough to be folded and not quite. */
class FoldFindingsTest {

  private static Optional<Finding> finding(String lip) {
    return TestMachine.runabout()
        .pin("plateAt", 300, 1500)
        .with(
            "parts",
            "plate",
            "{'kind': 'cowl', 'frame': 'plateAt', 'mass': 1, 'left': '50 mm', 'right': '50 mm',"
                + " 'material': 'aluminium', 'thickness': '3 mm', 'open': true,"
                + " 'outline': {'closed': false, 'points': [[0, 0], [100, 0], [100, "
                + lip
                + "]]}}")
        .finding("folds.plate");
  }

  @Test
  void aLipTooShortForItsFoldIsToldWithItsPart() {
    assertThat(finding("4.6")).isEmpty();
    Finding f = finding("4.4").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).startsWith("Sheet of plate: edge strip: leg 2 of 4.4 mm is too short");
  }
}
