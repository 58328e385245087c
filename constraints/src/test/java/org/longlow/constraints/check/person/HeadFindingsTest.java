package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** A head rest is wanted from 30 degrees of recline, not below, and by whoever leans so far. */
class HeadFindingsTest {

  private static Study leaning(double boardDeg) {
    return TestMachine.runabout()
        .field("ties", "backSlope", "is", "'" + boardDeg + " deg'")
        .study();
  }

  private static double reclineDeg(Study study, String person) {
    Sitting sitting =
        study.sittings().stream().filter(s -> s.person().equals(person)).findFirst().orElseThrow();
    return Math.toDegrees(sitting.seated().orElseThrow().reclineRad());
  }

  private static Optional<Finding> head(Study study, String person) {
    return study.findings().stream()
        .filter(f -> f.kind() == SeatFindings.HEAD)
        .filter(f -> f.who().orElseThrow().person().equals(person))
        .findFirst();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Nell", "Joss"})
  void isWantedFrom30Degrees(String person) {
    double lean = reclineDeg(leaning(27), person) - 27;
    Study below = leaning(29.9 - lean);
    assertThat(reclineDeg(below, person)).isBetween(29.5, 30.0);
    assertThat(head(below, person)).isEmpty();
    Study above = leaning(30.2 - lean);
    assertThat(reclineDeg(above, person)).isBetween(30.0, 30.6);
    Finding wanted = head(above, person).orElseThrow();
    assertThat(wanted.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(wanted.text()).contains("nothing to rest the head on");
    assertThat(wanted.value()).isBetween(30.0, 30.6);
  }

  @Test
  void aHeadOnItsRestPassesAndWithoutOneNeedsCare() {
    TestMachine laidBack =
        TestMachine.tourer()
            .field("measures", "recline", "is", "'34 deg'")
            .with("pins", "headLow", "['262 mm', '1122 mm']")
            .with("pins", "headHigh", "['227 mm', '1257 mm']")
            .field("measures", "recline", "free", "false");
    Finding held = head(laidBack.study(), "Bram").orElseThrow();
    assertThat(held.value()).isGreaterThan(30);
    assertThat(held.verdict()).as(held.text()).isEqualTo(Verdict.PASS);
    assertThat(held.text()).contains("the head leans on the rest");
    Finding bare = head(laidBack.lacking("headRest").study(), "Bram").orElseThrow();
    assertThat(bare.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(bare.text()).contains("nothing to rest the head on");
  }

  /** A rest far over the head, moved as is said, is there for the head to lean on. */
  @Test
  void aRestMovedAsIsSaidIsAtTheHead() {
    TestMachine high =
        TestMachine.tourer()
            .with("pins", "headLow", "['262 mm', '1372 mm']")
            .with("pins", "headHigh", "['227 mm', '1507 mm']");
    Study study = high.study();
    Finding f = head(study, "Bram").orElseThrow();
    assertThat(f.text()).contains("does not come to its rest; for it to lean on that, ");
    Sitting bram = study.sitting("Bram", "rider").orElseThrow();
    var by = HeadRestShift.of(bram, study.placed().places()).orElseThrow();
    assertThat(by.z()).isNegative();
    var low = study.placed().places().pin("headLow").plus(by);
    var top = study.placed().places().pin("headHigh").plus(by);
    Study moved =
        TestMachine.tourer()
            .with("pins", "headLow", "['" + low.x() + " mm', '" + low.z() + " mm']")
            .with("pins", "headHigh", "['" + top.x() + " mm', '" + top.z() + " mm']")
            .study();
    assertThat(head(moved, "Bram").orElseThrow().text())
        .doesNotContain("does not come to its rest")
        .satisfiesAnyOf(
            t -> assertThat(t).contains("leans on the rest"),
            t -> assertThat(t).matches("Bram: the head is [0-2]([.][0-9])? mm off its rest."));
  }
}
