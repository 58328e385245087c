package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;

/** Everything is found by its words. */
class ThingsTest {

  private final Layout heron = Demos.layout("heron");
  private final List<Finding> findings = Study.of(heron).findings();
  private final List<Things.Thing> all = Things.of(heron, findings);

  @Test
  void everyEntryAndEveryFindingIsListedOnce() {
    List<String> subjects = all.stream().map(Things.Thing::subject).toList();
    assertThat(subjects).doesNotHaveDuplicates();
    int entries =
        heron.parts().size()
            + heron.pins().size()
            + heron.crew().size()
            + heron.measures().size()
            + heron.ties().size()
            + heron.limits().size()
            + heron.wishes().size()
            + heron.sections().size()
            + heron.stances().size();
    assertThat(all).hasSize(3 + entries + findings.size());
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
    Finding worst = findings.get(0);
    List<Things.Thing> found = Things.matching(all, worst.subject() + " " + worst.verdict().says());
    assertThat(found.stream().map(Things.Thing::finding).collect(Collectors.toSet()))
        .contains(worst.id());
    assertThat(found.get(0).finding()).isNotEmpty();
  }

  @Test
  void pinsOfATieALimitAndAWishAreKnown() {
    String tie = heron.ties().keySet().iterator().next();
    assertThat(Things.pins(heron, "tie:" + tie)).isEqualTo(heron.ties().get(tie).pins());
    String limit = heron.limits().keySet().iterator().next();
    assertThat(Things.pins(heron, "limit:" + limit)).isEqualTo(heron.limits().get(limit).pins());
    assertThat(Things.pins(heron, "part:engine")).isEmpty();
    assertThat(Things.pins(heron, "tie:nobody")).isEmpty();
  }

  private List<String> subjects(String words) {
    return Things.matching(all, words).stream().map(Things.Thing::subject).toList();
  }
}
