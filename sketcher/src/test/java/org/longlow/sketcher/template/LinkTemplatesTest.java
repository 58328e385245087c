package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Mark;

/** Legs and links of a front, and what is added round them, arms, stands and boards, by hand. */
class LinkTemplatesTest {

  private static final String MACHINE =
      """
      {"longlow": 1, "name": "one",
       "pins": {"r": [0, 300], "f": [1600, 300], "top": [1400, 800], "low": [1460, 650],
         "pivot": [1640, 410], "arm": [500, 300], "foot": [700, 0], "up": [900, 300],
         "a": [500, 600], "b": [900, 620]},
       "parts": {
        "rear": {"kind": "wheel", "end": "rear", "axle": "r", "tyre": "140/70-16"},
        "front": {"kind": "wheel", "end": "front", "axle": "f", "tyre": "110/80-16"},
        "fork": {"kind": "front", "type": "trailing-link", "top": "top", "bottom": "low",
          "pivot": "pivot", "axle": "f", "tube": 40, "y": 90, "bump": 60, "droop": 40
          ADDED},
        "swing": {"kind": "swingarm", "pivot": "arm", "axle": "r", "depth": 50, "left": 100,
          "right": 100, "bump": 60, "droop": 40 ADDED},
        "stand": {"kind": "stand", "pivot": "arm", "foot": "foot", "stowed": "up", "y": 200,
          "diameter": 24, "lean": "12 deg" ADDED},
        "pan": {"kind": "cushion", "role": "pan", "seat": "rider", "from": "a", "to": "b",
          "board": 12, "left": 150, "right": 150,
          "layers": [{"name": "firm", "thickness": 40, "density": 55, "ifd25": 200,
            "supportFactor": 2.5}] ADDED}}}
      """;

  private static Study study(String allowance) {
    String added = allowance.isEmpty() ? "" : ", \"allowance\": " + allowance;
    return Study.of(
        ((ReadResult.Read) LayoutReader.read(MACHINE.replace("ADDED", added), null)).layout());
  }

  private static double areaMm2(Study study, String what) {
    List<NamedDrawing> all = Templates.of(study, Set.of());
    NamedDrawing drawing =
        all.stream().filter(d -> d.fileName().equals(what)).findFirst().orElseThrow();
    return ((Mark.Shape) drawing.drawing().layers().get(0).marks().get(0)).geometry().getArea();
  }

  /** A bar with round ends. */
  private static double bar(double broad, double x, double z) {
    return Math.PI * broad * broad / 4 + broad * Math.hypot(x, z);
  }

  /** Round ends are chords within 0.2 mm, and so is what lies round them. */
  private static void isAll(Study study, double added) {
    double more = 2 * added;
    assertThat(areaMm2(study, "fork-leg")).isCloseTo(bar(40 + more, 180, 240), within(40.0));
    assertThat(areaMm2(study, "fork-link")).isCloseTo(bar(40 + more, 40, 110), within(40.0));
    assertThat(areaMm2(study, "swing")).isCloseTo(bar(50 + more, 500, 0), within(40.0));
    assertThat(areaMm2(study, "stand")).isCloseTo(bar(24 + more, 400, 0), within(40.0));
    double along = Math.hypot(400, 20);
    assertThat(areaMm2(study, "pan-board")).isCloseTo((along + more) * (300 + more), within(1.0));
  }

  @Test
  void linksLegsArmsStandsAndBoardsAreAsLargeAsTheyAreAndWhatIsAdded() {
    isAll(study(""), 0);
    isAll(study("2"), 2);
    isAll(study("-2"), -2);
  }

  @Test
  void aTelescopicForkIsBought() {
    String plain =
        MACHINE
            .replace("trailing-link", "telescopic")
            .replace("\"pivot\": \"pivot\", \"axle\": \"f\"", "\"axle\": \"f\"")
            .replace("ADDED", "");
    Study study = Study.of(((ReadResult.Read) LayoutReader.read(plain, null)).layout());
    assertThat(Templates.of(study, Set.of())).noneMatch(d -> d.part().equals("fork"));
  }

  /** 12.1 mm inside nothing is left of a stand of 24 mm. */
  @Test
  void anAllowanceThatLeavesNothingFails() {
    assertThat(tooMuch("-12.1")).contains("stand").doesNotContain("swing", "pan");
    assertThat(tooMuch("-11.9")).isEmpty();
  }

  private static String tooMuch(String allowance) {
    StringBuilder all = new StringBuilder();
    study(allowance).findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL && f.text().toString().contains("line to cut"))
        .forEach(f -> all.append(f.text()).append('\n'));
    return all.toString();
  }
}
