package org.longlow.constraints.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;

class StudyTest {

  static Layout plank() throws Exception {
    Path file =
        Path.of(StudyTest.class.getResource("/org/longlow/constraints/json/plank.json").toURI());
    return ((ReadResult.Read) LayoutReader.read(file)).layout();
  }

  @Test
  void contradictionNamesTheTiesThatCannotAllHold() throws Exception {
    Study study = Study.of(plank());
    assertThat(study.contradicts()).isTrue();
    Finding ties =
        study.findings().stream().filter(f -> f.id().equals("ties")).findFirst().orElseThrow();
    assertThat(ties.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(ties.subject()).contains("belt", "touch");
    assertThat(StudyJson.of(study)).contains("\"status\": \"contradicts\"");
  }

  @Test
  void everyFindingHasAnIdATextAndASource() throws Exception {
    for (Finding f : Study.of(plank()).findings()) {
      assertThat(f.id()).isNotBlank();
      assertThat(f.text()).isNotBlank();
      assertThat(f.source()).isNotBlank();
    }
  }

  @Test
  void aLimitOfAnAngleIsMissedByDegrees() throws Exception {
    Path file =
        Path.of(StudyTest.class.getResource("/org/longlow/constraints/suit/trestle.json").toURI());
    // a tie holds the back at 30 deg
    String text =
        Files.readString(file)
            .replace(
                "\"limits\": {",
                "\"limits\": {\"lean\": {\"limit\": \"rake\", \"pins\": [\"backLow\", \"backTop\"],"
                    + " \"from\": \"34 deg\"},");
    Layout layout = ((ReadResult.Read) LayoutReader.read(text, null)).layout();
    Finding lean =
        Study.of(layout).findings().stream()
            .filter(f -> f.id().equals("limit.lean"))
            .findFirst()
            .orElseThrow();
    assertThat(lean.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(lean.unit()).isEqualTo(FigureUnit.DEG);
    assertThat(lean.margin()).isCloseTo(-4, within(1e-6));
    assertThat(lean.text()).contains("missed by 4°");
  }
}
