package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.TestMachine;

/** A fork's legs beside its tyre and its stem above it, and cures that do when they are applied. */
class ForkInTyreTest {

  private static List<Finding> said(TestMachine machine) {
    return machine.findings().stream()
        .filter(f -> f.id().startsWith("joint.front.frontWheel"))
        .toList();
  }

  private static TestMachine legs(double yMm) {
    return TestMachine.runabout().part("front", "y", Boxes.mm(yMm));
  }

  // 45 mm of tyre, 34 mm of leg, 15 mm asked: the middle of a leg at 45 + 17 + 15 = 77 mm
  @Test
  void legsStandBesideTheTyre() {
    assertThat(said(legs(77))).isEmpty();
    Finding near = said(legs(70)).get(0);
    assertThat(near.id()).isEqualTo("joint.front.frontWheel");
    assertThat(near.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(near.value()).isCloseTo(8, within(2e-6));
    assertThat(near.limit()).isEqualTo(15);
    assertThat(near.stance()).isEmpty();
    assertThat(near.text())
        .isEqualTo(
            "The legs of front come within 8 mm of the tyre of frontWheel as drawn, where 15 mm are"
                + " asked; set each leg 7 mm farther out: y of 77 mm is needed.");
    Finding in = said(legs(55)).get(0);
    assertThat(in.value()).isCloseTo(-7, within(1e-9));
    assertThat(in.text())
        .startsWith(
            "The legs of front are in the tyre of frontWheel by 7 mm as drawn; set each leg 22");
    assertThat(said(legs(76.9))).hasSize(1);
  }

  @Test
  void aDemandOfTheLayoutIsItsSource() {
    Finding f = said(legs(77).with("demands", "tyreGap", "'16 mm'")).get(0);
    assertThat(f.limit()).isEqualTo(16);
    assertThat(f.source()).contains("this layout's demand");
  }

  private static int figure(String text, String pattern) {
    Matcher m = Pattern.compile(pattern).matcher(text);
    assertThat(m.find()).as(text).isTrue();
    return Integer.parseInt(m.group(1));
  }

  private static TestMachine stem(String name, int bump, int head) {
    return TestMachine.named(name)
        .part("front", "bump", "'" + bump + " mm'")
        .with("measures", "headHeight", "'" + head + " mm'");
  }

  @ParameterizedTest
  @CsvSource({"runabout, 90, 540", "tourer, 90, 570"})
  void aStemIsClearedByLessBumpOrAHigherHead(String name, int bump, int head) {
    List<Finding> all = said(stem(name, bump, head));
    assertThat(all).hasSize(1);
    Finding stem = all.get(0);
    assertThat(stem.id()).isEqualTo("joint.front.frontWheel.stem");
    assertThat(stem.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(stem.stance()).contains(Condition.empty(Stance.Kind.FULL_BUMP));
    assertThat(stem.text())
        .startsWith("The stem and lower crown of front, at headBottom, ")
        .contains(" at full bump")
        .contains("mm of bump instead of " + bump + " mm, or set headBottom ")
        .contains("higher along the steering axis, with headTop.");
    int allowed = figure(stem.text(), "at most (\\d+) mm of bump");
    assertThat(said(stem(name, allowed, head))).isEmpty();
    assertThat(said(stem(name, allowed + 1, head))).hasSize(1);
    int higher = figure(stem.text(), "(\\d+) mm higher along the steering axis");
    assertThat(said(stem(name, bump, head + higher))).isEmpty();
    assertThat(said(stem(name, bump, head + higher - 1))).hasSize(1);
  }

  /** A head in the wheel itself is cured by no bump at all, only by going up. */
  @Test
  void aStemInTheTyreAsDrawnIsCuredOnlyByAHigherHead() {
    List<Finding> all = said(stem("runabout", 50, 420));
    Finding stem = all.get(all.size() - 1);
    assertThat(stem.id()).endsWith("stem");
    assertThat(stem.value()).isNegative();
    assertThat(stem.text()).contains(" are in the tyre of frontWheel by ");
    assertThat(stem.text()).doesNotContain("at most").contains("mm higher along");
    Finding low =
        said(stem("runabout", 50, 200)).stream()
            .filter(f -> f.id().endsWith("stem"))
            .findFirst()
            .orElseThrow();
    assertThat(low.text()).contains("up to 300 mm higher clears it: a smaller wheel is needed");
  }
}
