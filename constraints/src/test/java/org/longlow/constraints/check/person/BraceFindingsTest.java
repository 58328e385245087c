package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
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
    Finding f = at("tourer", "brace.Bram", 0.9);
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("both feet must push").contains("both hands must push");
  }

  /** Seat, muscles and springs are looked at under one braking: what tyres and weight leave. */
  @ParameterizedTest
  @CsvSource({"0.9, both tyres slide", "2, the rear wheel lifts"})
  void nobodyBrakesHarderThanTheMachineCan(double grip, String why) {
    Study study =
        TestMachine.runabout()
            .with("demands", "braking", "'2'")
            .with("demands", "grip", "'" + grip + "'")
            .study();
    List<String> said =
        Stream.of("brace.Nell", "dive.front")
            .map(id -> study.findings().stream().filter(f -> f.id().equals(id)).findFirst())
            .map(f -> SLOWED.matcher(f.orElseThrow().text()))
            .map(m -> m.find() ? m.group(1) : "nothing said")
            .toList();
    double lift =
        study.standings().stream()
            .filter(s -> s.kind() == Stance.Kind.LADEN)
            .findFirst()
            .orElseThrow()
            .load()
            .axles()
            .brakeLiftG();
    Sitting nell = study.sittings().get(0);
    assertThat(
            Effort.of(study.layout(), nell, study.standings(), study.placed().places())
                .orElseThrow()
                .slowed()
                .g())
        .isCloseTo(Math.min(grip, lift), within(1e-12));
    assertThat(said).containsOnly(String.format(Locale.ROOT, "%.2f", Math.min(grip, lift)));
    assertThat(study.findings().stream().filter(f -> f.id().equals("brace.Nell")))
        .allMatch(f -> f.text().contains(", where " + why + ", "));
  }

  private static final Pattern SLOWED =
      Pattern.compile("([0-9.]+) g(?: of braking)?, where (?:both tyres|the rear wheel)");
}
