package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** The ducted radiator of the tourer: its face is a slanted side of 201.8 mm, 300 mm broad. */
class AirFindingsTest {

  private static final double FACE = Math.hypot(52, 195) * 300;

  private static TestMachine ducted(double in, double out, String more) {
    return TestMachine.tourer()
        .part(
            "radiator",
            "duct",
            "{'intakeWidth': 200, 'intakeHeight': "
                + in / 200
                + ", 'outletWidth': 200, 'outletHeight': "
                + out / 200
                + more
                + "}");
  }

  private static Finding of(TestMachine machine, String id) {
    return machine.finding(id).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"0.3001, true", "0.2999, false"})
  void anIntakeIsAShareOfTheFace(double share, boolean kept) {
    Finding f = of(ducted(share * FACE, FACE, ""), "air-intake.radiator");
    assertThat(f.limit()).isCloseTo(0.3 * FACE, within(1e-6 * FACE));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION); // a rule of thumb from memory
    assertThat(f.text().contains(": make the")).isNotEqualTo(kept);
  }

  @ParameterizedTest
  @CsvSource({"1.201, true", "1.199, false"})
  void anOutletIsAShareOfTheIntake(double share, boolean kept) {
    Finding f = of(ducted(20_000, share * 20_000, ""), "air-outlet.radiator");
    assertThat(f.limit()).isCloseTo(24_000, within(1e-6));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION); // a rule of thumb from memory
    assertThat(f.text().contains(": make the")).isNotEqualTo(kept);
  }

  @Test
  void warmAirIsToldWhereItBlowsOnSomebody() {
    TestMachine up = ducted(20_000, 25_000, ", 'out': 'seen', 'towards': 'panFront'");
    up.pin("seen", 1000, 520);
    assertThat(up.findings())
        .filteredOn(f -> f.id().startsWith("warm-air"))
        .isNotEmpty()
        .allMatch(f -> f.verdict() == Verdict.CAUTION && f.who().isPresent());
    TestMachine away = ducted(20_000, 25_000, ", 'out': 'far', 'towards': 'farther'");
    away.pin("far", 1000, -800).pin("farther", 1000, -900);
    assertThat(of(away, "warm-air.radiator").verdict()).isEqualTo(Verdict.PASS);
    assertThat(TestMachine.asFiled("tourer").findings())
        .noneMatch(f -> f.id().startsWith("air-") || f.id().startsWith("warm-air"));
  }

  /** The outlet points across the chest of whoever sits there: any outlet blows on somebody. */
  @ParameterizedTest
  @CsvSource({"200, 1", "5000, 1", "1, 200", "100000, 2000"})
  void anOutletMayHaveAnySize(double width, double height) {
    TestMachine thin =
        TestMachine.tourer()
            .part(
                "radiator",
                "duct",
                "{'outletWidth': %s, 'outletHeight': %s, 'out': 'seen', 'towards': 'panFront'}"
                    .formatted(width, height));
    thin.pin("seen", 1000, 520);
    assertThat(thin.findings())
        .filteredOn(f -> f.id().startsWith("warm-air"))
        .isNotEmpty()
        .allMatch(f -> f.verdict() == Verdict.CAUTION && f.who().isPresent());
  }
}
