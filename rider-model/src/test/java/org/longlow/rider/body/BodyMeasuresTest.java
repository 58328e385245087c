package org.longlow.rider.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Coefficients copied from the summary of the ANSUR II public data (see the data file's heading).
 */
class BodyMeasuresTest {

  @Test
  void regressionsAreThoseOfTheSurvey() {
    BodyMeasures man = BodyMeasures.of(Sex.MALE, 1800, 90);
    BodyMeasures woman = BodyMeasures.of(Sex.FEMALE, 1600, 70);
    assertThat(man.get("buttockkneelength"))
        .isCloseTo(52.696 + 0.286626 * 1800 + 0.72355 * 90, within(1e-9));
    assertThat(woman.get("buttockkneelength"))
        .isCloseTo(86.401 + 0.250834 * 1600 + 1.41262 * 70, within(1e-9));
    assertThat(man.values()).hasSize(79);
    assertThat(man.get("stature")).isEqualTo(1800);
    assertThat(man.get("weightkg")).isEqualTo(90);
    assertThat(man.notes()).isEmpty();
  }

  @Test
  void everyDerivedRuleAgreesWithItsOwnRegression() {
    for (Sex sex : Sex.values()) {
      BodyMeasures body = BodyMeasures.of(sex, 1700, 75);
      Derived.rules()
          .forEach(
              (name, rule) ->
                  // Regressions are linear; their coefficients are rounded to 1e-6 per mm and 1e-3.
                  assertThat(rule.formula().applyAsDouble(body.values()))
                      .as(name)
                      .isCloseTo(body.get(name), within(0.011)));
      long derived =
          Anthropometry.survey().measures(sex).values().stream()
              .filter(stats -> !stats.formula().isEmpty())
              .count();
      assertThat(derived).isEqualTo(Derived.rules().size());
    }
  }

  @Test
  void measuredValuesReplaceTheirsAndTheDerivedFollow() {
    BodyMeasures plain = BodyMeasures.of(Sex.MALE, 1750, 80);
    BodyMeasures body =
        BodyMeasures.of(
            Sex.MALE, 1750, 80, Map.of("sittingheight", 950.0, "radialestylionlength", 280.0));
    assertThat(body.get("sittingheight")).isEqualTo(950);
    assertThat(body.get("d_cervicaleheightsitting"))
        .isCloseTo(body.get("cervicaleheight") - 1750 + 950, within(1e-9));
    assertThat(body.get("d_shouldertogrip"))
        .isCloseTo(
            body.get("acromionradialelength") + 280 + plain.get("d_wristtogrip"), within(1e-9));
  }

  @Test
  void aMeasuredDerivedLinkStands() {
    BodyMeasures body =
        BodyMeasures.of(
            Sex.MALE, 1750, 80, Map.of("d_thighlink", 430.0, "trochanterionheight", 900.0));
    assertThat(body.get("d_thighlink")).isEqualTo(430);
    assertThat(body.get("d_cervicaletotrochanterion"))
        .isCloseTo(body.get("cervicaleheight") - 900, within(1e-9));
  }

  @Test
  void theLikelyBodyFollowsWhatWasMeasured() {
    BodyMeasures plain = BodyMeasures.of(Sex.MALE, 1750, 80);
    double longer = plain.get("sittingheight") + 40;
    BodyMeasures body = BodyMeasures.of(Sex.MALE, 1750, 80, Map.of("sittingheight", longer));
    assertThat(body.get("sittingheight")).isEqualTo(longer);
    // Sitting and eye height correlate at 0.97 or so, so nearly all of the 40 mm reaches the eye.
    assertThat(body.get("eyeheightsitting") - plain.get("eyeheightsitting")).isBetween(30.0, 42.0);
    // A long trunk goes with short legs at one stature.
    assertThat(body.get("trochanterionheight")).isLessThan(plain.get("trochanterionheight") - 10);
    Map<String, Double> knee = Map.of("buttockkneelength", plain.get("buttockkneelength") + 30);
    assertThat(BodyMeasures.of(Sex.MALE, 1750, 80, knee).get("d_thighlink"))
        .isGreaterThan(plain.get("d_thighlink") + 5);
    assertThat(BodyMeasures.of(Sex.MALE, 1750, 80, Map.of()).values()).isEqualTo(plain.values());
  }

  @Test
  void allFaultsComeAtOnceWithTheNearestName() {
    assertThatThrownBy(
            () ->
                BodyMeasures.of(
                    Sex.MALE, 2500, 10, Map.of("sitingheight", 900.0, "footlength", Double.NaN)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("statureMm must be 1200 to 2200 mm, got 2500")
        .hasMessageContaining("massKg must be 30 to 200 kg")
        .hasMessageContaining("did you mean sittingheight")
        .hasMessageContaining("measured.footlength");
    assertThatThrownBy(() -> BodyMeasures.of(Sex.MALE, 1750, 80, Map.of("stature", 1750.0)))
        .hasMessageContaining("statureMm");
    assertThatThrownBy(() -> Sex.of("Male")).hasMessageContaining("\"male\"");
  }

  @Test
  void outsideTheSurveyIsANoteNotAnError() {
    assertThat(BodyMeasures.of(Sex.FEMALE, 1250, 40).notes())
        .anyMatch(
            note ->
                note.startsWith(
                    "Stature 1250.0 mm is outside the survey (1409.0 to 1829.0 mm) by 159.0 mm:"));
    assertThat(BodyMeasures.of(Sex.MALE, 1993, 100).isDoubtful()).isFalse();
    assertThat(BodyMeasures.of(Sex.MALE, 1994, 100).doubt("Tor"))
        .contains("the body of Tor is an extrapolation");
    assertThat(BodyMeasures.of(Sex.MALE, 1800, 150).notes())
        .anyMatch(note -> note.contains("(39.3 to 144.2 kg) by 5.8 kg"));
  }

  /** 7.8 mm a decade from the mean age of the survey's men; nothing else, nothing of women. */
  @Test
  void ageDeepensTheBelliesOfMenOnly() {
    String belly = "abdominalextensiondepthsitting";
    BodyMeasures ageless = BodyMeasures.of(Sex.MALE, 1750, 82);
    for (double[] at : new double[][] {{30.2, 0}, {50.2, 15.6}, {20.2, -7.8}, {70, 21.684}}) {
      BodyMeasures aged = BodyMeasures.of(Sex.MALE, 1750, 82, OptionalDouble.of(at[0]), Map.of());
      ageless
          .values()
          .forEach(
              (name, mm) ->
                  assertThat(aged.get(name) - mm)
                      .as(name)
                      .isCloseTo(name.equals(belly) ? at[1] : 0, within(1e-9)));
    }
    assertThat(
            BodyMeasures.of(Sex.MALE, 1750, 82, OptionalDouble.of(50), Map.of(belly, 280.0))
                .get(belly))
        .isEqualTo(280);
    assertThat(BodyMeasures.of(Sex.FEMALE, 1640, 66, OptionalDouble.of(50), Map.of()).values())
        .isEqualTo(BodyMeasures.of(Sex.FEMALE, 1640, 66).values());
  }

  @ParameterizedTest
  @CsvSource({
    "16.9, 'by 0 years'",
    "17, ''",
    "58, ''",
    "58.1, 'by 0 years'",
    "12, 'by 5 years'",
    "16, 'by 1 year:'"
  })
  void whoIsYoungerOrOlderThanTheSurveyIsNoted(double years, String by) {
    BodyMeasures person = BodyMeasures.of(Sex.FEMALE, 1600, 60, OptionalDouble.of(years), Map.of());
    assertThat(person.isDoubtful()).isEqualTo(!by.isEmpty());
    assertThat(String.join("", person.notes())).contains(by);
  }

  @Test
  void anUnlikelyTapeReadingIsQuestioned() {
    BodyMeasures plain = BodyMeasures.of(Sex.MALE, 1750, 80);
    double odd = plain.get("buttockkneelength") + 60;
    assertThat(BodyMeasures.of(Sex.MALE, 1750, 80, Map.of("buttockkneelength", odd)).notes())
        .anyMatch(
            note -> note.contains("Buttock-knee length") && note.contains("measure it again"));
  }

  @Test
  void longLegsGoWithAShortTrunk() {
    MeasureStats.Regression leg =
        Anthropometry.survey().measures(Sex.FEMALE).get("trochanterionheight").onStatureAndMass();
    double usual = leg.at(1650, 65);
    // 5th and 95th percentile of legs at that stature and mass.
    double unusual = 1.645 * leg.residualSd();
    BodyMeasures legs =
        BodyMeasures.of(Sex.FEMALE, 1650, 65, Map.of("trochanterionheight", usual + unusual));
    BodyMeasures trunk =
        BodyMeasures.of(Sex.FEMALE, 1650, 65, Map.of("trochanterionheight", usual - unusual));
    assertThat(legs.get("d_thighlink")).isGreaterThan(trunk.get("d_thighlink"));
    assertThat(legs.get("sittingheight")).isLessThan(trunk.get("sittingheight") - 20);
    assertThat(legs.statureMm()).isEqualTo(trunk.statureMm());
  }

  @Test
  void surveyFiguresAreReadWhole() {
    MeasureStats knee = Anthropometry.survey().measures(Sex.MALE).get("buttockkneelength");
    assertThat(knee.n()).isEqualTo(4082);
    assertThat(knee.mean()).isEqualTo(617.95);
    assertThat(knee.percentiles().p95()).isEqualTo(669.0);
    assertThat(knee.onStatureAndMass().residualSd()).isEqualTo(15.95);
    assertThat(knee.onStature().intercept()).isEqualTo(-9.029);
    MeasureStats kg = Anthropometry.survey().measures(Sex.FEMALE).get("weightkg");
    assertThat(kg.onStature().perMm()).isEqualTo(0.091278);
    assertThat(kg.onStatureAndMass()).isNull();
  }
}
