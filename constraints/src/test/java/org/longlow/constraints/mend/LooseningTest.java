package org.longlow.constraints.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What is offered where ties and limits contradict each other. */
class LooseningTest {

  /** A pin 120 mm from a nailed one by a tie, which a limit allows no more than 100 mm. */
  private static TestMachine contradicting() {
    return pair(TestMachine.runabout(), "");
  }

  private static TestMachine pair(TestMachine machine, String n) {
    return machine
        .pin("post" + n, 400, 900)
        .with("pins", "end" + n, "{'at': ['520 mm', '900 mm']}")
        .with("ties", "level" + n, "{'tie': 'height', 'pins': ['end" + n + "'], 'is': '900 mm'}")
        .with(
            "ties",
            "far" + n,
            "{'tie': 'distance', 'pins': ['post" + n + "', 'end" + n + "'], 'is': '120 mm'}")
        .with(
            "limits",
            "reach" + n,
            "{'limit': 'distance', 'pins': ['post" + n + "', 'end" + n + "'], 'to': '100 mm'}");
  }

  private static Finding contradiction(Study study) {
    return study.findings().stream()
        .filter(f -> f.group() == FindingGroup.LAYOUT && f.verdict() == Verdict.FAIL)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void eachOfTheSmallestSetIsOfferedAndAfterEachEverythingHolds() {
    Layout layout = contradicting().layout();
    Study study = Study.of(layout);
    assertThat(study.placed().holds()).isFalse();
    Finding finding = contradiction(study);
    assertThat(Mending.isMendable(study, finding)).isTrue();
    List<Offer> offers = Mending.of(study, finding);
    assertThat(offers.stream().map(Offer::says))
        .containsExactlyInAnyOrder("let go of tie far", "let go of limit reach");
    for (Offer offer : offers) {
      Layout after = offer.rewrite().on(layout);
      assertThat(Study.of(after).placed().holds()).as(offer.says()).isTrue();
      Set<String> gone =
          layout.ties().keySet().stream()
              .filter(t -> !after.ties().containsKey(t))
              .collect(Collectors.toSet());
      layout.limits().keySet().stream()
          .filter(l -> !after.limits().containsKey(l))
          .forEach(gone::add);
      assertThat(gone).containsExactly(offer.rewrite().about().name());
      assertThat(after.pins().keySet()).isEqualTo(layout.pins().keySet());
    }
  }

  /** The drawing shows it where the tie holds, so that without the limit nothing moves. */
  @Test
  void whatMovesLeastComesFirst() {
    Study study = Study.of(contradicting().layout());
    double drawn = study.placed().places().pin("end").x() - 400;
    List<Offer> offers = Mending.of(study, contradiction(study));
    for (Offer offer : offers) {
      double left = offer.rewrite().about().name().equals("far") ? 100 : 120;
      assertThat(offer.size()).isCloseTo(Math.abs(drawn - left) / 10, within(0.05));
    }
    assertThat(offers.get(0).size()).isLessThanOrEqualTo(offers.get(1).size());
  }

  @Test
  void whereMoreContradictsItIsSaid() {
    Layout layout = pair(contradicting(), "2").layout();
    Study study = Study.of(layout);
    List<Offer> offers = Mending.of(study, contradiction(study));
    assertThat(offers).isNotEmpty();
    for (Offer offer : offers) {
      assertThat(Study.of(offer.rewrite().on(layout)).placed().holds()).isFalse();
      assertThat(offer.says()).endsWith(", but others still cannot all hold");
    }
  }

  @Test
  void whatHoldsHasNothingToLetGoOf() {
    Study study = TestMachine.asFiled("runabout");
    Finding ties =
        study.findings().stream()
            .filter(f -> f.group() == FindingGroup.LAYOUT)
            .findFirst()
            .orElseThrow();
    assertThat(Mending.isMendable(study, ties)).isFalse();
    assertThat(Mending.of(study, ties)).isEmpty();
  }
}
