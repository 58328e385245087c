package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.words.Units;

/** Formers where there is something to cut, and a millimetre beyond. */
class FormerFindingsTest {

  private static Optional<Finding> finding(String formers) {
    return TestMachine.runabout()
        .pin("plateAt", 300, 1500)
        .with(
            "parts",
            "plate",
            "{'kind': 'box', 'frame': 'plateAt', 'mass': 1, 'left': '50 mm', 'right': '50 mm',"
                + " 'outline': {'points': [[0, 0], [100, 0], [100, 60], [0, 60]]}, 'formers': "
                + formers
                + "}")
        .finding("formers.plate");
  }

  private static String across(double x, double height) {
    return String.format(
        Locale.ROOT,
        "{'across': [{'name': 'mid', 'x': '%s mm'}], 'stringers': [{'name': 'waist', 'height':"
            + " '%s mm', 'width': '10 mm', 'depth': '5 mm'}]}",
        x,
        height);
  }

  @Test
  void formersAreWithinThePartAndStringersMeetThem() {
    assertThat(finding(across(99, 1559))).isEmpty();
    Finding beyond = finding(across(101, 1559)).orElseThrow();
    assertThat(beyond.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(beyond.text())
        .contains("mid: nothing to cut at x 101 mm, the part reaches from 0 to 100 mm")
        .contains("waist: this stringer meets no former");
    assertThat(finding(across(99, 1561)).orElseThrow().text())
        .startsWith("Formers of plate: waist: this stringer meets no former")
        .doesNotContain("mid");
    assertThat(finding("{'along': [{'y': '51 mm'}]}").orElseThrow().text())
        .contains("nothing to cut at y 51 mm");
    assertThat(finding("{'along': [{'y': '-49 mm'}]}")).isEmpty();
  }

  @Test
  void aSheetAsThickAsThePartIsLongIsToldInTheUnitsThatAreRead() {
    String thick = "{'across': [{'x': '1 in', 'thickness': '%s mm'}]}";
    assertThat(finding(String.format(thick, 99))).isEmpty();
    Finding f = finding(String.format(thick, 101.6)).orElseThrow();
    assertThat(f.text()).contains("as thick as the part is long, 100 mm");
    assertThat(f.words().in(Units.IN)).contains("its sheet of 4 in").doesNotContain("mm");
  }
}
