package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/**
 * Fuel and luggage. The other route to the machine emptied is a machine whose tank was never
 * filled: another file, in which that part weighs less.
 */
class ContentsTest {

  private static final String MASS = "\"mass\": \"12.5 kg\"";

  private static final String FILLED = "\"mass\": \"5 kg\", \"holds\": \"7.5 kg\"";

  private static final String DRY = "\"mass\": \"5 kg\"";

  private static final String STANCES = "\"stances\": {";

  private static final String LIGHT = STANCES + "\n    \"light\": \"light\",";

  /** Arithmetic alone, in another order. */
  private static final double SAME = 1e-9;

  private static Study tourer(String... replaced) {
    return TestMachine.replacing("tourer", replaced).study();
  }

  private static Finding of(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void fullItWeighsWhatItWeighedAndEmptyItIsTheMachineThatWasNeverFilled() {
    Study full = tourer(MASS, FILLED);
    Study weighed = tourer();
    Study dry = tourer(MASS, DRY);
    for (Standing s : full.standings()) {
      Standing same = weighed.standing(s.condition()).orElseThrow();
      assertThat(s.load().axles().frontN()).isCloseTo(same.load().axles().frontN(), within(SAME));
      assertThat(s.rearTravelMm()).isCloseTo(same.rearTravelMm(), within(SAME));
      assertThat(same.emptied()).isEmpty();
      if (s.kind() == Stance.Kind.LADEN || s.kind() == Stance.Kind.UNLADEN) {
        Standing light = s.emptied().orElseThrow();
        Standing other = dry.standing(s.condition()).orElseThrow();
        assertThat(light.frontTravelMm()).isCloseTo(other.frontTravelMm(), within(SAME));
        assertThat(light.rearTravelMm()).isCloseTo(other.rearTravelMm(), within(SAME));
        assertThat(light.rearTravelMm()).isLessThan(s.rearTravelMm());
        assertThat(light.load().axles().frontN())
            .isCloseTo(other.load().axles().frontN(), within(1e-6));
        assertThat(light.load().total().massKg())
            .isCloseTo(s.load().total().massKg() - 7.5, within(SAME));
      }
    }
  }

  @Test
  void theStanceLightIsThereWhereItIsAskedForAndSomethingIsHeld() {
    Study study = tourer(MASS, FILLED, STANCES, LIGHT);
    Standing light = study.standing(Condition.empty(Stance.Kind.LIGHT)).orElseThrow();
    assertThat(light.rearTravelMm())
        .isEqualTo(
            study
                .standing(Condition.empty(Stance.Kind.UNLADEN))
                .flatMap(Standing::emptied)
                .orElseThrow()
                .rearTravelMm());
    assertThat(tourer(STANCES, LIGHT).standing(Condition.empty(Stance.Kind.LIGHT))).isEmpty();
    assertThat(tourer(MASS, FILLED).standing(Condition.empty(Stance.Kind.LIGHT))).isEmpty();
  }

  @Test
  void theFrontShareIsHeldToBothFullAndEmpty() {
    Standing full = alone(tourer(MASS, FILLED));
    double share = full.load().axles().frontShare();
    double empty = full.emptied().orElseThrow().load().axles().frontShare();
    assertThat(empty).as("the cells sit by the rear wheel").isGreaterThan(share + 0.005);
    String id = "load." + full.condition().people();
    assertThat(of(sharing(empty + 0.001), id).verdict()).isNotEqualTo(Verdict.FAIL);
    Finding between = of(sharing((share + empty) / 2), id);
    assertThat(between.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(between.value()).isCloseTo(empty, within(SAME));
    assertThat(between.text())
        .contains("Tanks and boxes empty it weighs")
        .contains("the figure is of them empty");
  }

  private static Standing alone(Study study) {
    return study.standings().stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN && s.condition().aboard().size() == 1)
        .findFirst()
        .orElseThrow();
  }

  private static Study sharing(double most) {
    return tourer(
        MASS,
        FILLED,
        "\"demands\": {",
        String.format(Locale.ROOT, "\"demands\": {\"frontShareMax\": \"%.6f\", ", most));
  }

  @Test
  void sagIsHeldToBothFullAndEmpty() {
    Study study = tourer(MASS, FILLED);
    Standing full = alone(study);
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    double droop = wheels.rearSuspension().droopMm();
    double travel = droop + wheels.rearSuspension().bumpMm();
    double used = droop + full.rearTravelMm();
    double empty = droop + full.emptied().orElseThrow().rearTravelMm();
    double rate = wheels.rearSuspension().rateNPerMm();
    double preload = wheels.rearSuspension().preloadN();
    String id = "sag.rear." + full.condition().people();
    // a tenth of the travel is the least that passes: full well above it, empty at and below it
    double atTenth = preload + rate * ((used + empty) / 2 - travel / 10);
    Finding little = of(preloaded(atTenth), id);
    assertThat(little.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(little.text()).contains("tanks and boxes empty").contains("softer springs");
    assertThat(little.value()).isLessThan(travel / 10);
    double both = preload + rate * (empty - travel / 10 - (used - empty));
    Finding enough = of(preloaded(both), id);
    assertThat(enough.verdict()).isEqualTo(Verdict.PASS);
    assertThat(enough.text()).contains("Tanks and boxes empty it uses");
  }

  private static Study preloaded(double newton) {
    return tourer(
        MASS,
        FILLED,
        "\"preload\": \"620 N\"",
        String.format(Locale.ROOT, "\"preload\": \"%.3f N\"", newton));
  }
}
