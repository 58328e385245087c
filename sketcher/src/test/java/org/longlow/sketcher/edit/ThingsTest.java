package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.desk.Wren;

/** Everything is found by its words. */
class ThingsTest {

  private static final Layout HERON = Demos.layout("heron");
  private static final List<Finding> FINDINGS = Study.of(HERON).findings();
  private final List<Things.Thing> all = Things.of(HERON, FINDINGS);

  @Test
  void everyEntryAndEveryFindingIsListedOnce() {
    List<String> subjects = all.stream().map(Things.Thing::subject).toList();
    assertThat(subjects).doesNotHaveDuplicates();
    int entries =
        HERON.parts().size()
            + HERON.pins().size()
            + HERON.crew().size()
            + HERON.measures().size()
            + HERON.ties().size()
            + HERON.limits().size()
            + HERON.wishes().size()
            + HERON.sections().size()
            + HERON.stances().size();
    assertThat(all).hasSize(4 + entries + FINDINGS.size());
    assertThat(subjects).contains("part:engine", "measure:wheelbase", "tie:backSlope");
  }

  @Test
  void allWordsMustBeThereInAnyOrderAndCase() {
    assertThat(subjects("SLOPE back")).contains("tie:backSlope");
    assertThat(subjects("slope back tank")).isEmpty();
    assertThat(subjects("")).hasSameSizeAs(all);
  }

  @Test
  void whatBeginsWithTheWordsComesFirst() {
    assertThat(subjects("whee").get(0)).isEqualTo("measure:wheelbase");
    assertThat(subjects("engine").get(0)).isEqualTo("part:engine");
  }

  @Test
  void aFindingIsFoundByWhatItSays() {
    Finding worst = FINDINGS.get(0);
    List<Things.Thing> found = Things.matching(all, worst.subject() + " " + worst.verdict().says());
    assertThat(found.stream().map(Things.Thing::finding).collect(Collectors.toSet()))
        .contains(worst.id());
    assertThat(found.get(0).finding()).isNotEmpty();
  }

  @Test
  void pinsOfATieALimitAndAWishAreKnown() {
    String tie = HERON.ties().keySet().iterator().next();
    assertThat(Things.pins(HERON, "tie:" + tie)).isEqualTo(HERON.ties().get(tie).pins());
    String limit = HERON.limits().keySet().iterator().next();
    assertThat(Things.pins(HERON, "limit:" + limit)).isEqualTo(HERON.limits().get(limit).pins());
    assertThat(Things.pins(HERON, "part:engine")).isEmpty();
    assertThat(Things.pins(HERON, "tie:nobody")).isEmpty();
  }

  @Test
  void eachSaysWhatItIs() {
    Layout wren = Wren.layout();
    Dimension room =
        new Dimension(
            Dimension.Along.STRAIGHT,
            List.of(Dimension.End.edge("tank"), Dimension.End.pin("gripPin")),
            Optional.empty(),
            "");
    Layout layout = Change.set(wren, Map.of("kneeRoom", room), "dimensions");
    Map<String, String> kinds = new HashMap<>();
    Things.of(layout, List.of()).forEach(t -> kinds.put(t.subject(), t.kind()));
    assertThat(kinds)
        .containsEntry("", "the whole machine")
        .containsEntry("part:lowRail", "rail")
        .containsEntry("pin:crank", "pin")
        .containsEntry("tie:panLong", "tie: distance panRear, panFront")
        .containsEntry("limit:backLean", "limit: rake backLow, backTop")
        .containsEntry("measure:panSpan", "measure: panLength - 2 mm")
        .containsEntry("dimension:kneeRoom", "dimension");
    assertThat(Things.pins(layout, "dimension:kneeRoom")).containsExactly("gripPin");
    assertThat(Things.pins(layout, "")).isEmpty();
  }

  private List<String> subjects(String words) {
    return Things.matching(all, words).stream().map(Things.Thing::subject).toList();
  }
}
