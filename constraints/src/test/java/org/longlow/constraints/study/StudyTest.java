package org.longlow.constraints.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Rider;

class StudyTest {

  private static Study studied;

  /** Circles that touch from inside, and their middles too far apart for it. */
  @BeforeAll
  static void studyThePlank() throws Exception {
    Path file =
        Path.of(StudyTest.class.getResource("/org/longlow/constraints/json/plank.json").toURI());
    String text =
        Files.readString(file)
            .replace(
                "\"touch\": {",
                "\"apart\": {\"tie\": \"distance\", \"pins\": [\"crank\", \"swingPivot\"],"
                    + " \"is\": \"400 mm\"}, \"touch\": {");
    Layout plank = ((ReadResult.Read) LayoutReader.read(text, null)).layout();
    // what opens is swept past all else, and has no part in this
    studied = Study.of(Changed.with(plank, Map.of("sections", Map.of(), "stances", Map.of())));
  }

  @Test
  void contradictionNamesTheTiesThatCannotAllHold() {
    Study study = studied;
    assertThat(study.contradicts()).isTrue();
    Finding ties =
        study.findings().stream().filter(f -> f.id().equals("ties")).findFirst().orElseThrow();
    assertThat(ties.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(ties.subject()).contains("apart", "touch");
    assertThat(StudyJson.of(study)).contains("\"status\": \"contradicts\"");
  }

  /** Pairs grow as the square of the crew, bodies may not. */
  @Test
  void allPairsShareTheBodiesOfTheirPeople() {
    List<Sitting> sittings = new ArrayList<>(TestMachine.tourer().study().sittings());
    List<Rider> riders = Study.riders(sittings);
    assertThat(riders).anyMatch(r -> r.seated().size() == 2);
    Map<Occupant, Rider.Seated> known = new HashMap<>();
    for (Rider rider : riders) {
      for (Rider.Seated one : rider.seated()) {
        assertThat(one).isSameAs(known.computeIfAbsent(one.who(), w -> one));
      }
    }
  }

  @Test
  void progressIsToldStanceByStance() {
    Study study = TestMachine.tourer().study();
    Map<String, List<Integer>> heard = new TreeMap<>();
    Study again =
        Study.of(
            study.placed(),
            (what, done, of) -> {
              assertThat(of).isEqualTo(study.standings().size());
              heard.computeIfAbsent(what, w -> new ArrayList<>()).add(done);
            });
    assertThat(again.findings()).isEqualTo(study.findings());
    assertThat(heard).hasSize(3);
    assertThat(heard.values())
        .allMatch(d -> d.equals(IntStream.range(0, d.size()).boxed().toList()))
        .allMatch(d -> d.size() == study.standings().size());
  }

  @Test
  void everyFindingHasAnIdATextAndASource() {
    for (Finding f : studied.findings()) {
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
