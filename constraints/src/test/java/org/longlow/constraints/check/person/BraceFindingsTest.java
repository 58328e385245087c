package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** Both sides of what feet and hands are asked to hold; what they hold grows in proportion. */
class BraceFindingsTest {

  private static Finding at(String name, String id, double g) {
    return TestMachine.named(name)
        .with("demands", "braking", "'" + g + "'")
        .finding(id)
        .orElseThrow();
  }

  /** The braking at which a line through two figures comes to a limit. */
  private static double meets(Finding a, double ga, Finding b, double gb, double limit) {
    return ga + (limit - a.value()) * (gb - ga) / (b.value() - a.value());
  }

  /** The passenger sits upright: at 0.4 g and more the trunk is off the back. */
  @Test
  void handsAreLittleTroubleUpToALimit() {
    String id = "brace.Runa.passenger";
    Finding a = at("tourer", id, 0.6);
    Finding b = at("tourer", id, 0.9);
    assertThat(a.text()).contains("the trunk leaves the back from 0.2");
    assertThat(a.limit()).isEqualTo(62);
    double limit = meets(a, 0.6, b, 0.9, 62);
    assertThat(at("tourer", id, limit - 0.001).verdict()).isEqualTo(Verdict.PASS);
    Finding over = at("tourer", id, limit + 0.001);
    assertThat(over.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(over.text()).contains("lean the back farther");
    // in between it is on the line
    assertThat(at("tourer", id, 0.75).value()).isCloseTo((a.value() + b.value()) / 2, within(1e-6));
  }

  @Test
  void lightBrakingIsHeldByThePanAlone() {
    Finding f = at("tourer", "brace.Bram", 0.05);
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.value()).isZero();
    assertThat(f.text()).contains("keeps to the pan").doesNotContain("for the rest");
  }

  @Test
  void withoutBrakingThereIsNothingToSay() {
    assertThat(TestMachine.tourer().with("demands", "braking", "'0'").finding("brace.Bram"))
        .isEmpty();
  }

  @Test
  void hardBrakingAsksFeetAndHands() {
    Finding f = at("tourer", "brace.Bram", 2);
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("both feet must push").contains("both hands must push");
  }
}
