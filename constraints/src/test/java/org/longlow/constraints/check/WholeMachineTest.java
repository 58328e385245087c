package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What holds of all findings of a machine together. */
class WholeMachineTest {

  private static TestMachine rigid() {
    return TestMachine.runabout()
        .part("front", "bump", "'0 mm'")
        .part("front", "droop", "'0 mm'")
        .part("swingarm", "bump", "'0 mm'")
        .part("swingarm", "droop", "'0 mm'");
  }

  private static Map<String, String> told(Study study, boolean weighed) {
    Map<String, String> told = new TreeMap<>();
    for (Finding f : study.findings()) {
      if (f.kind().weighed() == weighed) {
        told.put(f.id(), f.verdict() + " " + f.value() + " " + f.text());
      }
    }
    return told;
  }

  /** Without springs a mass moves nothing, so what is told of the drawing alone stays as it is. */
  @Test
  void aMassChangesOnlyWhatRestsOnMasses() {
    Study light = rigid().study();
    Study heavy = rigid().part("battery", "mass", "'55 kg'").study();
    assertThat(light.shapes().get("battery").massKg()).isNotEqualTo(55);
    assertThat(told(heavy, false)).hasSizeGreaterThan(50).isEqualTo(told(light, false));
    assertThat(told(heavy, true)).isNotEqualTo(told(light, true));
    assertThat(told(heavy, true).get("load.unladen"))
        .isNotEqualTo(told(light, true).get("load.unladen"));
  }

  private static Study read(String text) {
    ReadResult read = LayoutReader.read(text.replace('\'', '"'), null);
    assertThat(read).as(String.valueOf(read)).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) read).layout());
  }

  @Test
  void aFrameAndTwoWheelsSayWhatIsMissingAndNothingAbsurd() {
    Study study =
        read(
            "{'longlow': 1, 'name': 'bare', 'pins': {'rearAxle': [0, 300], 'frontAxle': [1600, 300],"
                + " 'rearEnd': [300, 350], 'frontEnd': [1200, 600]}, 'parts': {"
                + "'back': {'kind': 'wheel', 'end': 'rear', 'axle': 'rearAxle', 'tyre': '150/60 R17'},"
                + "'fore': {'kind': 'wheel', 'end': 'front', 'axle': 'frontAxle', 'tyre': '110/80-16'},"
                + "'spine': {'kind': 'rail', 'path': ['rearEnd', 'frontEnd'], 'diameter': 40, 'wall': 2,"
                + " 'bendRadius': 100, 'y': 0, 'material': 'steel'}}}");
    Finding lacks =
        study.findings().stream()
            .filter(f -> f.id().equals("completeness.machine"))
            .findFirst()
            .orElseThrow();
    assertThat(lacks.text()).contains("drive").contains("stand").contains("front");
    for (Finding f : study.findings()) {
      assertThat(f.text()).as(f.id()).doesNotContain("NaN", "Infinity", "null", "∞");
      assertThat(Double.isInfinite(f.value())).as(f.id()).isFalse();
      // nobody has said what these weigh, and a verdict that hangs on it is none
      if (f.kind().weighed()) {
        assertThat(f.verdict()).as(f.id() + " " + f.text()).isNotEqualTo(Verdict.PASS);
      }
      if (f.verdict() == Verdict.FAIL) {
        assertThat(f.text()).as(f.id()).containsAnyOf("missing", "lacks", "there is no", "asked");
      }
    }
  }
}
